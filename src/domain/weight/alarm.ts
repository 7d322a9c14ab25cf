import type { Day } from '../core/calendar.ts';
import { showGrams } from '../core/units.ts';
import { lastDrop, peakDrop, seasonDrop, type Drop } from './drop.ts';
import {
  lookAtFast,
  lookAtGut,
  lookAtLaying,
  lookAtShed,
  lookForSlip,
  type Cause,
  type DropContext,
  type Looked,
} from './exclusions.ts';
import { lossLimits, type LossKind, type LossLimit } from './loss-limits.ts';
import { daysWords } from '../core/day-words.ts';
import { percentWords } from './words.ts';

export interface AlarmFacts extends DropContext {
  readonly kind: LossKind;
  /** The night a male's season opened: he is compared with his weight before it. */
  readonly seasonNight?: Day | undefined;
}

export interface Exclusion {
  readonly what: Cause;
  readonly sentence: string;
}

/**
 * Whether the newest weight is a reason to worry.
 *
 * `because` holds every cause that was looked at, whether it speaks or not. Silent without exclusions: there
 * is no drop to speak of.
 */
export type WeightAlarm =
  | {
      readonly speaks: true;
      readonly level: 'watch' | 'act';
      readonly drop: Drop;
      readonly because: readonly string[];
    }
  | {
      readonly speaks: false;
      readonly drop?: Drop | undefined;
      readonly exclusions: readonly Exclusion[];
    };

/**
 * Holds the newest weight against the one before, the highest since the last laying, and a male's weight
 * before the season. A drop speaks only for what is left of it when laying, slips, gut contents and a shed
 * have been looked at, and below the higher limit only where it is faster than a fast. A hatchling has less to lose,
 * and its fast is no excuse.
 *
 * Sources: lossLimits, maleLoss, nonFeeders, fasting, weightSlips.
 */
export function weightAlarm(facts: AlarmFacts): WeightAlarm {
  const { readings, layings, protocol, kind, seasonNight } = facts;
  const drops = [
    seasonNight === undefined ? undefined : seasonDrop(readings, seasonNight),
    peakDrop(readings, layings, protocol.weightPeakDays),
    lastDrop(readings),
  ];
  const judged = drops.flatMap((drop) => {
    const limit = lossLimits.find((row) => row.kind === kind && row.since === drop?.since);
    return drop && limit && drop.lostG > 0 ? [judge(drop, limit, facts)] : [];
  });
  const speaking =
    judged.find(({ level }) => level === 'act') ?? judged.find(({ level }) => level === 'watch');
  if (speaking?.level !== undefined) {
    const { drop, level, because } = speaking;
    return { speaks: true, level, drop, because };
  }
  // The drop that would have spoken loudest, had nothing explained it.
  const silent = judged
    .filter(({ exclusions }) => exclusions.length > 0)
    .toSorted((a, b) => b.drop.share - a.drop.share)[0];
  return { speaks: false, drop: silent?.drop, exclusions: silent?.exclusions ?? [] };
}

interface Judged {
  readonly drop: Drop;
  readonly level?: 'watch' | 'act' | undefined;
  readonly because: readonly string[];
  readonly exclusions: readonly Exclusion[];
}

function judge(drop: Drop, limit: LossLimit, facts: AlarmFacts): Judged {
  const laying = lookAtLaying(drop, facts);
  const slip = lookForSlip(drop, facts);
  const gut = lookAtGut(drop);
  const shed = lookAtShed(drop, facts);
  const leftG = Math.max(0, drop.lostG - (gut.upToG ?? 0) - (shed.upToG ?? 0));
  const fast = lookAtFast(drop, leftG, facts.protocol);
  const looked = [laying, slip, gut, shed, fast];
  const isExplained = laying.excludes || slip.excludes || gut.excludes;
  const level = isExplained ? undefined : levelOf(leftG, drop, limit, gut, fast, facts);
  const raw = levelOf(drop.lostG, drop, limit, NOTHING, NOTHING, facts);
  return {
    drop,
    level,
    because: [said(drop), ...looked.map(({ sentence }) => sentence)],
    exclusions: raw !== undefined && level === undefined ? explaining(looked) : [],
  };
}

const NOTHING: Looked = { what: 'gut contents', sentence: '', excludes: false, upToG: 0 };

/** Eggs and slips explain a drop alone; the others may share it. */
function explaining(looked: readonly Looked[]): readonly Exclusion[] {
  const alone = looked.find(
    ({ what, excludes }) => excludes && (what === 'laying' || what === 'entry error?'),
  );
  return alone ? [alone] : looked.filter(isPart);
}

/** Whether a cause explains some of the drop, or may: then it is named. */
const isPart = ({ what, excludes, upToG }: Looked): boolean =>
  excludes || (what === 'gut contents' && upToG !== 0) || (what === 'shed' && (upToG ?? 0) > 0);

function levelOf(
  leftG: number,
  { before }: Drop,
  { watch, act, againstFast }: LossLimit,
  gut: Looked,
  fast: Looked,
  { protocol }: AlarmFacts,
): 'watch' | 'act' | undefined {
  const share = leftG / before.massG;
  if (share >= protocol[act]) return 'act';
  // How full the gut was decides the pace: where that is not known, the pace says nothing.
  if (againstFast && (fast.excludes || gut.upToG === undefined)) return undefined;
  return share >= protocol[watch] ? 'watch' : undefined;
}

const said = ({ since, before, after, days, lostG, share }: Drop): string =>
  `${showGrams(after.massG)}: ${showGrams(lostG)} (${percentWords(share)}) below ${since}, ${showGrams(before.massG)}, in ${daysWords(days)}.`;
