import type { SourceId } from '../sources.ts';

/** One number the rules and forecasts work with. */
export interface ProtocolValue {
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
 * What a keeper reads of a number, and judges it by. It lies apart from the numbers, since these are fetched before
 * anything can be written down, and the words only when somebody asks.
 */
export interface ValueReason {
  /** As it stands before the number: "A male stays". */
  readonly name: string;
  readonly why: string;
  readonly source: SourceId;
}

export type ReasonsFor<Values> = Readonly<Record<keyof Values, ValueReason>>;
