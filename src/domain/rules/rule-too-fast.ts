import { daysBetween } from '../core/calendar.ts';
import type { Animal } from '../state/animal.ts';
import { fastGain } from '../weight/fast-gain.ts';
import { readingsOf, recoveringFrom } from '../weight/of-animal.ts';
import { planOf } from './feeding-due.ts';
import { passedOn } from './passed.ts';
import type { Asked, RoomFacts, Rule } from './rule.ts';

/** On the scale of five: 1 very thin, 3 good, 5 very fat. */
const FULL = 4;
/** A judgement of the body older than this says nothing of tonight. */
const JUDGED_DAYS = 120;
/** A gain below this part of the limit cannot reach it, whatever the days. */
const NEAR_LIMIT = 0.9;

/** Rows of the year's plan by which a grown animal is only kept. */
const AT_REST = new Set(['kept', 'male']);

const ask = (room: RoomFacts, asks: string, rest: Pick<Asked, 'because' | 'records'>): Asked => ({
  act: 'check',
  asks,
  due: room.night,
  state: 'due',
  alarm: false,
  ...rest,
});

function gainedTooFast(animal: Animal, room: RoomFacts): Asked | undefined {
  const { protocol } = room;
  const newest = animal.weighings.at(-1);
  if (!newest || newest.massG < protocol.adultFromG) return undefined;
  const least = Math.min(...animal.weighings.slice(-8).map(({ massG }) => massG));
  if (newest.massG < least * (1 + NEAR_LIMIT * protocol.fastGainShare)) return undefined;
  const gain = fastGain(readingsOf(animal, room), recoveringFrom(animal, room), protocol);
  if (!gain) return undefined;
  return ask(room, 'Gains fast: smaller or fewer meals', {
    because: [gain.caution],
    records: animal.weighings
      .filter(({ id }) => id === gain.before.id || id === gain.after.id)
      .map(({ id }) => id),
  });
}

/** Fed as kept, and full already: the heavy end of practice carries its caution. */
function fullAtRest(animal: Animal, room: RoomFacts): Asked | undefined {
  const { condition } = animal;
  if (!condition || condition.score < FULL) return undefined;
  const judged = room.nightOf(condition.at);
  if (daysBetween(judged, room.night) > JUDGED_DAYS) return undefined;
  if (!AT_REST.has(planOf(animal, room).row)) return undefined;
  return ask(room, 'Full body at rest: smaller or fewer meals', {
    because: [
      'Its condition was judged full, and it is fed to be kept, not to grow.',
      'Heavy feeding makes fat animals: judge it by eye and hand again.',
    ],
    records: [],
  });
}

export const tooFast: Rule = {
  id: 'W3',
  says: 'Fast gain after it is grown, or a full body at rest, is a reason for smaller or fewer meals.',
  source: 'powerFeeding',
  check(animal, room) {
    const since = [animal.weighings.at(-1)?.at, animal.condition?.at]
      .filter((at) => at !== undefined)
      .map(room.nightOf)
      .toSorted()
      .at(-1);
    const passed = passedOn(animal, 'W3', room);
    if (passed !== undefined && since !== undefined && passed >= since) return undefined;
    return gainedTooFast(animal, room) ?? fullAtRest(animal, room);
  },
};
