import { codeOf } from '../commands/new-labels.ts';
import type { LabelCode } from '../core/code.ts';
import type { ClutchId, IncubatorId } from '../core/ids.ts';
import { allSeries } from '../clutch/warmth-of.ts';
import type { Picture } from '../picture/picture.ts';
import type { HeatFailure, Incubator } from '../state/incubator.ts';
import { clutchesOf, incubatorLine, type IncubatorLine } from './hatchery-view.ts';
import { recordLine, type RecordLine } from './record-line.ts';

export interface IncubatorView extends IncubatorLine {
  readonly targetC: number;
  readonly lowC: number;
  readonly highC: number;
  readonly code?: LabelCode | undefined;
  readonly inIt: readonly { readonly id: ClutchId; readonly dam: string }[];
  readonly others: readonly IncubatorId[];
  /** Names of sensors heard of before. */
  readonly sensors: readonly string[];
  readonly failures: readonly HeatFailure[];
  readonly isWhole: boolean;
  readonly history: readonly RecordLine[];
}

export function incubatorView(id: IncubatorId, picture: Picture): IncubatorView | undefined {
  const incubator = picture.ledger.subjects.get(id) as Incubator | undefined;
  if (!incubator) return undefined;
  const { facts, ledger } = picture;
  const { protocol } = facts;
  const targetC = incubator.targetC ?? protocol.incubatorTargetC;
  const [lowC, highC] = [protocol.eggLowC, protocol.eggHighC];
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
    sensors: [...new Set(allSeries(incubator, picture).flatMap(({ sensor }) => sensor ?? []))],
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
