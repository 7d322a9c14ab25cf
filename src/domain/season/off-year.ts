import { daysBetween, instantMs } from '../core/calendar.ts';
import { monthName } from '../core/month-names.ts';
import type { Animal } from '../state/animal.ts';
import type { Laid } from '../state/season.ts';
import { ageMonths, notRecovered, poorCondition } from './fitness.ts';
import type { StageFacts } from './standing.ts';

/** Two clutches no farther apart are those of two years running. */
const NEXT_YEAR_DAYS = 500;

/**
 * What speaks for a year without eggs, a sentence each; empty where nothing does, or she never laid.
 * Advice: the keeper decides. Source: offYear.
 */
export function offYearReasons(animal: Animal, facts: StageFacts): readonly string[] {
  const clutches = [...animal.pastSeasons, animal.season].flatMap((season) => season?.laid ?? []);
  const last = clutches.at(-1);
  if (!last) return [];
  const { protocol } = facts;
  const before = clutches.at(-2);
  const slow = notRecovered(animal, facts);
  const months = ageMonths(animal, facts);
  const condition = poorCondition(animal);
  const reasons: string[] = [];
  if (slow !== undefined) reasons.push(slow);
  // A clutch each year is usual; with a slow recovery it is a reason more.
  if (slow !== undefined && before && inTwoYears(before, last, facts)) {
    reasons.push(`Laid in ${monthOfYear(before)} and in ${monthOfYear(last)}.`);
  }
  if (animal.eggsFelt?.left === 'some' && instantMs(animal.eggsFelt.at) >= instantMs(last.at)) {
    reasons.push('Eggs were left in her after the last clutch.');
  }
  if (before && [before, last].every((laid) => slugShare(laid) > protocol.offYearSlugShare)) {
    const share = Math.round(100 * protocol.offYearSlugShare);
    reasons.push(`Over ${share} % slugs in each of her last two clutches.`);
  }
  if (months !== undefined && months >= protocol.offYearFromMonths) {
    reasons.push(`${Math.floor(months / 12)} years old.`);
  }
  if (condition !== undefined) reasons.push(condition);
  return reasons;
}

const inTwoYears = (before: Laid, last: Laid, { nightOf }: StageFacts): boolean =>
  daysBetween(nightOf(before.at), nightOf(last.at)) <= NEXT_YEAR_DAYS;

const monthOfYear = ({ at }: Laid): string =>
  `${monthName(Number(at.slice(5, 7)))} ${at.slice(0, 4)}`;

function slugShare({ good, slugs, unsure }: Laid): number {
  const all = (good ?? 0) + (slugs ?? 0) + (unsure ?? 0);
  return all === 0 ? 0 : (slugs ?? 0) / all;
}
