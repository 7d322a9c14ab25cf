import type { Protocol, ProtocolKey } from '../protocol/values.ts';
import type { SourceId } from '../sources.ts';
import { fastLoss } from '../weight/fast.ts';
import { daysWords } from '../core/day-words.ts';
import { percentWords } from '../weight/words.ts';
import { nonFeeder } from './non-feeder.ts';
import {
  husbandryLooks,
  refusalRows,
  type RefusalClass,
  type RefusalPhase,
  type RefusalRow,
} from './refusal-rows.ts';

export interface RefusalFacts {
  readonly kind: 'hatchling' | RefusalClass;
  readonly isMale: boolean;
  readonly phase?: RefusalPhase | undefined;
  /** 1 to 12. */
  readonly month: number;
  readonly massG?: number | undefined;
  readonly largestFollicleMm?: number | undefined;
  readonly inBlue: boolean;
  readonly daysSinceArrival?: number | undefined;
  readonly daysSinceLaying?: number | undefined;
  /** In a row since the last unaided meal. */
  readonly refusals: number;
  /** Since that meal, or since the first refusal where none is on record. */
  readonly days: number;
  /** Days since the first shed or the last meal, whichever is later: a hatchling’s clock. */
  readonly clockDays?: number | undefined;
  /** Share of body mass lost since it last ate, of a hatchling since hatching, without eggs and gut contents; negative: gained. */
  readonly lostShare?: number | undefined;
  /** Breathing trouble, swelling, mites, a meal brought up, or weak. */
  readonly graveSign: boolean;
}

export interface RefusalReading {
  readonly level: 'expected' | 'watch' | 'act';
  /** The situation it was read in: the id of a row, of a rung, or `ill`. */
  readonly row: string;
  readonly isGoodSign: boolean;
  readonly because: readonly string[];
  /** What to look at around it. Never a treatment. */
  readonly looks: readonly string[];
  readonly asksVet: boolean;
  readonly source: SourceId;
}

/**
 * What the refusals of one animal mean. Undefined where it refused nothing.
 *
 * A count of refusals is never read alone: stage, season and weight stand beside it. Source: refusals.
 */
export function readRefusals(facts: RefusalFacts, protocol: Protocol): RefusalReading | undefined {
  const { kind, refusals, clockDays, lostShare, graveSign } = facts;
  if (refusals === 0) return undefined;
  if (kind === 'hatchling') {
    const found = nonFeeder({ refusals, clockDays, lostShare, isWeak: graveSign }, protocol);
    if (!found) return undefined;
    const { rung, because } = found;
    const { level, looks, asksVet } = rung;
    return {
      level,
      row: rung.id,
      isGoodSign: false,
      because,
      looks,
      asksVet,
      source: 'nonFeeders',
    };
  }
  if (graveSign) {
    return {
      level: 'act',
      row: 'ill',
      isGoodSign: false,
      because: ['It refuses and shows a grave sign: a matter for today.', ...weightWords(facts)],
      looks: [],
      asksVet: true,
      source: 'vetClock',
    };
  }
  const row = refusalRows.find((each) => fits(each, facts, protocol));
  return row && readBy(row, facts, protocol);
}

function fits({ when }: RefusalRow, facts: RefusalFacts, protocol: Protocol): boolean {
  const { kind, phase, daysSinceArrival = Infinity } = facts;
  return (
    (when.classes === undefined || when.classes.some((each) => each === kind)) &&
    (when.isMale === undefined || facts.isMale) &&
    (when.phases === undefined || when.phases.some((each) => each === phase)) &&
    (when.months === undefined || when.months.includes(facts.month)) &&
    (when.massFromG === undefined || (facts.massG ?? 0) >= when.massFromG) &&
    (when.follicleFromMm === undefined ||
      (facts.largestFollicleMm ?? 0) >= protocol[when.follicleFromMm]) &&
    (when.inBlue === undefined || facts.inBlue) &&
    // One that has refused since it came has not settled yet, however long ago that was.
    (when.arrivedWithinDays === undefined ||
      daysSinceArrival <= Math.max(protocol[when.arrivedWithinDays], facts.days))
  );
}

function readBy(row: RefusalRow, facts: RefusalFacts, protocol: Protocol): RefusalReading {
  const { refusals, lostShare = 0 } = facts;
  // After laying, the clock is hers, not that of the last meal months before.
  const days = row.id === 'after laying' ? (facts.daysSinceLaying ?? facts.days) : facts.days;
  const least = (key: ProtocolKey | undefined): number =>
    key === undefined ? Infinity : protocol[key];
  const { watch = {}, act } = row;
  const isAct =
    refusals >= least(act.refusals) || days > least(act.days) || lostShare >= least(act.lost);
  const isFaster =
    lostShare >= protocol.paceLossShare && lostShare > fastLoss(facts.days, protocol).high;
  const isWatch =
    isFaster ||
    (row.means === 'not usual' && refusals > 1) ||
    refusals >= least(watch.refusals) ||
    days > least(watch.days);
  const level = isAct ? 'act' : isWatch ? 'watch' : 'expected';
  const because = [
    `Refused ${refusals === 1 ? 'once' : `${refusals} times in a row`}, ${daysWords(facts.days)} since it last ate.`,
    row.says,
    ...weightWords(facts),
  ];
  if (isFaster) because.push('That is faster than a fast.');
  return {
    level,
    row: row.id,
    isGoodSign: row.means === 'good sign' && level === 'expected',
    because,
    looks: level === 'expected' ? [] : husbandryLooks,
    asksVet: level === 'act',
    source: row.source,
  };
}

function weightWords({ lostShare }: RefusalFacts): readonly string[] {
  if (lostShare === undefined) return ['No weight since: weigh it, the count alone misleads.'];
  if (lostShare <= 0) return ['It has lost no weight.'];
  return [`It has lost ${percentWords(lostShare)} of its weight.`];
}
