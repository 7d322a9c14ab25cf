import { addDays, daysBetween } from '../core/calendar.ts';
import { dateWords } from '../core/day-words.ts';
import { mealsInRow } from '../prey/established.ts';
import type { RoomFacts } from '../rules/rule.ts';
import type { SourceId } from '../sources.ts';
import type { Animal } from '../state/animal.ts';

/** Why an animal is not to be sold now, with its rule. */
export interface SaleBlock {
  /** Stable for ever, like the ids of rules. */
  readonly rule: 'D1' | 'D2' | 'D3' | 'D4' | 'D5';
  readonly code:
    'not-established' | 'in-quarantine' | 'under-treatment' | 'grave-sign' | 'kept-back';
  /** In a few words, for a line. */
  readonly short: string;
  readonly because: readonly string[];
  readonly says: string;
  readonly source: SourceId;
  /** It is for a vet to say when this is over. */
  readonly vet: boolean;
  /** It is not sent in this state either: it is unwell, or may be. */
  readonly isUnwell: boolean;
}

/** A course without an end on record is taken to last so long. */
const COURSE_DAYS = 30;

const YEAR_DAYS = 365;

type Facts = Pick<RoomFacts, 'night' | 'nightOf' | 'protocol'>;

/** In its first year. Of one whose day of hatching is not known, nothing is asked. */
export function isYoung({ hatched, hatchedDay }: Animal, { night, nightOf }: Facts): boolean {
  const born = hatchedDay ?? (hatched && nightOf(hatched.at));
  return born !== undefined && daysBetween(born, night) < YEAR_DAYS;
}

/** All that stands against selling it tonight. Sources: with each. */
export function againstSale(animal: Animal, facts: Facts): readonly SaleBlock[] {
  return [
    kept(animal),
    quarantined(animal, facts),
    treated(animal, facts),
    grave(animal, facts),
    notEstablished(animal, facts),
  ].filter((block) => block !== undefined);
}

function notEstablished(animal: Animal, facts: Facts): SaleBlock | undefined {
  const { establishedMeals } = facts.protocol;
  const meals = mealsInRow(animal);
  if (!isYoung(animal, facts) || meals >= establishedMeals) return undefined;
  return {
    rule: 'D1',
    code: 'not-established',
    short: `${meals} of ${establishedMeals} unaided meals in a row`,
    because: [
      `It has taken ${meals} unaided ${meals === 1 ? 'meal' : 'meals'} in a row; established is ${establishedMeals}.`,
    ],
    says: 'A young one is not sold before it eats by itself, meal after meal.',
    source: 'established',
    vet: false,
    isUnwell: false,
  };
}

function quarantined({ quarantine }: Animal, { nightOf }: Facts): SaleBlock | undefined {
  if (!quarantine) return undefined;
  const until =
    quarantine.until === undefined ? '' : `, planned until ${dateWords(quarantine.until)}`;
  return {
    rule: 'D2',
    code: 'in-quarantine',
    short: 'in quarantine',
    because: [`It is in quarantine since ${dateWords(nightOf(quarantine.since))}${until}.`],
    says: 'What is in quarantine stays until that is over.',
    source: 'unwellSale',
    vet: false,
    isUnwell: true,
  };
}

function treated({ treated: course }: Animal, { night, nightOf }: Facts): SaleBlock | undefined {
  if (!course) return undefined;
  const last = course.until ?? addDays(nightOf(course.at), COURSE_DAYS);
  if (last < night) return undefined;
  return {
    rule: 'D3',
    code: 'under-treatment',
    short: 'under treatment',
    because: [
      course.until === undefined
        ? `It is under treatment; no end is on record, so it is taken to last until ${dateWords(last)}.`
        : `It is under treatment until ${dateWords(last)}.`,
      'In places it must not be sold then.',
    ],
    says: 'What is under treatment is not sold.',
    source: 'unwellSale',
    vet: true,
    isUnwell: true,
  };
}

function grave({ graveSign }: Animal, { nightOf }: Facts): SaleBlock | undefined {
  if (!graveSign) return undefined;
  return {
    rule: 'D4',
    code: 'grave-sign',
    short: `grave sign: ${graveSign.system}`,
    because: [
      `Grave sign noted on ${dateWords(nightOf(graveSign.at))}: ${graveSign.system}.`,
      'It stands until the same is noted as a lesser one. A reptile vet says whether it is over.',
    ],
    says: 'With a grave sign it goes to a vet, and not to a buyer.',
    source: 'unwellSale',
    vet: true,
    isUnwell: true,
  };
}

function kept({ heldBack }: Animal): SaleBlock | undefined {
  if (!heldBack) return undefined;
  return {
    rule: 'D5',
    code: 'kept-back',
    short: 'kept back',
    because: ['You keep it back. Putting it up for sale ends that.'],
    says: 'What is kept back is not on offer.',
    source: 'heldBack',
    vet: false,
    isUnwell: false,
  };
}
