import { describe, expect, test } from 'vitest';
import type { Clock } from '../../src/domain/core/calendar.ts';
import type { DeskStatus } from '../../src/domain/desk.ts';
import { tonightView, type TonightView } from '../../src/domain/views/tonight-view.ts';
import {
  FIRST_STOPS,
  firstLines,
  readLastSeen,
  writeLastSeen,
  type LastSeen,
} from '../../src/ui/last-seen.ts';
import { anEvent, aPicture, nightsAgo } from '../make.ts';
import { animalId } from '../make-ids.ts';
import { dweller, room } from '../domain/views/little-room.ts';

const nobodyHome = Array.from({ length: 20 }, (_, i) =>
  anEvent('arrived', { animal: animalId(100 + i), name: `New ${i}`, at: nightsAgo(40) }),
);
const tonight = tonightView(
  aPicture([
    ...room,
    ...dweller(1, 'Marrow', 1),
    ...nobodyHome,
    anEvent('opaque-seen', { animal: animalId(1), at: nightsAgo(2) }),
  ]),
);
const status: DeskStatus = {
  collection: 'own',
  records: 40,
  animals: 21,
  tubs: 12,
  isWhole: true,
  unreadable: 0,
  backupDue: false,
  inMemoryOnly: false,
};
const drawn = (list: TonightView, changed: Partial<DeskStatus> = {}): LastSeen => ({
  status: { ...status, ...changed },
  tonight: firstLines(list),
  html: `<main>${list.night}</main>`,
});
const seen = { build: 'this build', tonight: drawn(tonight) };

const at = (iso: string, offsetMin = 60): Clock => ({ ms: Date.parse(iso), offsetMin });
/** Nine in the evening of the night that the list is of. */
const evening = at(`${tonight.night}T21:00:00+01:00`);
const now = { build: 'this build', collection: 'own', clock: evening } as const;

/** The day after the night, which is still of that night until the hour it turns. */
const dayAfter = new Date(Date.parse(`${tonight.night}T12:00:00Z`) + 86_400_000)
  .toISOString()
  .slice(0, 10);

describe('what was last seen of tonight', () => {
  test('comes back the same night: the first lines, with their reasons', () => {
    const back = readLastSeen(writeLastSeen(seen), now);
    expect(tonight.stops.length).toBeGreaterThan(FIRST_STOPS);
    expect(tonight.waiting).toHaveLength(1);
    expect(back?.tonight.stops).toEqual(
      JSON.parse(JSON.stringify(tonight.stops.slice(0, FIRST_STOPS))),
    );
    expect(back?.tonight.waiting).toEqual([]);
    expect(back?.tonight.counts).toEqual(tonight.counts);
    expect(back?.status).toEqual(status);
    expect(back?.html).toBe(`<main>${tonight.night}</main>`);
  });

  test.each([
    { rolloverHour: 12, hour: '00:20', isShown: true },
    { rolloverHour: 12, hour: '11:59', isShown: true },
    { rolloverHour: 12, hour: '12:00', isShown: false },
    { rolloverHour: 12, hour: '20:00', isShown: false },
    { rolloverHour: 7, hour: '06:59', isShown: true },
    { rolloverHour: 7, hour: '07:00', isShown: false },
  ])('turns at $rolloverHour: at $hour of the next day, shown: $isShown', (each) => {
    const { rolloverHour, hour, isShown } = each;
    const text = writeLastSeen({ ...seen, tonight: drawn({ ...tonight, rolloverHour }) });
    const clock = at(`${dayAfter}T${hour}:00+01:00`);
    expect(readLastSeen(text, { ...now, clock }) !== undefined).toBe(isShown);
  });

  test('of the evening after is the list that was worked out ahead for it, and of no other', () => {
    const tomorrow = drawn({ ...tonight, night: dayAfter as typeof tonight.night, animals: 7 });
    const text = writeLastSeen({ ...seen, tomorrow });
    expect(readLastSeen(text, now)?.tonight.animals).toBe(tonight.animals);
    const eveningAfter = at(`${dayAfter}T21:00:00+01:00`);
    const back = readLastSeen(text, { ...now, clock: eveningAfter });
    expect(back?.tonight.night).toBe(dayAfter);
    expect(back?.tonight.animals).toBe(7);
    expect(back?.html).toBe(`<main>${dayAfter}</main>`);
    const twoLater = { ms: eveningAfter.ms + 86_400_000, offsetMin: 60 };
    expect(readLastSeen(text, { ...now, clock: twoLater })).toBeUndefined();
  });

  test('goes by the clock on the wall, wherever the phone has been carried', () => {
    const text = writeLastSeen(seen);
    const noonFurtherEast = at(`${dayAfter}T12:00:00+05:00`, 300);
    const morningFurtherWest = at(`${dayAfter}T11:00:00-05:00`, -300);
    expect(readLastSeen(text, { ...now, clock: noonFurtherEast })).toBeUndefined();
    expect(readLastSeen(text, { ...now, clock: morningFurtherWest })).toBeDefined();
  });

  test('is never shown of another collection, or by another build', () => {
    const text = writeLastSeen(seen);
    expect(readLastSeen(text, { ...now, collection: 'demo' })).toBeUndefined();
    expect(readLastSeen(text, { ...now, build: 'the next build' })).toBeUndefined();
  });

  test('is not kept where the next start has nothing: no records, or a window without storage', () => {
    expect(writeLastSeen({ ...seen, tonight: drawn(tonight, { records: 0 }) })).toBeUndefined();
    expect(
      writeLastSeen({ ...seen, tonight: drawn(tonight, { inMemoryOnly: true }) }),
    ).toBeUndefined();
    expect(readLastSeen(undefined, now)).toBeUndefined();
  });

  test.each(['', '{', 'null', '[]', '{"build":"this build"}', '"tonight"'])(
    'broken text is nothing: %s',
    (text) => {
      expect(readLastSeen(text, now)).toBeUndefined();
    },
  );

  test('a text cut short at any place is nothing, and never an error', () => {
    const text = writeLastSeen(seen) ?? '';
    for (let length = 0; length < text.length; length += 97) {
      expect(readLastSeen(text.slice(0, length), now)).toBeUndefined();
    }
  });
});
