import fc from 'fast-check';
import { addDays, type Day } from '../../src/domain/core/calendar.ts';

export const aDay = fc.integer({ min: 0, max: 2500 }).map((n) => addDays('2024-01-01' as Day, n));
/** Whole offsets from Hawaii to Auckland, and India's and Nepal's. */
export const anOffset = fc.constantFrom(-600, -300, 0, 60, 120, 330, 345, 780);
