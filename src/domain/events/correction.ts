import { EventId } from './fields.ts';
import { event, line } from './envelope.ts';

/** Nothing is ever deleted: a struck event stays readable, with the reason. */
export const correctionEvents = [
  event('struck', 1, { target: EventId, reason: line(200) }),
] as const;
