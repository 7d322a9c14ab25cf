import { momentOf } from '../domain/core/calendar.ts';
import { ok, refuse } from '../domain/core/result.ts';
import type { Commands } from '../domain/desk.ts';
import type { SaleCommands } from '../domain/views/sale-desk.ts';
import type { Collection, World } from './collection.ts';

type SaleHandlers = {
  readonly [Each in keyof SaleCommands]: (
    ask: Commands[Each]['ask'],
  ) => Promise<Commands[Each]['answer']>;
};

/** Buyers, who are in no record, and the registers, which may name them. */
export function saleHandlers(world: World, collection: Collection): SaleHandlers {
  const { clock, minter } = world;
  const shelf = () => world.buyers();
  const today = () => momentOf(clock()).slice(0, 10);
  const all = async () =>
    (await (await shelf()).all()).toSorted((a, b) =>
      a.name === b.name ? (a.id < b.id ? -1 : 1) : a.name < b.name ? -1 : 1,
    );
  /** Empty until the collection has a record: then there is nothing to sell either. */
  const nameOfAll = async () => (await world.notes.load()).collection ?? '';

  return {
    buyers: all,
    async keepBuyer(asked) {
      const { Buyer } = await import('../domain/sale/buyer.ts');
      const contact = asked.contact?.trim();
      const read = Buyer.safeParse({
        id: minter.buyer(),
        name: asked.name,
        ...(contact === undefined || contact === '' ? {} : { contact }),
        since: today(),
      });
      if (!read.success) {
        return refuse('no-buyer', 'Write a name of up to 80 letters; the contact has up to 200.');
      }
      await (await shelf()).keep(read.data);
      return ok(read.data.id);
    },
    async eraseBuyer(id) {
      await (await shelf()).erase(id);
      return null;
    },
    async buyersFile() {
      const { writeBuyers } = await import('../store/buyers-file.ts');
      const text = writeBuyers(await nameOfAll(), await all());
      return { fileName: `${today()}.nightdrop-buyers.json`, text };
    },
    async takeInBuyers(file) {
      const { readBuyers } = await import('../store/buyers-file.ts');
      const read = await readBuyers(file, await nameOfAll());
      if (!read.ok) return read;
      const known = new Set((await all()).map(({ id }) => id));
      const fresh = read.value.filter(({ id }) => !known.has(id));
      for (const buyer of fresh) await (await shelf()).keep(buyer);
      return ok(fresh.length);
    },
    async registerFile({ span, of, withBuyers }) {
      await collection.readHistory();
      const [{ keptTable, salesTable }, { writeCsv }] = await Promise.all([
        import('../domain/register/tables.ts'),
        import('../domain/register/write-csv.ts'),
      ]);
      const table = of === 'animals' ? keptTable : salesTable;
      const buyers = withBuyers ? await all() : undefined;
      return {
        fileName: `${span.from}-to-${span.to}.nightdrop-${of}.csv`,
        text: writeCsv(table(span, collection.picture, buyers)),
      };
    },
  };
}
