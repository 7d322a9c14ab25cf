import { daysBetween, type Day } from '../core/calendar.ts';
import type { AnimalId } from '../core/ids.ts';
import type { Picture } from '../picture/picture.ts';
import type { Buyer } from '../sale/buyer.ts';
import { plainAmount } from '../sale/money.ts';
import { dayOf, salesIn } from '../sale/sale-numbers.ts';
import { saleStory, standingOf, type Sale } from '../sale/sale-of.ts';
import { isWithin, staysOf, type Stay } from './stays.ts';

export interface Span {
  readonly from: Day;
  readonly to: Day;
}

/** Buyers that may stand in a table; undefined where the keeper wants none in it. */
export type BuyersByChoice = readonly Buyer[] | undefined;

type Table = readonly (readonly string[])[];

/** Every animal kept on any day of the span, a line for each stay, after the day it came. */
export function keptTable(span: Span, picture: Picture, buyers: BuyersByChoice): Table {
  return [
    [...keptColumns, ...buyerColumns(buyers)],
    ...staysIn(span, picture).map((stay) => keptRow(stay, picture, buyers)),
  ];
}

export const staysIn = ({ from, to }: Span, picture: Picture): readonly Stay[] =>
  picture
    .animals()
    .flatMap(({ id }) => staysOf(id, standingOf(id, picture)))
    .filter((stay) => isWithin(stay, from, to))
    .toSorted((a, b) =>
      a.from < b.from ? -1 : a.from > b.from ? 1 : a.animal < b.animal ? -1 : 1,
    );

const keptColumns = [
  'Name',
  'Species',
  'Sex',
  'Sexed by',
  'Hatched',
  'Traits as stated',
  'Dam',
  'Possible sires',
  'Came',
  'Came on',
  'Came from',
  'CITES source as stated',
  'Permit',
  'Treated on',
  'Left',
  'Left on',
];

const buyerColumns = (buyers: BuyersByChoice): readonly string[] =>
  buyers ? ['Buyer', 'Buyer’s contact'] : [];

function keptRow(stay: Stay, picture: Picture, buyers: BuyersByChoice): readonly string[] {
  const animal = picture.animal(stay.animal);
  const events = standingOf(stay.animal, picture);
  const { source, sale, past } = saleStory(events);
  const treated = events.flatMap((event) => (event.type === 'treated' ? [dayOf(event.at)] : []));
  const sold = [...past, ...(sale ? [sale] : [])].find(
    ({ leftAt }) => leftAt !== undefined && dayOf(leftAt) === stay.to,
  );
  return [
    animal?.name ?? '',
    'Python regius',
    animal?.sex ?? '',
    animal?.sexedBy ?? '',
    animal?.hatchedDay ?? '',
    animal?.traits ?? '',
    named(animal?.dam ? [animal.dam] : [], picture),
    named(animal?.sires ?? [], picture),
    stay.came,
    stay.from,
    stay.source ?? '',
    source?.code ?? '',
    source?.permit ?? '',
    treated.join(' '),
    stay.left ?? '',
    stay.to ?? '',
    ...buyerCells(stay.left === 'sold' ? sold : undefined, buyers),
  ];
}

const named = (ids: readonly AnimalId[], { facts }: Picture): string =>
  ids.map(facts.nameOf).join('; ');

function buyerCells(sale: Sale | undefined, buyers: BuyersByChoice): readonly string[] {
  if (!buyers) return [];
  const buyer = buyers.find(({ id }) => id === sale?.buyer);
  return [buyer?.name ?? '', buyer?.contact ?? ''];
}

/** Every sale agreed in the span, oldest first; those that came to nothing too. */
export function salesTable({ from, to }: Span, picture: Picture, buyers: BuyersByChoice): Table {
  return [
    [...saleColumns, ...buyerColumns(buyers)],
    ...salesIn(picture, from, to).map((sale) => saleRow(sale, picture, buyers)),
  ];
}

const saleColumns = [
  'Name',
  'Sex',
  'Hatched',
  'Traits as stated',
  'Sold on',
  'Price',
  'Currency',
  'Days from hatching',
  'Handed over on',
  'Handed over',
  'Ended on',
  'Ended',
];

function saleRow(sale: Sale, picture: Picture, buyers: BuyersByChoice): readonly string[] {
  const { at, price, how, leftAt, ended } = sale;
  const animal = picture.animal(sale.animal);
  const hatched = animal?.hatchedDay;
  return [
    animal?.name ?? '',
    animal?.sex ?? '',
    hatched ?? '',
    animal?.traits ?? '',
    dayOf(at),
    price ? plainAmount(price) : '',
    price?.currency ?? '',
    hatched === undefined ? '' : String(daysBetween(hatched, dayOf(at))),
    leftAt === undefined ? '' : dayOf(leftAt),
    how ?? '',
    ended ? dayOf(ended.at) : '',
    ended?.why ?? '',
    ...buyerCells(sale, buyers),
  ];
}
