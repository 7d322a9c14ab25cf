import type { AnimalId } from '../core/ids.ts';
import type { EventOf } from '../events/event.ts';

/** Records about eggs, and about what keeps them warm. */
export type ClutchRecord = EventOf<
  | 'paternity-stated'
  | 'eggs-set'
  | 'eggs-checked'
  | 'box-aired'
  | 'hatching-seen'
  | 'hatched'
  | 'eggs-felt'
  | 'clutch-closed'
  | 'incubator-made'
  | 'incubator-retired'
  | 'incubator-read'
  | 'incubator-logged'
  | 'heat-failed'
  | 'heat-back'
>;

/** Each in a few words, as its line in a history. */
export function clutchWords(event: ClutchRecord, nameOf: (id: AnimalId) => string): string {
  switch (event.type) {
    case 'paternity-stated':
      return `possible fathers: ${event.sires.map((sire) => sireWords(sire, nameOf)).join(', ')}`;
    case 'eggs-set':
      return event.shelf === undefined ? 'eggs put in' : `eggs put in, shelf ${event.shelf}`;
    case 'eggs-checked':
      return checkWords(event);
    case 'box-aired':
      return 'egg box aired';
    case 'hatching-seen':
      return event.seen === 'nothing yet'
        ? 'looked for a pip: nothing yet'
        : `${event.seen}: ${event.eggs ?? 1}${event.egg === undefined ? '' : ` (egg ${event.egg})`}`;
    case 'hatched':
      return event.defects.length === 0 ? 'hatched' : `hatched: ${event.defects.join(', ')}`;
    case 'eggs-felt':
      return `felt for eggs left in her: ${event.left}`;
    case 'clutch-closed':
      return `clutch closed: ${event.why}`;
    case 'incubator-made':
      return event.targetC === undefined
        ? `incubator ${event.name}`
        : `incubator ${event.name}, set to ${event.targetC} °C`;
    case 'incubator-retired':
      return 'incubator out of use';
    case 'incubator-read':
      return event.entered
        ? `${event.spot} ${event.entered.temp} °F (${event.tempC.toFixed(1)} °C)`
        : `${event.spot} ${event.tempC} °C`;
    case 'incubator-logged':
      return `${event.readings.length} readings of ${event.sensor}, ${event.spot}`;
    case 'heat-failed':
      return `no heat from here${lowestWords(event.lowestC)}`;
    case 'heat-back':
      return `heat back${lowestWords(event.lowestC)}`;
  }
}

const lowestWords = (lowestC: number | undefined): string =>
  lowestC === undefined ? '' : `, ${lowestC} °C at the lowest`;

export function sireWords(
  { male, grounds }: EventOf<'paternity-stated'>['sires'][number],
  nameOf: (id: AnimalId) => string,
): string {
  if (male === 'none') return `no father (${grounds})`;
  return `${male === 'unknown' ? 'an unknown male' : nameOf(male)} (${grounds})`;
}

function checkWords(event: EventOf<'eggs-checked'>): string {
  const counts = (['good', 'unsure', 'slugs', 'dead'] as const).flatMap((kind) =>
    event[kind] === undefined ? [] : [`${event[kind]} ${kind}`],
  );
  const each = (event.each ?? []).map(({ egg, is }) => `${egg} ${is}`);
  return [event.how, ...counts, ...each, ...(event.troubles ?? [])].join(', ');
}
