import { fedUnthawed } from './rule-fed-unthawed.ts';
import { stockLow } from './rule-stock-low.ts';
import { stockNegative } from './rule-stock-negative.ts';
import { stockPast } from './rule-stock-past.ts';
import type { StockRule } from './stock-rule.ts';

/** Every rule about the freezer, the gravest first. A rule that is not listed here does not run. */
export const stockRules: readonly StockRule[] = [stockNegative, fedUnthawed, stockLow, stockPast];
