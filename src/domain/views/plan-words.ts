import { addDays, type Day } from '../core/calendar.ts';
import type { AnimalId } from '../core/ids.ts';
import type { Bar, LimitName } from '../rotation/bars.ts';
import type { PlanChange } from '../rotation/changes.ts';
import type { Night, PlanProblem, Visit } from '../rotation/plan-problem.ts';
import type { Stop, Unplanned } from '../rotation/unplanned.ts';
import { dayWords } from '../calendar-file/span-words.ts';

/** What the words of a plan are made with. */
export interface PlanTongue {
  readonly problem: PlanProblem;
  readonly night: Day;
  readonly nameOf: (id: AnimalId) => string;
}

const dayOf = (night: Night, { night: tonight }: PlanTongue): string =>
  night === 0 ? 'tonight' : dayWords(addDays(tonight, night));

/** "Flint with Sorrel, tonight to Fri 27 Nov" */
export const visitWords = (visit: Visit, tongue: PlanTongue): string =>
  `${tongue.nameOf(visit.male)} with ${tongue.nameOf(visit.female)}, ${dayOf(visit.in, tongue)} to ${dayOf(visit.out, tongue)}`;

const sentences: Readonly<
  Record<LimitName, (names: { he: string; she: string; who: string; from: string }) => string>
> = {
  apart: ({ who, from }) => `${who} is to be by itself.${from}`,
  stopped: ({ he }) => `${he} lost too much mass and rests until he has it back.`,
  'not in her window': ({ she, from }) => `${she} is not in her window.${from}`,
  'needs a reason': ({ he, she }) =>
    `${he} and ${she} are planned only with a reason of yours. Give one on their page.`,
  barred: ({ he, she }) => `You keep ${he} and ${she} apart. Lift it to plan them.`,
  'fed lately': ({ who, from }) => `${who} ate lately.${from}`,
  'meal due': ({ who, from }) => `${who} is due a meal first.${from}`,
  'in blue': ({ who, from }) => `${who} is in blue.${from}`,
  rest: ({ he, from }) => `${he} rests after his last visit.${from}`,
  interval: ({ she, from }) => `${she} had a visit and has her days of pause.${from}`,
  away: ({ from }) =>
    `Nobody is there on an evening it needs.${from || ' An evening at home would free it.'}`,
  'females per male': ({ he }) =>
    `${he} has as many females as you give him. Another male as reserve would free it, or a larger number.`,
  'one place': ({ he }) => `${he} is elsewhere. Another male as reserve would free it.`,
};

/** A limit that stands against two, in a sentence, with the evening that frees it. */
export function barWords(
  { limit, who, until }: Pick<Bar, 'limit' | 'who' | 'until'>,
  { male, female }: Pick<Visit, 'male' | 'female'>,
  tongue: PlanTongue,
): string {
  const { problem, nameOf } = tongue;
  const [he, she] = [nameOf(male), nameOf(female)];
  const his = problem.males.find(({ id }) => id === male);
  const hers = problem.females.find(({ id }) => id === female);
  if (limit === 'apart') {
    const says = who === 'male' ? his?.apart : hers?.apart;
    return `${who === 'male' ? he : she}: ${says ?? 'by itself.'}`;
  }
  if (limit === 'stopped' && his?.stopped !== undefined) return `${he}: ${his.stopped}`;
  if (limit === 'not in her window' && hers?.closed !== undefined) return `${she}: ${hers.closed}`;
  const pair = problem.wanted.find((each) => each.male === male && each.female === female);
  const [unreasoned] = pair?.unreasoned ?? [];
  if (limit === 'needs a reason' && unreasoned !== undefined) {
    return `${unreasoned} Planned only with a reason of yours: give it on their page.`;
  }
  const from =
    until !== undefined && Number.isFinite(until) ? ` Free from ${dayOf(until, tongue)}.` : '';
  return sentences[limit]({ he, she, who: who === 'male' ? he : she, from });
}

/** Which limit stops a pair, and what would free it; a sentence each. */
export const unplannedWords = (each: Unplanned, tongue: PlanTongue): readonly string[] =>
  each.stops.map((stop) => stopWords(stop, each, tongue));

function stopWords(
  { limit, who, from, others }: Stop,
  pair: Unplanned,
  tongue: PlanTongue,
): string {
  const [other] = others;
  if (limit === 'one place' && other) {
    return `${tongue.nameOf(pair.male)} is better used: ${visitWords(other, tongue)}. Another male as reserve would free it, or a pin.`;
  }
  return barWords({ limit, who, until: from }, pair, tongue);
}

/** A change of the plan and its reason. */
export function changeWords({ kind, visit, to, because }: PlanChange, tongue: PlanTongue): string {
  const was = visitWords(visit, tongue);
  const [bar] = because;
  const why = bar ? barWords(bar, visit, tongue) : 'The plan is better so.';
  const now = to && `Now ${dayOf(to.in, tongue)} to ${dayOf(to.out, tongue)}.`;
  switch (kind) {
    case 'missed':
      return `Missed: ${was}. ${now ?? 'He goes elsewhere, or later.'}`;
    case 'moved':
      return `Moved: ${was}. ${now ?? ''} ${why}`;
    case 'left out':
      return `Left out: ${was}. ${why}`;
    case 'new':
      return `New: ${was}.`;
  }
}
