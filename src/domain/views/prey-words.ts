import { monthName } from '../core/month-names.ts';
import { showGrams } from '../core/units.ts';
import type { EventOf, RackEvent } from '../events/event.ts';
import { showPrey } from '../protocol/planned-meal.ts';

type PreyRecord = Extract<
  RackEvent,
  {
    type:
      | 'prey-stocked'
      | 'prey-thawed'
      | 'prey-thrown-out'
      | 'prey-counted'
      | 'prey-size-stated'
      | 'feeding-excepted'
      | 'started-smaller';
  }
>;

/** A record about the freezer, or about how one snake is fed, in a few words. */
export function preyWords(event: PreyRecord): string {
  switch (event.type) {
    case 'prey-stocked':
      return `${piecesWords(event)} into the freezer${event.useBy ? `, use by ${event.useBy}` : ''}`;
    case 'prey-thawed':
      return `${piecesWords(event)} thawed`;
    case 'prey-thrown-out':
      return `${piecesWords(event)} thrown out${event.why ? `: ${event.why}` : ''}`;
    case 'prey-counted':
      return `${piecesWords(event)} counted in the freezer`;
    case 'prey-size-stated': {
      const name = sizeName(event);
      return event.eachG === null
        ? `${name}: no longer bought`
        : `one ${name} weighs ${showGrams(event.eachG)}`;
    }
    case 'feeding-excepted':
      return exceptedWords(event);
    case 'started-smaller':
      return `started smaller because: ${event.why}`;
  }
}

type Size = Pick<EventOf<'prey-thawed'>, 'kind' | 'size'>;

/** @example sizeName({ kind: 'rat', size: 'small' }) //=> 'small rat' */
export const sizeName = ({ kind, size }: Size): string =>
  kind === 'other' ? size : `${size} ${kind}`;

/** @example piecesWords({ kind: 'rat', size: 'small', pieces: 2 }) //=> '2 small rats' */
export const piecesWords = ({ kind, size, pieces }: Size & { readonly pieces: number }): string =>
  showPrey({ kind, size, count: pieces, state: 'thawed' });

type Exception = EventOf<'feeding-excepted'>['exceptions'][number];

function exceptedWords({ exceptions }: EventOf<'feeding-excepted'>): string {
  return exceptions.length === 0
    ? 'fed as its class again'
    : `fed otherwise: ${exceptions.map(exceptionWords).join('; ')}`;
}

/** @example exceptionWords({ months: [11, 3], kind: 'mouse' }) //=> 'mouse, Nov to Mar' */
export function exceptionWords({ months, everyDays, kind, size, count, why }: Exception): string {
  const meal = [count === undefined ? undefined : `${count} ×`, size, kind].filter(
    (part) => part !== undefined,
  );
  const parts = [
    meal.length > 0 ? meal.join(' ') : undefined,
    everyDays === undefined ? undefined : `every ${everyDays} days`,
    months && `${monthName(months[0])} to ${monthName(months[1])}`,
    why,
  ];
  return parts.filter((part) => part !== undefined && part !== '').join(', ');
}
