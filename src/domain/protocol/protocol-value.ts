import type { SourceId } from '../sources.ts';

/** One number the rules and forecasts work with. */
export interface ProtocolValue {
  /** As it stands before the number: "A male stays". */
  readonly name: string;
  readonly value: number;
  readonly unit:
    | 'days'
    | 'minutes'
    | 'hours'
    | 'o’clock'
    | 'g'
    | 'mm'
    | '°C'
    | 'cycles'
    | 'scans'
    | 'offers'
    | 'females'
    | 'meals'
    | 'month'
    | 'months'
    | 'share'
    | 'share of body mass';
  /** The range in use among keepers. */
  readonly from: number;
  readonly to: number;
}

/**
 * What a keeper needs to judge a number. It lies apart from the numbers, since these are fetched before
 * anything can be written down, and the reasons only when somebody asks.
 */
export interface ValueReason {
  readonly why: string;
  readonly source: SourceId;
}

export type ReasonsFor<Values> = Readonly<Record<keyof Values, ValueReason>>;
