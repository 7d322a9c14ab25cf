import type { Day, Moment } from '../../core/calendar.ts';
import type { EventId } from '../../core/ids.ts';
import type { Protocol } from '../../protocol/values.ts';
import type { SourceId } from '../../sources.ts';
import type { Clutch } from '../../state/clutch.ts';
import type { Incubator } from '../../state/incubator.ts';
import type { EggCounts } from '../eggs.ts';
import type { PipOutlook } from '../pip-outlook.ts';

export type HatcheryRuleId = 'C1' | 'C2' | 'C3' | 'C4' | 'I1' | 'I2' | 'I3' | 'I4';

interface Time {
  readonly protocol: Protocol;
  readonly night: Day;
  readonly nowMs: number;
  readonly nightOf: (moment: Moment) => Day;
}

export interface ClutchFacts extends Time {
  readonly clutch: Clutch;
  /** Nights since the last one they may have been laid on. */
  readonly day: number;
  readonly counts: EggCounts;
  /** Until the first pip. */
  readonly outlook: PipOutlook | undefined;
}

export interface IncubatorFacts extends Time {
  readonly incubator: Incubator;
  /** Clutches in it with eggs still in the shell. */
  readonly clutches: number;
}

/** What a rule asks for, with the facts it rests on, one sentence each. */
export interface Asked {
  readonly asks: string;
  readonly state: 'due' | 'overdue';
  /** It stands at the top, before anything else. */
  readonly alarm: boolean;
  readonly because: readonly string[];
  readonly records: readonly EventId[];
}

/** A rule about eggs or an incubator. Nothing it says is a procedure at home. */
export interface HatcheryRule<Facts> {
  /** Stable for ever, never reused. */
  readonly id: HatcheryRuleId;
  readonly says: string;
  readonly source: SourceId;
  readonly vet?: true;
  readonly check: (facts: Facts) => Asked | undefined;
}
