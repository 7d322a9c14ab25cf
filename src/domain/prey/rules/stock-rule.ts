import type { Day } from '../../core/calendar.ts';
import type { SourceId } from '../../sources.ts';
import type { Drawer } from '../../state/freezer.ts';

export type StockRuleId = 'K1' | 'K2' | 'K3' | 'K4';

/** What a rule may look at besides the drawer itself. */
export interface StockFacts {
  readonly night: Day;
  readonly nightOf: (moment: NonNullable<Drawer['countedAt']>) => Day;
  /** The first night on which pieces run out, at what is expected to be eaten; undefined: not within sight. */
  readonly lastsUntil?: Day | undefined;
  /** How soon that is worth a word. */
  readonly orderDays: number;
  /** Pieces fed tonight and last night over those thawed for it. */
  readonly fedUnthawed: number;
}

/** What a rule says about one size of prey. */
export interface StockAlarm {
  readonly asks: string;
  readonly because: readonly string[];
}

export interface StockRule {
  /** Stable for ever, never reused. */
  readonly id: StockRuleId;
  readonly says: string;
  readonly source: SourceId;
  readonly check: (drawer: Drawer, facts: StockFacts) => StockAlarm | undefined;
}
