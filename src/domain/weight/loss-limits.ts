import type { ProtocolKey } from '../protocol/values.ts';
import type { Since } from './drop.ts';

export type LossKind = 'hatchling' | 'male in season' | 'other';

/** From where a loss is held against which limits. */
export interface LossLimit {
  readonly kind: LossKind;
  readonly since: Since;
  readonly watch: ProtocolKey;
  readonly act: ProtocolKey;
  /** Below `act`, only a loss faster than a fast counts. */
  readonly againstFast: boolean;
}

/** Each kind of animal has its limits; a row that is not here is not judged. Sources: lossLimits, maleLoss, nonFeeders. */
export const lossLimits: readonly LossLimit[] = [
  ...(['the weight before', 'its highest weight'] as const).flatMap((since): LossLimit[] => [
    {
      kind: 'hatchling',
      since,
      watch: 'hatchlingLossWatchShare',
      act: 'hatchlingLossActShare',
      againstFast: false,
    },
    ...(['other', 'male in season'] as const).map((kind): LossLimit => {
      return { kind, since, watch: 'paceLossShare', act: 'lossActShare', againstFast: true };
    }),
  ]),
  {
    kind: 'male in season',
    since: 'its weight before the season',
    watch: 'maleLossWatchShare',
    act: 'maleLossStopShare',
    againstFast: false,
  },
];
