import type { SourceId } from '../sources.ts';

/** One number the rules and forecasts work with, and everything a keeper needs to judge it. */
export interface ProtocolValue {
  /** As it stands before the number: "A male stays". */
  readonly name: string;
  readonly value: number;
  readonly unit:
    | 'days'
    | 'hours'
    | 'o’clock'
    | 'g'
    | 'mm'
    | '°C'
    | 'cycles'
    | 'scans'
    | 'offers'
    | 'month'
    | 'months'
    | 'share'
    | 'share of body mass';
  /** The range in use among keepers. */
  readonly from: number;
  readonly to: number;
  readonly why: string;
  readonly source: SourceId;
}
