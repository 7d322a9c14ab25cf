import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Clock } from '../../../src/domain/core/calendar.ts';
import { createPicture, type Picture } from '../../../src/domain/picture/picture.ts';
import { rules } from '../../../src/domain/rules/all.ts';
import { createLedger } from '../../../src/domain/state/ledger.ts';
import { racksView } from '../../../src/domain/views/racks-view.ts';
import { tonightView } from '../../../src/domain/views/tonight-view.ts';
import { anyLog, runs } from '../../arbitrary.ts';
import { anEvent, aPicture, clockAt, nightsAgo, TONIGHT } from '../../make.ts';
import { animalId, tubId } from '../../make-ids.ts';

/** All that a picture says of each animal and tub. */
const told = (picture: Picture) => ({
  walk: picture
    .walk()
    .map(({ id }) => [
      id,
      picture.position(id),
      picture.inTub(id).map((animal) => animal.id),
      picture.ownersOf(id).map((animal) => animal.id),
    ]),
  tasks: new Map(picture.animals().map(({ id }) => [id, picture.tasks(id)])),
  living: new Set(picture.living()),
  tonight: tonightView(picture),
  racks: racksView(picture),
});

/** Batches of a log, each with how far the clock has moved by then. */
const batches = fc
  .tuple(anyLog, fc.array(fc.constantFrom(0, 0, 1, 5, 26, -2), { minLength: 4, maxLength: 4 }))
  .map(([log, hours]) =>
    hours.map((hour, i) => ({
      hour,
      events: log.slice((i * log.length) / 4, ((i + 1) * log.length) / 4),
    })),
  );

describe('the picture kept up to date', () => {
  test(
    'is the one that would be made anew, after any records in any order',
    { timeout: 60_000 },
    () => {
      fc.assert(
        fc.property(batches, (parts) => {
          const ledger = createLedger();
          let clock: Clock = clockAt(TONIGHT);
          const picture = createPicture(ledger, clock, rules);
          for (const { hour, events } of parts) {
            clock = { ...clock, ms: clock.ms + hour * 3_600_000 };
            picture.update(ledger.add(events), clock);
            expect(told(picture)).toEqual(told(createPicture(ledger, clock, rules)));
          }
        }),
        runs(100),
      );
    },
  );

  test(
    'is the same on two phones that got the records in another order',
    { timeout: 60_000 },
    () => {
      const twice = anyLog.chain((log) =>
        fc.tuple(fc.constant(log), fc.shuffledSubarray(log, { minLength: log.length })),
      );
      fc.assert(
        fc.property(twice, ([log, other]) => {
          expect(told(aPicture(other))).toEqual(told(aPicture(log)));
        }),
        runs(100),
      );
    },
  );
});

describe('a new night', () => {
  const asksFor = (picture: Picture) => picture.tasks(animalId(1)).map(({ rule }) => rule);
  const fed = [
    anEvent('arrived', { sex: 'unknown', at: nightsAgo(20) }),
    anEvent('weighed', { massG: 300, at: nightsAgo(7) }),
    anEvent('meal-offered', { at: nightsAgo(7) }),
  ];

  function acrossNoon(offset: string): readonly [string[], string[]] {
    const ledger = createLedger();
    ledger.add(fed);
    const picture = createPicture(ledger, clockAt(`2026-11-24T11:58:00${offset}`), rules);
    const before = asksFor(picture);
    picture.update([], clockAt(`2026-11-24T12:01:00${offset}`));
    return [before, asksFor(picture)];
  }

  // Where noon is not a whole hour of UTC, as in India and Nepal, the night still turns at noon.
  test.each(['+01:00', '+05:30', '+05:45', '-03:30'])('begins at noon at offset %s', (offset) => {
    expect(acrossNoon(offset)).toEqual([[], ['F1']]);
  });
});

describe('where everyone is', () => {
  const male = animalId(2);
  const [hers, his] = [tubId(1), tubId(2)];
  const home = [
    anEvent('room-made', { at: nightsAgo(9) }),
    anEvent('rack-made', { at: nightsAgo(9) }),
    anEvent('tub-made', { tub: hers, row: 1, column: 1, at: nightsAgo(9) }),
    anEvent('tub-made', { tub: his, row: 1, column: 2, at: nightsAgo(9) }),
    anEvent('arrived', { at: nightsAgo(9) }),
    anEvent('arrived', { animal: male, name: 'Cedar', sex: 'male', at: nightsAgo(9) }),
    anEvent('moved', { tub: hers, at: nightsAgo(9) }),
    anEvent('moved', { animal: male, tub: his, at: nightsAgo(9) }),
  ];
  const visit = anEvent('introduced', { tub: hers, at: nightsAgo(1) });
  const namesIn = (picture: Picture, tub: typeof hers) =>
    picture.inTub(tub).map(({ name }) => name);

  test('a male on a visit is in her tub, after her, and his own stands empty', () => {
    const picture = aPicture([...home, visit]);
    expect(namesIn(picture, hers)).toEqual(['Sorrel', 'Cedar']);
    expect(namesIn(picture, his)).toEqual([]);
    expect(picture.ownersOf(his).map(({ name }) => name)).toEqual(['Cedar']);
  });

  test.each([
    { how: 'taken out', event: anEvent('taken-out') },
    { how: 'moved home', event: anEvent('moved', { animal: male, tub: his }) },
    { how: 'with the introduction struck', event: anEvent('struck', { target: visit.id }) },
  ])('$how, he is at home again and she is no longer held back', ({ event }) => {
    const picture = aPicture([...home, visit, event]);
    expect(namesIn(picture, his)).toEqual(['Cedar']);
    expect(namesIn(picture, hers)).toEqual(['Sorrel']);
    const blocked = picture.tasks(animalId(1)).filter((task) => task.blocked !== undefined);
    expect(blocked).toEqual([]);
  });

  test('a second male stays in when the first is taken out, and she stays held back', () => {
    const second = animalId(3);
    const also = anEvent('introduced', { male: second, tub: hers, at: nightsAgo(1) });
    const picture = aPicture([...home, visit, also, anEvent('taken-out', { male: second })]);
    expect(namesIn(picture, hers)).toEqual(['Sorrel', 'Cedar']);
    expect(picture.tasks(animalId(1))[0]).toMatchObject({ blocked: 'Cedar is in with her' });
  });

  test('a new name is in the sentences of the other one at once', () => {
    const ledger = createLedger();
    ledger.add([...home, visit]);
    const picture = createPicture(ledger, clockAt(TONIGHT), rules);
    expect(picture.tasks(animalId(1))[0]).toMatchObject({ blocked: 'Cedar is in with her' });
    picture.update(
      ledger.add([anEvent('identified', { animal: male, name: 'Oak' })]),
      clockAt(TONIGHT),
    );
    expect(picture.tasks(animalId(1))[0]).toMatchObject({ blocked: 'Oak is in with her' });
  });

  test('sold, it is in no tub, and the tub is free', () => {
    const picture = aPicture([...home, anEvent('left', { how: 'sold' })]);
    expect(picture.inTub(hers)).toEqual([]);
    expect(picture.ownersOf(hers)).toEqual([]);
    expect(picture.living().map(({ name }) => name)).toEqual(['Cedar']);
  });

  test('in a tub that was removed, it has no position', () => {
    const picture = aPicture([...home, anEvent('tub-removed', { tub: hers })]);
    expect(picture.position(hers)).toBeUndefined();
    expect(picture.walk().map(({ id }) => id)).toEqual([his]);
  });
});
