import { instantMs, type Day } from '../core/calendar.ts';
import { dateWords } from '../core/day-words.ts';
import type { LabelCode } from '../core/code.ts';
import type { AnimalId, BuyerId } from '../core/ids.ts';
import type { EventOf, RackEvent } from '../events/event.ts';
import type { Money } from '../events/sales.ts';
import type { Picture } from '../picture/picture.ts';
import { showMeal } from '../protocol/planned-meal.ts';
import { againstSale, type SaleBlock } from '../sale/against-sale.ts';
import { showMoney } from '../sale/money.ts';
import { saleStory, standingOf, type SaleStage, type SaleStory } from '../sale/sale-of.ts';
import type { Animal } from '../state/animal.ts';
import type { Vet } from '../state/house.ts';
import { cardOf } from './animal-view.ts';
import { geneClaims, parentLines, type Fact, type GeneClaim } from './descent-lines.ts';
import { citesWords } from './papers-words.ts';
import { stageWords } from './sales-view.ts';
import { outcomeWords } from './words.ts';

export interface DatedLine {
  readonly night: Day;
  readonly says: string;
}

/** The sale of one animal, and all that goes on its card and its hand-over sheet. */
export interface PapersView {
  readonly id: AnimalId;
  readonly name: string;
  readonly night: Day;
  readonly isGone: boolean;
  readonly stage: SaleStage;
  readonly says: string;
  readonly price?: Money | undefined;
  readonly reservedUntil?: Day | undefined;
  readonly deposit?: string | undefined;
  readonly buyer?: BuyerId | undefined;
  readonly soldOn?: Day | undefined;
  readonly handedOver?: string | undefined;
  /** It was sold and is here again, and what became of the sale is not said. */
  readonly isBack: boolean;
  readonly blocks: readonly SaleBlock[];
  readonly facts: readonly Fact[];
  readonly code?: LabelCode | undefined;
  readonly parents: readonly Fact[];
  readonly traits?: string | undefined;
  readonly genes: readonly GeneClaim[];
  readonly meals: readonly DatedLine[];
  readonly eats?: string | undefined;
  readonly lastFed?: Day | undefined;
  readonly masses: readonly { readonly ms: number; readonly night: Day; readonly massG: number }[];
  readonly sheds: readonly DatedLine[];
  /** Treatments and grave signs on record: a buyer is told. */
  readonly health: readonly DatedLine[];
  readonly source?:
    | { readonly code: string; readonly says: string; readonly permit?: string | undefined }
    | undefined;
  readonly vet?: Vet | undefined;
  readonly isWhole: boolean;
}

const MEALS = 10;
const SHEDS = 5;

export function papersView(id: AnimalId, picture: Picture): PapersView | undefined {
  const animal = picture.animal(id);
  if (!animal) return undefined;
  const { facts, ledger } = picture;
  const events = standingOf(id, picture);
  const story = saleStory(events);
  const { sale, reserved, source } = story;
  const meals = mealsOf(events, picture);
  return {
    id,
    name: animal.name || 'Unnamed',
    night: facts.night,
    isGone: animal.gone !== undefined,
    stage: story.stage,
    says: stageWords(story, picture),
    price: story.price,
    reservedUntil: reserved?.until,
    deposit: depositWords(story),
    buyer: sale ? sale.buyer : reserved?.buyer,
    soldOn: sale && facts.nightOf(sale.at),
    handedOver: sale?.how,
    isBack: sale?.backAt !== undefined,
    blocks: againstSale(animal, facts),
    facts: factsOf(animal, events, picture),
    code: cardOf(id, picture),
    parents: parentLines(animal, picture),
    traits: animal.traits,
    genes: geneClaims(animal, picture),
    meals: meals.slice(0, MEALS).map(({ night, says }) => ({ night, says })),
    ...eaten(meals),
    masses: events.flatMap((event) =>
      event.type === 'weighed'
        ? [{ ms: instantMs(event.at), night: facts.nightOf(event.at), massG: event.massG }]
        : [],
    ),
    sheds: events
      .flatMap((event) =>
        event.type === 'shed' ? [{ night: facts.nightOf(event.at), says: event.quality }] : [],
      )
      .slice(-SHEDS)
      .toReversed(),
    health: healthOf(events, picture),
    source: source && {
      code: source.code,
      says: citesWords[source.code],
      permit: source.permit,
    },
    vet: picture.house()?.vet,
    isWhole: ledger.hasHistory,
  };
}

function depositWords({ reserved }: SaleStory): string | undefined {
  const deposit = reserved?.deposit;
  return typeof deposit === 'object' ? showMoney(deposit) : deposit;
}

function factsOf(animal: Animal, events: readonly RackEvent[], picture: Picture): readonly Fact[] {
  const { sex, sexedBy, hatchedDay, lengthCm } = animal;
  const facts: readonly (readonly [string, string | undefined])[] = [
    ['Species', 'Ball python, Python regius'],
    ['Origin', originWords(animal, events, picture)],
    ['Hatched', hatchedDay === undefined ? 'day not on record' : dateWords(hatchedDay)],
    [
      'Sex',
      sex === 'unknown' ? 'not known' : `${sex}, ${sexedBy ?? 'how it was told is not on record'}`,
    ],
    ['Length', lengthCm === undefined ? undefined : `${lengthCm} cm`],
  ];
  return facts.flatMap(([term, says]) => (says === undefined ? [] : [[term, says] as const]));
}

function originWords(
  { hatched, origin }: Animal,
  events: readonly RackEvent[],
  { facts }: Picture,
): string {
  if (hatched || origin === 'own') return 'hatched here';
  const arrived = events.find((event) => event.type === 'arrived');
  const since = arrived ? `, here since ${dateWords(facts.nightOf(arrived.at))}` : '';
  return `${origin ?? 'not on record'}${since}`;
}

interface MealLine extends DatedLine {
  readonly outcome: EventOf<'meal-offered'>['outcome'];
  readonly prey: string;
}

/** Newest first. */
function mealsOf(events: readonly RackEvent[], { facts }: Picture): readonly MealLine[] {
  const settled = new Map(
    events.flatMap((event) =>
      event.type === 'meal-settled' ? [[event.offer, event.outcome] as const] : [],
    ),
  );
  return events
    .flatMap((event) => {
      if (event.type !== 'meal-offered') return [];
      const outcome = settled.get(event.id) ?? event.outcome;
      const { state, size, kind } = event.prey;
      const how = event.how === 'assisted' ? ', with help' : '';
      return [
        {
          night: facts.nightOf(event.at),
          outcome,
          says: `${outcomeWords[outcome]} ${showMeal(event.prey)}, ${state}${how}`,
          prey: `${state} ${kind === 'other' ? size : `${size} ${kind}`}`,
        },
      ];
    })
    .toReversed();
}

function eaten(meals: readonly MealLine[]): Pick<PapersView, 'eats' | 'lastFed'> {
  const last = meals.find(({ outcome }) => outcome === 'ate' || outcome === 'partly');
  return { eats: last?.prey, lastFed: last?.night };
}

function healthOf(events: readonly RackEvent[], { facts }: Picture): readonly DatedLine[] {
  return events.flatMap((event): readonly DatedLine[] => {
    if (event.type === 'treated') {
      const until = event.until === undefined ? '' : `, until ${dateWords(event.until)}`;
      return [{ night: facts.nightOf(event.at), says: `treated as prescribed by a vet${until}` }];
    }
    if (event.type === 'tested') {
      const result = event.result === undefined ? 'no result on record' : event.result;
      return [{ night: facts.nightOf(event.at), says: `tested for ${event.what}: ${result}` }];
    }
    if (event.type === 'health-noted' && event.severity > 1) {
      const word = event.severity === 3 ? 'grave' : 'clear';
      return [{ night: facts.nightOf(event.at), says: `${word} sign: ${event.system}` }];
    }
    if (event.type === 'regurgitated') {
      return [{ night: facts.nightOf(event.at), says: 'brought up a meal' }];
    }
    return [];
  });
}
