import type { Day, Moment } from '../core/calendar.ts';

/** The room night of a moment, by the keeper's own hour of turning over. */
export type NightOf = (moment: Moment) => Day;
