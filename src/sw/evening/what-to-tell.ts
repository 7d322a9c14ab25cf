import type { EveningView } from '../../domain/views/evening-view.ts';
import type { Told } from '../../store/told-note.ts';

/** `hush` takes back what was said, `leave` lets it stand or stays silent. */
export type Say = 'tell' | 'tell quietly' | 'leave' | 'hush';

export interface Wake {
  readonly evening: EveningView;
  readonly told: Told | undefined;
  /** A page of the app is in view: the keeper is at it. */
  readonly isWatched: boolean;
  /** The day on the wall, `2026-11-24`. */
  readonly today: string;
}

export const toldOf = ({ night, title, body, alarms }: EveningView): Told => ({
  night,
  words: `${title}\n${body}`,
  alarms,
});

/**
 * Whether to speak up. The platform wakes us at any hour: after midnight the night is still the one
 * before, and nobody is to be woken for it. What was said and not changed is not said again, also
 * where the keeper wiped it away; a change the same evening makes no sound, unless an alarm is new.
 */
export function whatToTell({ evening, told, isWatched, today }: Wake): Say {
  if (evening.count === 0) return 'hush';
  if (isWatched || today !== evening.night) return 'leave';
  if (told?.night !== evening.night) return 'tell';
  if (told.words === toldOf(evening).words) return 'leave';
  return evening.alarms > told.alarms ? 'tell' : 'tell quietly';
}
