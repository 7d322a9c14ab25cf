import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { AnimalId, BuyerId } from '../../src/domain/core/ids.ts';
import { day } from '../make.ts';
import { saleNumbers } from '../../src/domain/sale/sale-numbers.ts';
import { labelsView } from '../../src/domain/views/labels-view.ts';
import { papersView } from '../../src/domain/views/papers-view.ts';
import { salesView } from '../../src/domain/views/sales-view.ts';
import { runs } from '../arbitrary.ts';
import { aDevice, openTab, settleIn, type Tab } from './make-world.ts';

const span = { from: day('2026-01-01'), to: day('2026-12-31') };
const price = { minor: 45_000, currency: 'EUR' };

async function newBuyer(tab: Tab, name: string, contact: string): Promise<BuyerId> {
  const kept = await tab.keepBuyer({ name, contact });
  if (!kept.ok) throw new Error(kept.problem.message);
  return kept.value;
}

async function sell(tab: Tab, animal: AnimalId, buyer: BuyerId): Promise<void> {
  for (const drafts of [
    [{ type: 'reserved', animal, buyer, price }],
    [{ type: 'sold', animal, buyer, price }],
    [
      { type: 'handed-over', animal, how: 'collected' },
      { type: 'left', animal, how: 'sold' },
    ],
  ] as const) {
    const done = await tab.record({ drafts });
    if (done.kind !== 'done') throw new Error(JSON.stringify(done));
  }
}

/** Everything that outlives the app or leaves it, but for what the keeper asks to hold buyers. */
async function everythingElse(tab: Tab, animal: AnimalId): Promise<string> {
  const { picture } = tab;
  await tab.collection.settle();
  const registers = await Promise.all(
    (['animals', 'sales'] as const).map((of) => tab.registerFile({ span, of, withBuyers: false })),
  );
  return JSON.stringify([
    await tab.onDisk(),
    await (await tab.backUp(null)).file.text(),
    await tab.calendarFile(null),
    registers,
    labelsView(picture),
    papersView(animal, picture),
    salesView(picture),
    await tab.world.notes.load(),
  ]);
}

// Letters that occur nowhere else, so that what is found is the buyer.
const anyWord = fc.string({
  unit: fc.constantFrom('Ж', 'Ш', 'Ю', 'Я'),
  minLength: 6,
  maxLength: 20,
});

test('a buyer is in no record, backup, label or view, whatever the name', async () => {
  await fc.assert(
    fc.asyncProperty(anyWord, anyWord, async (name, contact) => {
      const tab = await openTab(aDevice());
      const { sorrel } = await settleIn(tab);
      const buyer = await newBuyer(tab, name, contact);
      await sell(tab, sorrel, buyer);
      const all = await everythingElse(tab, sorrel);
      expect(all).toContain(buyer);
      expect(all).not.toContain(name);
      expect(all).not.toContain(contact);
    }),
    runs(25),
  );
});

test('erased, nothing of a buyer is left on the device, and every number stays', async () => {
  const device = aDevice();
  const tab = await openTab(device);
  const { sorrel } = await settleIn(tab);
  const buyer = await newBuyer(tab, 'Ada Rook', '01632 960221');
  await sell(tab, sorrel, buyer);
  const numbers = () => saleNumbers(tab.picture, span.from, span.to);
  const before = numbers();
  expect(before).toMatchObject({ sold: 1, takings: [{ totalMinor: 45_000 }] });
  const named = await tab.registerFile({ span, of: 'sales', withBuyers: true });
  expect(named.text).toContain('Ada Rook');

  await tab.eraseBuyer(buyer);
  expect(await tab.buyers(null)).toEqual([]);
  expect(numbers()).toEqual(before);
  expect(await everythingElse(tab, sorrel)).not.toContain('Ada');
  expect(await device.buyers.all()).toEqual([]);
  const later = await tab.registerFile({ span, of: 'sales', withBuyers: true });
  expect(later.text).not.toContain('Ada');
  expect(later.text).toContain('450.00');
});

test('buyers travel in a file of their own, and come back only into the same collection', async () => {
  const tab = await openTab(aDevice());
  await settleIn(tab);
  const buyer = await newBuyer(tab, 'Ada Rook', '');
  const { fileName, text } = await tab.buyersFile(null);
  expect(fileName).toBe('2026-11-24.nightdrop-buyers.json');
  await tab.eraseBuyer(buyer);
  const file = new Blob([text]);
  expect(await tab.takeInBuyers(file)).toEqual({ ok: true, value: 1 });
  expect(await tab.takeInBuyers(file)).toEqual({ ok: true, value: 0 });
  expect(await tab.buyers(null)).toEqual([{ id: buyer, name: 'Ada Rook', since: '2026-11-24' }]);
  const other = await openTab(aDevice(), 'TAB02');
  await settleIn(other);
  expect(await other.takeInBuyers(file)).toMatchObject({ ok: false });
});

test('a buyer without a name is none', async () => {
  const tab = await openTab(aDevice());
  expect(await tab.keepBuyer({ name: '  ' })).toMatchObject({ ok: false });
  expect(await tab.keepBuyer({ name: 'x'.repeat(81) })).toMatchObject({ ok: false });
});
