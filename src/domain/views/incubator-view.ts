import type { Day } from '../core/calendar.ts';
import { codeOf } from '../commands/new-labels.ts';
import type { LabelCode } from '../core/code.ts';
import type { ClutchId, IncubatorId } from '../core/ids.ts';
import { allSeries } from '../clutch/warmth-of.ts';
import type { Picture } from '../picture/picture.ts';
import { statisticsOf, type Statistics } from '../room/statistics.ts';
import { madeBy } from '../room/words.ts';
import type { HeatFailure, Incubator, IncubatorSpot } from '../state/incubator.ts';
import { clutchesOf, incubatorLine, type IncubatorLine } from './hatchery-view.ts';
import { recordLine, type RecordLine } from './record-line.ts';

export interface IncubatorSeries {
  readonly spot: IncubatorSpot;
  readonly by: string;
  /** Against the limits between eggs. */
  readonly statistics: Statistics;
}

export interface IncubatorView extends IncubatorLine {
  readonly targetC: number;
  readonly lowC: number;
  readonly highC: number;
  readonly code?: LabelCode | undefined;
  readonly inIt: readonly { readonly id: ClutchId; readonly dam: string }[];
  readonly others: readonly IncubatorId[];
  readonly days: number;
  readonly series: readonly IncubatorSeries[];
  readonly failures: readonly HeatFailure[];
  readonly isWhole: boolean;
  readonly history: readonly RecordLine[];
}

const DAYS = 7;

export function incubatorView(id: IncubatorId, picture: Picture): IncubatorView | undefined {
  const incubator = picture.ledger.subjects.get(id) as Incubator | undefined;
  if (!incubator) return undefined;
  const { facts, ledger } = picture;
  const { protocol, nowMs } = facts;
  const targetC = incubator.targetC ?? protocol.incubatorTargetC;
  const [lowC, highC] = [protocol.eggLowC, protocol.eggHighC];
  const toMin = Math.floor(nowMs / 60_000);
  const span = { fromMin: toMin - DAYS * 1_440, toMin };
  const always = {
    fromMin: -Infinity,
    toMin: Infinity,
    part: 'day',
    date: facts.night satisfies Day,
    settles: false,
    targetC,
    lowC,
    highC,
  } as const;
  return {
    ...incubatorLine(incubator, picture),
    targetC,
    lowC,
    highC,
    code: codeOf(id, picture),
    inIt: clutchesOf(id, picture).map((clutch) => ({
      id: clutch.id,
      dam: clutch.dam ? facts.nameOf(clutch.dam) : 'an unknown dam',
    })),
    others: [...ledger.subjects.values()].flatMap((each) =>
      'kind' in each && each.kind === 'incubator' && !each.retired && each.id !== id
        ? [each.id]
        : [],
    ),
    days: DAYS,
    series: allSeries(incubator, picture).map((series) => ({
      spot: series.spot,
      by: madeBy(series),
      statistics: statisticsOf(
        series.readings,
        span,
        () => always,
        protocol.incubatorGapHours * 60,
      ),
    })),
    failures: incubator.failures,
    isWhole: ledger.hasHistory,
    history: ledger
      .history(id)
      .toReversed()
      .slice(0, 200)
      .map((event) =>
        recordLine(
          event,
          picture,
          ledger.stands(event.id) ? undefined : (ledger.reasonStruck(event.id) ?? 'replaced'),
        ),
      ),
  };
}
