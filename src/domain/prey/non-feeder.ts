import type { ProtocolKey, Protocol } from '../protocol/values.ts';
import { percentWords } from '../weight/words.ts';

export type RungId = 'N0' | 'N1' | 'N2' | 'N3' | 'N4';

/** One rung of the ladder: it is reached by any of its limits. */
export interface Rung {
  readonly id: RungId;
  readonly refusals?: number | undefined;
  /** Weeks since its first shed, or since its last meal where that is later; never without a refusal. */
  readonly weeks?: number | undefined;
  /** The protocol’s share of the hatch weight that is lost. */
  readonly lost?: ProtocolKey | undefined;
  readonly level: 'expected' | 'watch' | 'act';
  /** What to look at and change around it. No rung is a treatment. */
  readonly looks: readonly string[];
  readonly asksVet: boolean;
}

/** From the first refusal on. Source: nonFeeders. */
export const nonFeederLadder: readonly Rung[] = [
  {
    id: 'N0',
    refusals: 1,
    level: 'expected',
    looks: ['Leave it alone for 5 to 7 days, then offer again.'],
    asksVet: false,
  },
  {
    id: 'N1',
    refusals: 2,
    level: 'watch',
    looks: [
      'Warm end about 31 °C? Air damp enough?',
      'A smaller, darker, quieter tub and a tighter hide.',
      'Offer late in the evening and leave the room.',
    ],
    asksVet: false,
  },
  {
    id: 'N2',
    refusals: 4,
    weeks: 4,
    level: 'watch',
    looks: [
      'Another kind of prey, or a smaller one: mouse for rat, rat for mouse.',
      'Prey warmed well, or carrying the scent of another prey.',
      'One change at a time, with 5 to 7 quiet days between offers.',
    ],
    asksVet: false,
  },
  {
    id: 'N3',
    refusals: 5,
    weeks: 5,
    lost: 'hatchlingLossWatchShare',
    level: 'watch',
    looks: ['Weigh it every week.', 'No further changes now.', 'Show it to someone experienced.'],
    asksVet: true,
  },
  {
    id: 'N4',
    weeks: 7,
    lost: 'hatchlingLossActShare',
    level: 'act',
    looks: ['Weigh it, and take the list of offers and weights along.'],
    asksVet: true,
  },
];

export interface NonFeederFacts {
  readonly refusals: number;
  /** Days since its first shed, or since its last meal where that is later. */
  readonly clockDays?: number | undefined;
  /** Share of its hatch weight that it is below it; negative where it gained. */
  readonly lostShare?: number | undefined;
  /** Limp, sunken, or any other grave sign. */
  readonly isWeak: boolean;
}

export interface NonFeeder {
  readonly rung: Rung;
  readonly because: readonly string[];
}

/**
 * Where a hatchling that does not eat stands: by refusals in a row since its last unaided meal, by weeks, and by share of
 * its hatch weight, all said side by side. Undefined where there is nothing to say.
 */
export function nonFeeder(facts: NonFeederFacts, protocol: Protocol): NonFeeder | undefined {
  const { refusals, clockDays = 0, lostShare = 0, isWeak } = facts;
  const weeks = refusals > 0 ? clockDays / 7 : 0;
  const rung = nonFeederLadder.findLast(
    (each) =>
      (each.id === 'N4' && isWeak) ||
      refusals >= (each.refusals ?? Infinity) ||
      weeks >= (each.weeks ?? Infinity) ||
      (each.lost !== undefined && lostShare >= protocol[each.lost]),
  );
  return rung && { rung, because: because(facts) };
}

function because({ refusals, clockDays, lostShare, isWeak }: NonFeederFacts): readonly string[] {
  const lines = [
    refusals === 1
      ? 'Refused once since its last unaided meal.'
      : `Refused ${refusals} times since its last unaided meal.`,
  ];
  lines.push(
    lostShare === undefined
      ? 'Its hatch weight or a weight of late is not on record: weigh it.'
      : `${percentWords(lostShare)} ${lostShare < 0 ? 'above' : 'below'} its hatch weight.`,
  );
  if (clockDays !== undefined) {
    lines.push(`${Math.floor(clockDays / 7)} weeks since its first shed or last meal.`);
  }
  if (isWeak) lines.push('It is weak or looks ill.');
  return lines;
}
