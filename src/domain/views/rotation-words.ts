import type { AnimalId } from '../core/ids.ts';
import type { RotationEvent } from '../state/rotation.ts';

const ruleWords = {
  pinned: 'visit pinned',
  apart: 'kept apart',
  free: 'pin or ban lifted',
} as const;

/** A wish for the rotation in a few words. */
export function rotationWords(event: RotationEvent, nameOf: (id: AnimalId) => string): string {
  switch (event.type) {
    case 'pair-wanted': {
      const two = `${nameOf(event.male)} for ${nameOf(event.female)}`;
      if (event.choice === 'none') return `no longer wanted: ${two}`;
      return `${event.choice === 'first' ? 'first choice' : 'reserve'}: ${two}`;
    }
    case 'visit-ruled':
      return `${ruleWords[event.rule.kind]}: ${nameOf(event.male)} and ${nameOf(event.female)}`;
    case 'evenings-away':
      return `${event.from} to ${event.last}: ${event.is === 'away' ? 'nobody there' : 'somebody there'} in the evening`;
    case 'visits-planned':
      return `plan kept: ${event.visits.length} ${event.visits.length === 1 ? 'visit' : 'visits'}`;
  }
}
