import { daysBetween, type Day } from '../core/calendar.ts';
import type { ClutchId, IncubatorId } from '../core/ids.ts';
import { eggCounts, type EggCounts } from '../clutch/eggs.ts';
import { isExpected, isOpen } from '../clutch/expected.ts';
import { clutchesIn, incubatorsIn } from '../clutch/clutches-in.ts';
import { ownPips } from '../clutch/own-pips.ts';
import { pipOutlook, type PipOutlook } from '../clutch/pip-outlook.ts';
import { clutchRules, incubatorRules } from '../clutch/rules/all.ts';
import { newestReading } from '../clutch/rules/egg-readings.ts';
import type { Asked, HatcheryRule, HatcheryRuleId } from '../clutch/rules/hatchery-rule.ts';
import type { Picture } from '../picture/picture.ts';
import { spanOf } from '../season/span.ts';
import type { SourceId } from '../sources.ts';
import type { Clutch } from '../state/clutch.ts';
import type { Incubator } from '../state/incubator.ts';
import type { OwnInterval } from '../windows/own-interval.ts';

/** One thing to do about eggs or an incubator, ready to show. */
export interface EggChore extends Pick<Asked, 'asks' | 'state' | 'alarm' | 'because'> {
  readonly rule: HatcheryRuleId;
  /** What the rule says, and where that comes from. */
  readonly says: string;
  readonly source: SourceId;
  readonly vet?: true | undefined;
}

export interface ClutchLine {
  readonly id: ClutchId;
  readonly dam: string;
  /** The last night they may have been laid on. */
  readonly laid?: Day | undefined;
  readonly day: number;
  readonly counts: EggCounts;
  readonly window?: PipOutlook | undefined;
  readonly incubator?: string | undefined;
  readonly withHer: boolean;
  readonly closed?: string | undefined;
  readonly chores: readonly EggChore[];
}

export interface IncubatorLine {
  readonly id: IncubatorId;
  readonly name: string;
  readonly clutches: number;
  readonly tempC?: number | undefined;
  readonly ageMin?: number | undefined;
  readonly noHeat: boolean;
  readonly chores: readonly EggChore[];
}

export interface HatcheryView {
  readonly night: Day;
  readonly incubators: readonly IncubatorLine[];
  /** The youngest first. */
  readonly open: readonly ClutchLine[];
  readonly closed: readonly ClutchLine[];
}

/** The clutches that stand in an incubator now. */
export const clutchesOf = (id: IncubatorId, picture: Picture): readonly Clutch[] =>
  clutchesIn(picture).filter((clutch) => isOpen(clutch) && clutch.stands.at(-1)?.incubator === id);

export function hatcheryView(picture: Picture): HatcheryView {
  const own = ownPips(picture);
  const lines = clutchesIn(picture).map((clutch) => clutchLine(clutch, picture, own));
  const newestFirst = lines.toSorted((a, b) => ((a.laid ?? '') < (b.laid ?? '') ? 1 : -1));
  return {
    night: picture.facts.night,
    incubators: incubatorsIn(picture)
      .filter(({ retired }) => !retired)
      .map((incubator) => incubatorLine(incubator, picture)),
    open: newestFirst.filter(({ closed }) => closed === undefined),
    closed: newestFirst.filter(({ closed }) => closed !== undefined),
  };
}

export function clutchLine(
  clutch: Clutch,
  picture: Picture,
  own: readonly OwnInterval[],
): ClutchLine {
  const { facts } = picture;
  const { protocol, night, nowMs, nightOf } = facts;
  const laid = clutch.laid && spanOf(clutch.laid, nightOf).last;
  const day = laid === undefined ? 0 : daysBetween(laid, night);
  const counts = eggCounts(clutch);
  const open = isExpected(clutch, day);
  const outlook = open ? pipOutlook(clutch, picture, own) : undefined;
  const stands = clutch.stands.at(-1);
  const incubator =
    stands && (picture.ledger.subjects.get(stands.incubator) as Incubator | undefined);
  const asked = { clutch, day, counts, outlook, protocol, night, nowMs, nightOf };
  return {
    id: clutch.id,
    dam: clutch.dam ? facts.nameOf(clutch.dam) : 'an unknown dam',
    laid,
    day,
    counts,
    window: outlook,
    incubator: incubator?.name,
    withHer: clutch.laid?.care === 'with her',
    closed: clutch.closed?.why ?? (open ? undefined : 'long past'),
    chores: open ? choresOf(clutchRules, asked) : [],
  };
}

export function incubatorLine(incubator: Incubator, picture: Picture): IncubatorLine {
  const { protocol, night, nowMs, nightOf } = picture.facts;
  const clutches = clutchesOf(incubator.id, picture).length;
  const newest = newestReading(incubator);
  return {
    id: incubator.id,
    name: incubator.name || 'Incubator',
    clutches,
    tempC: newest?.tempC,
    ageMin: newest && Math.max(0, nowMs / 60_000 - newest.minute),
    noHeat: incubator.failures.some(({ until }) => until === undefined),
    chores: choresOf(incubatorRules, { incubator, clutches, protocol, night, nowMs, nightOf }),
  };
}

const choresOf = <Facts>(rules: readonly HatcheryRule<Facts>[], facts: Facts): EggChore[] =>
  rules.flatMap(({ id, says, source, vet, check }) => {
    const asked = check(facts);
    if (!asked) return [];
    const { asks, state, alarm, because } = asked;
    return [{ rule: id, says, source, vet, asks, state, alarm, because }];
  });
