import { addDays, daysBetween, type Day, type Moment } from '../core/calendar.ts';
import type { AnimalId } from '../core/ids.ts';
import type { EventOf, RackEvent } from '../events/event.ts';

export interface WantedMale {
  readonly female: AnimalId;
  readonly male: AnimalId;
  readonly choice: 'first' | 'reserve';
  readonly at: Moment;
}

export type RuledPair = Pick<EventOf<'visit-ruled'>, 'female' | 'male' | 'rule' | 'at' | 'id'>;

/** The keeper's wishes for the rotation, and the plan that was kept last. */
export interface Rotation {
  /** In the order of wanting. */
  readonly wanted: readonly WantedMale[];
  readonly ruled: readonly RuledPair[];
  /** Evenings without anybody, in order. */
  readonly away: readonly Day[];
  readonly plan?: EventOf<'visits-planned'> | undefined;
}

export const noRotation: Rotation = { wanted: [], ruled: [], away: [] };

/** Longer than a keeper is away at a time; what is past is forgotten. */
const MOST_AWAY = 120;

export type RotationEvent = EventOf<
  'pair-wanted' | 'visit-ruled' | 'evenings-away' | 'visits-planned'
>;

export const isRotation = (event: RackEvent): event is RotationEvent =>
  event.type === 'pair-wanted' ||
  event.type === 'visit-ruled' ||
  event.type === 'evenings-away' ||
  event.type === 'visits-planned';

/** Total, like all reducers. */
export function applyToRotation(before: Rotation, event: RotationEvent): Rotation {
  switch (event.type) {
    case 'pair-wanted': {
      const { female, male, choice, at } = event;
      const others = before.wanted.filter((each) => !isPair(each, event));
      return {
        ...before,
        wanted: choice === 'none' ? others : [...others, { female, male, choice, at }],
      };
    }
    case 'visit-ruled': {
      const { female, male, rule, at, id } = event;
      const others = before.ruled.filter((each) => !isPair(each, event));
      return {
        ...before,
        ruled: rule.kind === 'free' ? others : [...others, { female, male, rule, at, id }],
      };
    }
    case 'evenings-away': {
      const named = daysFrom(event.from, event.last);
      const others = before.away.filter((day) => !named.includes(day));
      const away = event.is === 'away' ? [...others, ...named].toSorted() : others;
      return { ...before, away: away.slice(-MOST_AWAY) };
    }
    case 'visits-planned':
      return { ...before, plan: event };
  }
}

const isPair = (
  a: { readonly female: AnimalId; readonly male: AnimalId },
  b: { readonly female: AnimalId; readonly male: AnimalId },
): boolean => a.female === b.female && a.male === b.male;

/** Both included; none where the last is before the first. */
function daysFrom(from: Day, last: Day): readonly Day[] {
  const length = Math.min(MOST_AWAY, daysBetween(from, last) + 1);
  return Array.from({ length: Math.max(0, length) }, (_, i) => addDays(from, i));
}
