import {
  addDays,
  eveningOf,
  instantMs,
  type Day,
  type Moment,
} from '../../domain/core/calendar.ts';
import { nightWords, offsetMinOn } from '../night.ts';

/** A look at which it had not happened yet. */
export interface LastLook {
  readonly at: Moment;
  readonly words: string;
}

const NIGHTS = 7;

/** Looks before a night, the one on record first: since then it must have happened. */
export function lastLooks(
  recorded: Moment | undefined,
  tonight: Day,
  night: Day | undefined,
): readonly LastLook[] {
  const seen = night ?? tonight;
  const evenings = Array.from({ length: NIGHTS }, (_, i) => addDays(seen, -1 - i)).map((day) => ({
    at: eveningOf(day, offsetMinOn(day)),
    words: nightWords(day),
  }));
  const isBefore =
    recorded !== undefined &&
    (night === undefined || instantMs(recorded) < instantMs(eveningOf(night, offsetMinOn(night))));
  if (!isBefore) return evenings;
  const words = `${nightWords(recorded.slice(0, 10) as Day)}, ${recorded.slice(11, 16)}, on record`;
  return [{ at: recorded, words }, ...evenings];
}
