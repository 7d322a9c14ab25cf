import { describe, expect, test } from 'vitest';
import type { RackEvent } from '../../../src/domain/events/event.ts';
import { animalParts } from '../../../src/domain/review/animal-part.ts';
import { everySeason } from '../../../src/domain/review/every-season.ts';
import { countedIn, seasonsPast } from '../../../src/domain/review/seasons-past.ts';
import { tallyOf } from '../../../src/domain/review/tally.ts';
import { anEvent, aPicture } from '../../make.ts';
import { animalId, clutchId, incubatorId } from '../../make-ids.ts';
import { arrivals, her, him, on, visit, wholeSeason } from '../season/make-season.ts';

const past = (night: string, events: readonly RackEvent[]) => {
  const picture = aPicture([...arrivals, ...events], on(night));
  return { picture, past: seasonsPast(picture) };
};

const tally = (night: string, events: readonly RackEvent[]) =>
  tallyOf(countedIn(past(night, events).past, undefined));

const lock = (day: string) =>
  anEvent('pair-seen', { male: him, female: her, seen: 'locked', at: on(day) });
const laid = (day: string, n: number, parts: object = {}) =>
  anEvent('laid', { animal: her, clutch: clutchId(n), good: 6, slugs: 2, at: on(day), ...parts });

describe('a season that ran its course', () => {
  const events = [...wholeSeason, lock('2026-12-02')];

  test('is paired, ovulated and laid, in the season of its eggs, with the days between', () => {
    const [cycle] = past('2027-08-01', events).past.cycles;
    expect(cycle).toMatchObject({
      season: '2026/27',
      paired: true,
      ovulated: true,
      laid: true,
      visits: [{ male: him, locked: true }],
    });
    // Ovulation on 5 February, shed on the 24th, eggs on 26 March 2027: calendar arithmetic.
    expect(cycle?.lags.map(([lag, days]) => [lag, days.earliestDays, days.latestDays])).toEqual([
      ['ovulation to shed', 19, 19],
      ['shed to lay', 30, 30],
      ['ovulation to lay', 49, 49],
    ]);
  });

  test('counts as under way, and in no share, until it has eggs', () => {
    const { past: then } = past('2027-03-01', events.slice(0, 9));
    expect(then.underWay).toHaveLength(1);
    expect(then.cycles).toEqual([]);
    expect(tally('2027-03-01', events.slice(0, 9)).laidOfPaired).toEqual({ hits: 0, of: 0 });
  });

  test('that ended without eggs counts against the shares', () => {
    const closed = anEvent('season-closed', { animal: her, at: on('2027-05-01') });
    const counted = tally('2027-05-02', [...visit('2026-12-01', '2026-12-03'), closed]);
    expect(counted.laidOfPaired).toEqual({ hits: 0, of: 1 });
    expect(counted.lockedOfVisits).toEqual({ hits: 0, of: 1 });
  });
});

test('earlier seasons keep every visit, though the state of the animal does not', () => {
  const events = [
    ...visit('2024-12-01', '2024-12-03'),
    ...visit('2024-12-12', '2024-12-14'),
    laid('2025-04-01', 1),
    ...visit('2025-12-01', '2025-12-03'),
    laid('2026-04-01', 2),
    ...visit('2026-12-01'),
  ];
  const { picture } = past('2026-12-02', events);
  const records = picture.ledger.counted(her);
  const visits = everySeason(her, records).map(({ stays }) => stays.length);
  expect(visits).toEqual([2, 1, 1]);
  expect(picture.animal(her)?.pastSeasons[0]?.stays).toEqual([]);
  expect(everySeason(her, records).at(-1)).toEqual({
    ...picture.animal(her)?.season,
    baselineG: undefined,
  });
});

describe('a clutch', () => {
  const incubator = incubatorId(1);
  const eggs: readonly RackEvent[] = [
    ...visit('2026-12-01', '2026-12-03'),
    // Snake 06 of Laarhoven B. & Kooijman S.A.L.M. 2010, Add-my-Pet collection, entry Python_regius, moved
    // to another year: last 1,645 g gravid, eight days before her 4 eggs of 472 g, then 1,247 g.
    anEvent('weighed', { animal: her, massG: 1_645, at: on('2027-03-18') }),
    laid('2027-03-26', 1, { good: 4, slugs: 0, clutchMassG: 472, damMassG: 1_247 }),
    anEvent('eggs-set', { clutch: clutchId(1), incubator, at: on('2027-03-26') }),
  ];
  const end = [
    anEvent('hatching-seen', { clutch: clutchId(1), seen: 'pip', eggs: 1, at: on('2027-05-22') }),
    anEvent('hatching-seen', { clutch: clutchId(1), seen: 'out', eggs: 3, at: on('2027-05-24') }),
    anEvent('clutch-closed', { clutch: clutchId(1), why: 'all out', at: on('2027-05-25') }),
  ];

  test('is 28.7 % of her weight before and 37.9 % of that after, of which she lost 24.2 %', () => {
    const [brood] = past('2027-08-01', [...eggs, ...end]).past.broods;
    expect(100 * (brood?.beforeShare ?? 0)).toBeCloseTo(28.69, 2);
    expect(100 * (brood?.afterShare ?? 0)).toBeCloseTo(37.85, 2);
    expect(100 * (brood?.lostShare ?? 0)).toBeCloseTo((100 * 398) / 1_645, 6);
    expect(brood).toMatchObject({
      season: '2026/27',
      father: him,
      incubator,
      isTold: true,
      pip: { earliestDays: 57, latestDays: 57 },
    });
  });

  test('hatched 3 of 4 once its end is on record, and counts neither way before', () => {
    expect(tally('2027-08-01', [...eggs, ...end]).hatchedOfGood).toEqual({ hits: 3, of: 4 });
    expect(tally('2027-05-24', [...eggs, ...end.slice(0, 2)]).hatchedOfGood).toEqual({
      hits: 0,
      of: 0,
    });
  });

  test('whose eggs went away is in no share of hatching, but in those of eggs', () => {
    const away = anEvent('clutch-closed', {
      clutch: clutchId(1),
      why: 'given away',
      at: on('2027-04-02'),
    });
    const counted = tally('2027-08-01', [...eggs, away]);
    expect(counted.hatchedOfGood.of).toBe(0);
    expect(counted.goodOfEggs).toEqual({ hits: 4, of: 4 });
  });

  test('a weight of longer ago than 30 days is no weight before laying', () => {
    const late = eggs.map((event) =>
      event.type === 'laid' ? laid('2027-04-20', 1, { clutchMassG: 472 }) : event,
    );
    const [brood] = past('2027-08-01', late).past.broods;
    expect(brood?.beforeShare).toBeUndefined();
    expect(brood?.lostShare).toBeUndefined();
  });

  test('with two males in has no one father, unless one is stated', () => {
    const other = animalId(3);
    const second = anEvent('introduced', { male: other, female: her, at: on('2026-12-20') });
    expect(past('2027-08-01', [...eggs, second]).past.broods[0]?.father).toBeUndefined();
    const stated = anEvent('paternity-stated', {
      animal: her,
      clutch: clutchId(1),
      sires: [{ male: other, grounds: 'DNA test' }],
      at: on('2027-06-01'),
    });
    expect(past('2027-08-01', [...eggs, second, stated]).past.broods[0]?.father).toBe(other);
  });
});

test('a young one is established once it ate so often in a row unaided, and stays so', () => {
  const young = animalId(9);
  const events: RackEvent[] = [
    laid('2026-04-01', 1),
    anEvent('arrived', { animal: young, name: 'Sedge', at: on('2026-06-01') }),
    anEvent('hatched', { animal: young, clutch: clutchId(1), at: on('2026-06-01') }),
  ];
  const meal = (day: string, outcome: 'ate' | 'refused', how?: 'assisted') =>
    anEvent('meal-offered', { animal: young, outcome, at: on(day), ...(how ? { how } : {}) });
  const three = [meal('2026-06-20', 'ate'), meal('2026-06-27', 'ate'), meal('2026-07-04', 'ate')];
  const counted = (meals: readonly RackEvent[], night = '2026-09-01') =>
    tally(night, [...events, ...meals]).establishedOfYoung;
  expect(counted([...three, meal('2026-07-11', 'refused')])).toEqual({ hits: 1, of: 1 });
  const helped = [three[0], three[1], meal('2026-07-04', 'ate', 'assisted')].flatMap(
    (each) => each ?? [],
  );
  expect(counted(helped)).toEqual({ hits: 0, of: 1 });
  // Seven weeks old: too young to be judged.
  expect(counted(three, '2026-07-20')).toEqual({ hits: 0, of: 0 });
});

test('a meal that was left counts as it was settled; one still left, and one given by hand, do not', () => {
  const offer = anEvent('meal-offered', { animal: her, outcome: 'left', at: on('2026-09-01') });
  const events = [
    offer,
    anEvent('meal-offered', { animal: her, outcome: 'left', at: on('2026-09-08') }),
    anEvent('meal-offered', { animal: her, outcome: 'ate', how: 'assisted', at: on('2026-09-15') }),
    anEvent('meal-offered', { animal: her, outcome: 'partly', at: on('2026-09-22') }),
  ];
  const settled = anEvent('meal-settled', {
    animal: her,
    offer: offer.id,
    outcome: 'refused',
    at: on('2026-09-02'),
  });
  expect(tally('2026-11-24', [...events, settled]).refusedOfOffers).toEqual({ hits: 1, of: 2 });
  // Struck, the meal is left again and says nothing.
  const struck = anEvent('struck', { target: settled.id, reason: 'another tub' });
  expect(tally('2026-11-24', [...events, settled, struck]).refusedOfOffers).toEqual({
    hits: 0,
    of: 1,
  });
});

test('what was counted is kept for as long as nobody writes about the animal', () => {
  const { picture } = past('2027-08-01', wholeSeason);
  const before = animalParts(picture);
  const weighed = anEvent('weighed', { animal: him, massG: 820, at: on('2027-08-01') });
  picture.update(picture.ledger.add([weighed]), picture.clock);
  const after = animalParts(picture);
  expect(after.get(her)).toBe(before.get(her));
  expect(after.get(him)).not.toBe(before.get(him));
});
