import type { Day } from '../core/calendar.ts';
import { dateWords } from '../core/day-words.ts';
import type { AnimalId, BuyerId } from '../core/ids.ts';
import type { Picture } from '../picture/picture.ts';
import { againstSale, isYoung, type SaleBlock } from '../sale/against-sale.ts';
import { showMoney } from '../sale/money.ts';
import { storyOf, type SaleStory } from '../sale/sale-of.ts';
import type { Animal } from '../state/animal.ts';

export type SaleGroup = 'reserved' | 'for sale' | 'ready' | 'not yet' | 'kept back';

export interface SaleLine {
  readonly id: AnimalId;
  readonly name: string;
  readonly sex: Animal['sex'];
  readonly position?: string | undefined;
  readonly traits?: string | undefined;
  /** Where its sale stands: "reserved until 8 Dec 2026, 450.00 EUR" */
  readonly says: string;
  readonly blocks: readonly SaleBlock[];
}

/** What a buyer’s number stands in the records for. */
export interface BuyerUse {
  readonly buyer: BuyerId;
  readonly animal: AnimalId;
  readonly name: string;
  readonly says: string;
}

export interface SalesView {
  readonly groups: readonly { readonly group: SaleGroup; readonly lines: readonly SaleLine[] }[];
  readonly uses: readonly BuyerUse[];
  /** False while the log is still being read. */
  readonly isWhole: boolean;
}

const order: readonly SaleGroup[] = ['reserved', 'for sale', 'ready', 'not yet', 'kept back'];

/** Which animals are for sale, which are spoken for, and which are not to be sold yet, and why. */
export function salesView(picture: Picture): SalesView {
  const found = picture.living().flatMap((animal) => {
    const story = storyOf(animal.id, picture);
    const blocks = againstSale(animal, picture.facts);
    const group = groupOf(animal, story, blocks, picture);
    return group ? [{ group, line: lineOf(animal, story, blocks, picture) }] : [];
  });
  return {
    groups: order.map((group) => ({
      group,
      lines: found
        .filter((each) => each.group === group)
        .map(({ line }) => line)
        .toSorted((a, b) => a.name.localeCompare(b.name, 'en', { numeric: true })),
    })),
    uses: picture.animals().flatMap((animal) => usesOf(animal, picture)),
    isWhole: picture.ledger.hasHistory,
  };
}

/** Undefined for one of whom nobody has thought of selling: grown, or bought. */
function groupOf(
  animal: Animal,
  { stage }: SaleStory,
  blocks: readonly SaleBlock[],
  { facts }: Picture,
): SaleGroup | undefined {
  if (stage === 'reserved' || stage === 'sold') return 'reserved';
  if (animal.heldBack) return 'kept back';
  if (stage === 'for sale') return blocks.length > 0 ? 'not yet' : 'for sale';
  const isOwn = animal.hatched !== undefined || animal.origin === 'own';
  if (!isOwn || !isYoung(animal, facts)) return undefined;
  return blocks.length > 0 ? 'not yet' : 'ready';
}

function lineOf(
  animal: Animal,
  story: SaleStory,
  blocks: readonly SaleBlock[],
  picture: Picture,
): SaleLine {
  return {
    id: animal.id,
    name: animal.name || 'Unnamed',
    sex: animal.sex,
    position: picture.position(picture.whereIs(animal)),
    traits: animal.traits,
    says: stageWords(story, picture),
    blocks,
  };
}

/** @example 'reserved until 8 Dec 2026, 450.00 EUR' */
export function stageWords(
  { stage, price, listedAt, reserved, sale }: SaleStory,
  { facts }: Picture,
): string {
  const on = (at: Parameters<typeof facts.nightOf>[0]) => dateWords(facts.nightOf(at));
  const words = {
    'not offered': 'not offered',
    'for sale': listedAt === undefined ? 'for sale' : `for sale since ${on(listedAt)}`,
    reserved: reservedWords(reserved?.until, facts.night),
    sold: sale ? `sold on ${on(sale.at)}, not handed over` : 'sold',
    'handed over': sale?.leftAt === undefined ? 'handed over' : `handed over on ${on(sale.leftAt)}`,
  }[stage];
  return price === undefined || stage === 'not offered' ? words : `${words}, ${showMoney(price)}`;
}

function reservedWords(until: Day | undefined, tonight: Day): string {
  if (until === undefined) return 'reserved';
  return until < tonight
    ? `reserved, the time ran out on ${dateWords(until)}`
    : `reserved until ${dateWords(until)}`;
}

function usesOf({ id, name }: Animal, picture: Picture): readonly BuyerUse[] {
  const { sale, past, reserved } = storyOf(id, picture);
  const { facts } = picture;
  const sales = [...past, ...(sale ? [sale] : [])].map(({ buyer, at, ended }) => ({
    buyer,
    says: `${ended ? 'sale ended' : 'sold'}, ${dateWords(facts.nightOf(at))}`,
  }));
  const held =
    reserved && !sale
      ? [{ buyer: reserved.buyer, says: `reserved, ${dateWords(facts.nightOf(reserved.at))}` }]
      : [];
  return [...sales, ...held].flatMap(({ buyer, says }) =>
    buyer === undefined ? [] : [{ buyer, animal: id, name: name || 'Unnamed', says }],
  );
}
