import { dateWords } from '../../domain/core/day-words.ts';
import type { SizeMm } from '../../domain/labels/format.ts';
import { groupedCode } from '../../domain/labels/subject.ts';
import type { Buyer } from '../../domain/sale/buyer.ts';
import { showMoney } from '../../domain/sale/money.ts';
import { buyerCautions } from '../../domain/views/papers-words.ts';
import type { DatedLine, PapersView } from '../../domain/views/papers-view.ts';
import { weightCurve } from './paper-curve.tsx';
import {
  fact,
  flow,
  gap,
  headline,
  MARGIN,
  paragraph,
  row,
  toWrite,
  type Block,
} from './paper-flow.tsx';

/** What the keeper adds to the records: himself, and the buyer where he wants the name on paper. */
export interface Parties {
  readonly seller: string;
  readonly buyer: Buyer | undefined;
}

/** The animal's card, then the hand-over sheet. */
export const paperPages = (view: PapersView, parties: Parties, size: SizeMm) => [
  ...flow('Animal card', besideWords(view), cardBlocks(view, size), size),
  ...flow('Hand-over sheet', besideWords(view), handOverBlocks(view, parties, size), size),
];

const besideWords = ({ name, code, night }: PapersView): string =>
  [name, code && groupedCode(code), `as on record on ${dateWords(night)}`]
    .filter((part) => part !== undefined)
    .join(' · ');

function cardBlocks(view: PapersView, size: SizeMm): readonly Block[] {
  const facts = [...view.facts, ...view.parents];
  return [
    ...facts.map(([term, says]) => fact(term, says, size)),
    fact('CITES', citesLine(view), size),
    fact('Eats', eatsWords(view), size),
    ...geneBlocks(view, size),
    headline('Last meals offered'),
    ...inColumns(view.meals, size),
    ...(view.meals.length === 0 ? [paragraph('None is on record.', size)] : []),
    headline('Weight'),
    weightCurve(view.masses, size),
    fact('Last sheds', datedWords(view.sheds), size),
    fact('Health', healthWords(view.health), size),
  ];
}

function geneBlocks({ traits, genes }: PapersView, size: SizeMm): readonly Block[] {
  const width = size.width - 2 * MARGIN;
  const cells = (name: string, has: string, sure: string) =>
    [
      [name, 0, width * 0.28],
      [has, width * 0.3, width * 0.28],
      [sure, width * 0.6, width * 0.4],
    ] as const;
  return [
    headline('Genes'),
    fact('As stated', traits ?? 'nothing stated', size),
    ...(genes.length > 0 ? [gap(1), row(cells('Gene', 'By all records', 'How sure'), true)] : []),
    ...genes.map(({ name, has, sure }) => row(cells(name, has, sure))),
  ];
}

const mealWords = (meal: DatedLine | undefined): string =>
  meal === undefined ? '' : `${dateWords(meal.night)}: ${meal.says}`;

/** Two to a line, newest first down the left. */
function inColumns(meals: readonly DatedLine[], size: SizeMm): readonly Block[] {
  const half = Math.ceil(meals.length / 2);
  const width = (size.width - 2 * MARGIN) / 2;
  return meals.slice(0, half).map((meal, i) =>
    row([
      [mealWords(meal), 0, width - 4],
      [mealWords(meals[half + i]), width, width],
    ]),
  );
}

const datedWords = (dated: readonly DatedLine[]): string =>
  dated.length === 0
    ? 'none on record'
    : dated.map(({ night, says }) => `${dateWords(night)} ${says}`).join('; ');

const healthWords = (health: readonly DatedLine[]): string =>
  health.length === 0
    ? 'no treatment, test, brought-up meal or clear sign on record'
    : datedWords(health);

const eatsWords = ({ eats, lastFed }: PapersView): string =>
  lastFed === undefined
    ? 'nothing on record'
    : `${eats ?? 'prey not named'}; last on ${dateWords(lastFed)}`;

const citesLine = ({ source }: PapersView): string =>
  source === undefined
    ? 'Appendix II. Source not stated. Check local rules.'
    : `Appendix II. Source as the keeper states it: ${source.code}, ${source.says}.${source.permit === undefined ? '' : ` Permit ${source.permit}.`} Check local rules.`;

function handOverBlocks(view: PapersView, parties: Parties, size: SizeMm): readonly Block[] {
  const about = (term: string) => view.facts.find(([each]) => each === term)?.[1] ?? '';
  const { price, deposit, soldOn, handedOver } = view;
  return [
    ...partyBlocks('Seller', parties.seller.split('\n'), size),
    ...partyBlocks(
      'Buyer',
      parties.buyer ? [parties.buyer.name, parties.buyer.contact ?? ''] : [],
      size,
    ),
    headline('The animal'),
    fact('Animal', `${view.name}, ${about('Species')}, ${about('Sex')}`, size),
    fact('Hatched', `${about('Hatched')}; origin: ${about('Origin')}`, size),
    fact('Genes as stated', view.traits ?? 'nothing stated', size),
    fact('', 'How sure each is stands on the animal’s card.', size),
    fact('CITES', citesLine(view), size),
    fact('Eats', eatsWords(view), size),
    fact('Health', healthWords(view.health), size),
    headline('The sale'),
    fact('Price', price ? showMoney(price) : '', size),
    fact('Deposit', deposit ?? '', size),
    fact('Sold on', soldOn ? dateWords(soldOn) : '', size),
    fact('Handed over', handedOver ?? '', size),
    toWrite(['What else is agreed: guarantee, delivery, taking back'], size),
    headline('To know'),
    ...buyerCautions.map((caution) => paragraph(`– ${caution}`, size, 3.2)),
    ...(view.vet
      ? [paragraph(`– The seller’s vet: ${view.vet.name}, ${view.vet.phone}.`, size, 3.2)]
      : []),
    gap(4),
    toWrite(['Place and date', 'Seller', 'Buyer'], size),
    paragraph(
      'This sheet is no permit and no proof of lawful origin by itself. Laws on sale, keeping and transport differ: check local rules.',
      size,
      2.9,
    ),
  ];
}

/** What is known of a party, or room to write it. */
function partyBlocks(term: string, told: readonly string[], size: SizeMm): readonly Block[] {
  const lines = told.map((line) => line.trim()).filter((line) => line !== '');
  return lines.length === 0
    ? [toWrite([`${term}: name and contact`], size)]
    : lines.map((line, i) => fact(i === 0 ? term : '', line, size));
}
