import type { Day } from '../core/calendar.ts';
import type { EventId } from '../core/ids.ts';
import type { ScanErrors } from '../follicles/error.ts';
import type { Resorbing } from '../follicles/resorbing.ts';
import type { Protocol } from '../protocol/values.ts';
import type { Season } from '../state/season.ts';
import type { NightOf } from './night-of.ts';
import type { PreLay } from './pre-lay.ts';

export type FemaleStage =
  | 'growing'
  | 'resting'
  | 'building'
  | 'resorbing'
  | 'ovulated'
  | 'pre-lay shed'
  | 'laid'
  | 'recovering';

export type MaleStage =
  'growing' | 'ready' | 'in rotation' | 'resting' | 'off food' | 'losing mass';

export type Stage = FemaleStage | MaleStage;

/** What a stage may look at besides the animal. */
export interface StageFacts {
  readonly protocol: Protocol;
  readonly night: Day;
  readonly nightOf: NightOf;
  /** The keeper's measurement error by method. */
  readonly scanErrors: () => ScanErrors;
}

/** What is known of an ovulation that nobody doubts, and how. */
export interface Ovulation {
  readonly how: 'seen at peak' | 'seen late' | 'inferred' | 'from the shed' | 'from a scan';
  /** The nights it may have been, both included; for one from the shed, only the shed is known. */
  readonly first: Day;
  readonly last: Day;
  readonly id: EventId;
}

/** The last look at her follicles. */
export interface LastScan {
  readonly night: Day;
  /** Undefined: none seen, none felt. */
  readonly mm: number | undefined;
  readonly isFelt: boolean;
  readonly id: EventId;
}

/** The season under way, as far as it has come. */
export interface SeasonNow {
  readonly season: Season;
  readonly scan?: LastScan | undefined;
  /** Fresh signs of building, each kind once. */
  readonly signs: readonly string[];
  readonly ovulation?: Ovulation | undefined;
  readonly preLay?: PreLay | undefined;
  readonly resorbing?: Resorbing | undefined;
}

/** Where an animal stands tonight, and the facts that put it there. */
export interface Standing {
  readonly stage: Stage;
  readonly since?: Day | undefined;
  readonly because: readonly string[];
  readonly records: readonly EventId[];
  /** Records that cannot all be true, a sentence each. */
  readonly conflicts: readonly string[];
  readonly now?: SeasonNow | undefined;
}
