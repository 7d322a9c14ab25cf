import { dateWords } from '../core/day-words.ts';
import { showGrams } from '../core/units.ts';
import type { Picture } from '../picture/picture.ts';
import { chanceEats } from '../prey/acceptance.ts';
import { appetiteOf } from '../prey/appetite-of.ts';
import {
  ageMonths,
  breedingFloor,
  hasLaid,
  massWords,
  notRecovered,
  poorCondition,
} from '../season/fitness.ts';
import { offYearReasons } from '../season/off-year.ts';
import type { Animal } from '../state/animal.ts';
import type { ReadinessLine } from './readiness-line.ts';
import { backWords, firstMealLine } from './recovery-lines.ts';

const OFF_YEAR_ADVICE =
  'That speaks for a year without eggs, by common practice; you decide, and a reptile vet can look at her.';

/** Empty for one that has left, or whose sex is not known. */
export function readinessLines(animal: Animal, picture: Picture): readonly ReadinessLine[] {
  if (animal.gone || animal.sex === 'unknown') return [];
  const { facts, ledger } = picture;
  const { fromG, fromMonths } = breedingFloor(animal, facts.protocol);
  const last = animal.weighings.at(-1);
  const months = ageMonths(animal, facts);
  const fat = poorCondition(animal);
  const clutch = animal.sex === 'male' ? undefined : notRecovered(animal, facts);
  const offYear = animal.sex === 'male' ? [] : offYearReasons(animal, facts);
  const smaller = ledger
    .history(animal.id)
    .findLast((event) => event.type === 'started-smaller' && ledger.stands(event.id));
  return [
    {
      what: 'Mass',
      says: last
        ? massWords(last, fromG, facts)
        : `Not weighed; your floor is ${showGrams(fromG)}.`,
      isMet: last && last.massG >= fromG,
    },
    {
      what: 'Age',
      says:
        months === undefined
          ? `Hatch day not known; you breed from ${fromMonths} months.`
          : `${Math.floor(months)} months; you breed from ${fromMonths}.`,
      isMet: months === undefined ? undefined : months >= fromMonths,
    },
    {
      what: 'Appetite',
      says: `Eats about ${Math.round(100 * chanceEats(appetiteOf(animal, facts)))} of 100 offers at this time of the year.`,
    },
    ...(animal.condition
      ? [
          {
            what: 'Body' as const,
            says: fat ?? `Condition ${animal.condition.score} of 5.`,
            isMet: fat === undefined,
          },
        ]
      : []),
    ...firstMealLine(animal, picture),
    ...(hasLaid(animal)
      ? [
          {
            what: 'Last clutch' as const,
            says: clutch
              ? `${clutch} ${backWords(facts.protocol)}`
              : 'Recovered from her last clutch.',
            isMet: clutch === undefined,
          },
        ]
      : []),
    ...(offYear.length > 0
      ? [{ what: 'Off year' as const, says: `${offYear.join(' ')} ${OFF_YEAR_ADVICE}` }]
      : []),
    {
      what: 'Quarantine',
      says: animal.quarantine
        ? `In quarantine since ${dateWords(facts.nightOf(animal.quarantine.since))}.`
        : 'Not in quarantine.',
      isMet: animal.quarantine === undefined,
    },
    ...(smaller?.type === 'started-smaller'
      ? [{ what: 'Started smaller' as const, says: `Because: ${smaller.why}` }]
      : []),
  ];
}
