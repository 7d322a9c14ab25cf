import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { createPicture, type Picture } from '../../../src/domain/picture/picture.ts';
import { rules } from '../../../src/domain/rules/all.ts';
import { type ProtocolChanges } from '../../../src/domain/protocol/own-protocol.ts';
import { refusalsOf } from '../../../src/domain/protocol/refuse-changes.ts';
import { protocolValues, type ProtocolKey } from '../../../src/domain/protocol/values.ts';
import { createLedger } from '../../../src/domain/state/ledger.ts';
import { ownNumbers } from '../../../src/domain/state/house.ts';
import { protocolPreview } from '../../../src/domain/views/protocol-preview.ts';
import { anyLog, runs } from '../../arbitrary.ts';
import { anEvent, aPicture, clockAt, nightsAgo, TONIGHT } from '../../make.ts';
import { animalId, tubId } from '../../make-ids.ts';
import { dweller, room } from './little-room.ts';

const keys = Object.keys(protocolValues) as ProtocolKey[];

/** Any value anywhere in the range in use. */
const anyChange = fc
  .tuple(fc.constantFrom(...keys), fc.integer({ min: 0, max: 4 }))
  .map(([key, quarter]): ProtocolChanges => {
    const { from, to } = protocolValues[key];
    const value = from + ((to - from) * quarter) / 4;
    return { [key]: Number.isInteger(from) ? Math.round(value) : Number(value.toFixed(2)) };
  });

/** Every task of every animal, by rule: a second way to the same difference. */
const tasksOf = (picture: Picture) =>
  new Map(
    picture.animals().flatMap(({ id }) =>
      picture.tasks(id).map(({ rule, asks, state, blocked }, i, all) => {
        const nth = all.slice(0, i).filter((task) => task.rule === rule).length;
        return [
          `${id} ${rule} ${nth}`,
          JSON.stringify([asks, blocked === undefined ? state : 'blocked', blocked]),
        ] as const;
      }),
    ),
  );

describe('what a change would do tonight', () => {
  test('is the difference of the list now and the list once it is written', () => {
    fc.assert(
      fc.property(anyLog, anyChange, (log, values) => {
        const before = aPicture(log);
        fc.pre(refusalsOf(ownNumbers(before.house()), values).length === 0);
        const written = anEvent('protocol-set', { values, at: '2027-06-01T12:00:00+02:00' });
        const ledger = createLedger();
        ledger.add([...log, written]);
        const after = tasksOf(createPicture(ledger, clockAt(TONIGHT), rules));
        const now = tasksOf(before);
        const { comes, goes, changes } = protocolPreview(values, before);
        const only = (one: typeof now, other: typeof now) =>
          [...one.keys()].filter((name) => !other.has(name)).length;
        expect([comes.length, goes.length]).toEqual([only(after, now), only(now, after)]);
        expect(changes.length).toBe(
          [...now].filter(([name, words]) => after.has(name) && after.get(name) !== words).length,
        );
      }),
      runs(150),
    );
  });

  test('changes nothing by being asked', () => {
    const picture = aPicture(room);
    const before = tasksOf(picture);
    protocolPreview({ weighDays: 14 }, picture);
    expect(tasksOf(picture)).toEqual(before);
    expect(picture.facts.protocol.weighDays).toBe(30);
  });

  const fed = (n: number, name: string, tub: number, nights: number) => [
    ...dweller(n, name, tub),
    anEvent('meal-offered', { animal: animalId(n), at: nightsAgo(nights) }),
  ];
  // In November an adult female is fed every 8 days, overdue five days later.
  const three = [
    ...room,
    ...fed(1, 'Sorrel', 1, 7),
    ...fed(2, 'Birch', 5, 9),
    ...fed(3, 'Oak', 2, 13),
  ];

  test('tells who comes and who goes, along the walk, with position and words', () => {
    const picture = aPicture(three);
    const sooner = protocolPreview({ feedFemaleSeasonDays: 7 }, picture);
    expect(sooner.comes.map(({ name, position }) => [name, position])).toEqual([
      ['Sorrel', 'B1-1'],
    ]);
    expect(sooner.comes[0]?.after).toMatch(/^Feed 1 /);
    expect(sooner.goes).toEqual([]);
    const later = protocolPreview({ feedFemaleSeasonDays: 10 }, picture);
    expect(later.goes.map(({ name }) => name)).toEqual(['Birch']);
    expect(later.values).toEqual([
      {
        key: 'feedFemaleSeasonDays',
        name: 'Feed females in the season every',
        before: '8 days',
        after: '10 days',
      },
    ]);
  });

  test('tells what only reads otherwise', () => {
    const { changes, comes, goes } = protocolPreview({ feedOverdueDays: 6 }, aPicture(three));
    expect([comes, goes]).toEqual([[], []]);
    expect(changes).toMatchObject(
      [{ name: 'Oak', before: /, overdue$/, after: /^Feed 1 [^,]*, \d+\sg$/ }].map(
        ({ name, before, after }) => ({
          name,
          before: expect.stringMatching(before),
          after: expect.stringMatching(after),
        }),
      ),
    );
  });

  test('says nothing but why, of a change that cannot be', () => {
    const { refusals, comes, values } = protocolPreview({ weighDays: 9_000 }, aPicture(three));
    expect(refusals).toEqual([
      'Weigh every: 9000 days cannot be. 4–120 days can be written down, whole numbers only.',
    ]);
    expect([comes, values]).toEqual([[], []]);
  });
});

describe('another end of the night', () => {
  const at = (hour: string) => `2026-11-25T${hour}:00:00+01:00`;

  test('says which records move, and that tonight is another night', () => {
    const morning = aPicture(room, at('10'));
    expect(protocolPreview({ rolloverHour: 9 }, morning).notes).toEqual([
      'Records made between 9 and 12 o’clock, also the old ones, move from the evening before to their own day. Days since a meal, a weighing or a visit are counted anew.',
      'Tonight is then the night of 2026-11-25, not of 2026-11-24.',
    ]);
    expect(protocolPreview({ rolloverHour: 9 }, aPicture(room)).notes).toHaveLength(1);
    expect(protocolPreview({ weighDays: 20 }, morning).notes).toEqual([]);
  });

  test('moves the records themselves once it is written', () => {
    const look = anEvent('opaque-seen', { animal: animalId(1), at: at('10') });
    const set = anEvent('protocol-set', { values: { rolloverHour: 9 }, at: at('11') });
    const nightOf = (picture: Picture) => picture.facts.nightOf(look.at);
    expect(nightOf(aPicture([look], at('12')))).toBe('2026-11-24');
    expect(nightOf(aPicture([look, set], at('12')))).toBe('2026-11-25');
  });
});

test('a picture kept up to date looks at everyone again when a number is set, and when it is struck', () => {
  const ledger = createLedger();
  ledger.add([
    ...room,
    ...dweller(1, 'Sorrel', 1),
    anEvent('meal-offered', { animal: animalId(1), at: nightsAgo(7) }),
  ]);
  const picture = createPicture(ledger, clockAt(TONIGHT), rules);
  const asked = () => picture.tasks(animalId(1)).some(({ rule }) => rule === 'F1');
  expect(asked()).toBe(false);
  const set = anEvent('protocol-set', { values: { feedFemaleSeasonDays: 7 } });
  picture.update(ledger.add([set]), clockAt(TONIGHT));
  expect(asked()).toBe(true);
  picture.update(ledger.add([anEvent('struck', { target: set.id })]), clockAt(TONIGHT));
  expect(asked()).toBe(false);
  expect(picture.inTub(tubId(1))).toHaveLength(1);
});

test('tells which windows move, and from which days to which', () => {
  const shed = anEvent('shed', { animal: animalId(1), preLay: true, at: nightsAgo(10) });
  const ovulated = anEvent('ovulated', { animal: animalId(1), at: nightsAgo(29) });
  const picture = aPicture([...room, ...dweller(1, 'Sorrel', 1), ovulated, shed]);
  const { windows } = protocolPreview(
    { shedToLayEarlyDays: 28, shedToLayLikelyDays: 33, shedToLayLateDays: 40 },
    picture,
  );
  // The shed was on 14 November: 26 to 36 days make 10 to 20 December, 28 to 40 make 12 to 24 December.
  expect(windows[0]).toMatchObject({
    name: 'Sorrel',
    event: 'eggs',
    before: '10–20 Dec',
    after: '12–24 Dec',
  });
  // What is forecast from the eggs moves with them.
  expect(windows.map(({ event }) => event)).toEqual(['eggs', 'first pip']);
  expect(protocolPreview({ weighDays: 20 }, picture).windows).toEqual([]);
});
