import { describe, expect, test } from 'vitest';
import { daysBetween } from '../../../src/domain/core/calendar.ts';
import { seasonView } from '../../../src/domain/views/season-view.ts';
import { stageRule } from '../../../src/domain/views/stage-words.ts';
import type { RackEvent } from '../../../src/domain/events/event.ts';
import { anEvent, aPicture, day } from '../../make.ts';
import {
  arrivals,
  ate,
  her,
  him,
  laid,
  on,
  ovulated,
  scan,
  shed,
  upTo,
  visit,
  wholeSeason,
} from '../season/make-season.ts';

const viewOn = (night: string, events: readonly RackEvent[] = upTo(night, wholeSeason)) =>
  seasonView(her, aPicture([...arrivals, ...events], on(night)));

describe('where she stands', () => {
  test('opens to its facts, its rule and where that comes from', () => {
    const stage = viewOn('2027-02-06')?.stage;
    expect(stage?.because).toEqual(['Ovulation seen at its peak, last night.']);
    expect(stageRule({ stage: stage?.stage ?? 'growing' }, false).source).toBe('ovulationLook');
    expect(viewOn('2027-02-06')?.since).toBe('2027-02-05');
  });

  test('dates that cannot both be true are asked about', () => {
    // Eight days is the least from ovulation to pre-lay shed: windowLimits, common practice.
    const clash = [scan('2027-01-24', 37), ovulated('2027-02-05'), shed('2027-02-09', true)];
    expect(viewOn('2027-02-10', clash)?.conflicts).toEqual([
      'From ovulation to pre-lay shed: 4 days. It takes 8–40. Which is wrong?',
    ]);
  });

  test('a snake nobody knows has no page', () => {
    expect(seasonView(him, aPicture([], on('2027-02-06')))).toBeUndefined();
  });
});

describe('what is coming', () => {
  test('is said in days, with what it is counted from and how many own cycles are in it', () => {
    const eggs = viewOn('2027-02-25')?.windows.find(({ event }) => event === 'eggs');
    // From the shed of 24 February; 26, 30 and 36 days: common practice, no source.
    expect(eggs).toMatchObject({ from: '2027-03-22', likely: '2027-03-26', to: '2027-04-01' });
    expect(eggs?.says).toBe('Eggs 22 Mar – 1 Apr, most likely 26 Mar.');
    expect(eggs?.rests).toBe(
      'From the pre-lay shed on 24 Feb; no own cycle yet, so as among keepers in general.',
    );
  });

  test('own cycles are counted, and hers among them', () => {
    const next = [
      scan('2027-12-20', 22),
      scan('2028-01-20', 36),
      ovulated('2028-02-05'),
      shed('2028-02-24', true),
    ];
    const eggs = viewOn('2028-02-25', [...wholeSeason, ...next])?.windows[0];
    expect(eggs?.event).toBe('eggs');
    expect(eggs?.rests).toBe('From the pre-lay shed on 24 Feb; 1 own cycle, all hers.');
  });

  test('a look that found nothing cuts the window, and says so', () => {
    const looked = anEvent('nothing-yet', {
      animal: her,
      lookedFor: 'eggs',
      at: on('2027-03-25'),
    });
    const eggs = viewOn('2027-03-25', [...upTo('2027-03-25', wholeSeason), looked])?.windows[0];
    expect(eggs?.from).toBe('2027-03-25');
    expect(eggs?.rests).toMatch(/ Not yet on 25 Mar\.$/);
  });

  test('a window that is over without its event is overdue', () => {
    const events = upTo('2027-02-25', wholeSeason);
    expect(viewOn('2027-04-01', events)?.windows[0]?.isOverdue).toBe(false);
    expect(viewOn('2027-04-02', events)?.windows[0]?.isOverdue).toBe(true);
  });
});

describe('growth', () => {
  test('one scan is not a trend, and two of one night are one', () => {
    expect(viewOn('2026-12-01', [scan('2026-11-29', 22)])?.trend).toBe('one scan is not a trend.');
    const twice = [scan('2026-11-29', 22), scan('2026-11-29', 23)];
    expect(viewOn('2026-12-01', twice)?.trend).toBe('one scan is not a trend.');
  });

  test('a trend is said with its interval and the chance that it is none', () => {
    const trend = viewOn('2027-01-25')?.trend;
    // 14, 22, 31 and 37 mm over eight weeks: 2.9 mm a week from end to end.
    const [, rate, low, high] =
      /^([\d.]+) mm a week, ([−\d.]+) to ([\d.]+) \(80 %\);/.exec(trend ?? '') ?? [];
    expect(Number(rate)).toBeGreaterThan(2.4);
    expect(Number(rate)).toBeLessThan(3.4);
    expect(Number(low)).toBeLessThan(Number(rate));
    expect(Number(high)).toBeGreaterThan(Number(rate));
    expect(trend).toMatch(/chance that it is shrinking under 1 %\.$/);
  });

  test('after ovulation nothing is said of growth, and the curve ends there', () => {
    const view = viewOn('2027-02-06');
    expect(view?.trend).toBeUndefined();
    expect(view?.curve?.points).toHaveLength(5);
    expect(view?.curve?.windows).toEqual([]);
    expect(view?.curve?.line.at(-1)?.night).toBe('2027-01-24');
  });

  test('each scan is a point within its error; felt and none found are told apart', () => {
    const felt = anEvent('follicles-scanned', {
      animal: her,
      found: { method: 'palpation', felt: 'round lumps' },
      at: on('2026-12-20'),
    });
    const none = anEvent('follicles-scanned', {
      animal: her,
      found: { method: 'ultrasound' },
      at: on('2026-11-01'),
    });
    const points = viewOn('2026-12-21', [none, scan('2026-11-29', 14), felt])?.curve?.points;
    expect(points?.map(({ kind }) => kind)).toEqual(['none', 'measured', 'felt']);
    const [, measured, round] = points ?? [];
    // Round lumps about 20 mm: common practice, no source. A felt class is vaguer than a scan.
    expect(round?.mm).toBe(20);
    expect((round?.high ?? 0) - (round?.low ?? 0)).toBeGreaterThan(
      (measured?.high ?? 0) - (measured?.low ?? 0),
    );
    // One SD is 8 %, 1.12 mm of 14 mm; 80 % of a t of 8 degrees lies within 1.397 SD (any table).
    expect((measured?.high ?? 0) - 14).toBeCloseTo(1.397 * 1.12, 1);
  });

  test('the window of 35 mm lies ahead on the line, and the ovulation’s is drawn too', () => {
    const curve = viewOn('2027-01-11')?.curve;
    expect(curve?.windows.map(({ what }) => what)).toEqual(['35 mm', 'ovulation']);
    const ripe = curve?.windows[0];
    // 31 mm on 10 January, at about 3 mm a week: 35 mm some nine days later.
    expect(daysBetween(day('2027-01-10'), ripe?.likely ?? day('2027-01-10'))).toBeLessThan(25);
    expect(ripe && ripe.from <= ripe.likely && ripe.likely <= ripe.to).toBe(true);
    expect(curve?.stays).toEqual([{ male: 'Cedar', from: '2026-12-01', to: '2026-12-03' }]);
  });

  test('a female who may be resorbing keeps her curve, and has no window', () => {
    const falls = [
      scan('2026-12-01', 26),
      scan('2026-12-20', 20),
      scan('2027-01-10', 14),
      scan('2027-01-30', 12),
    ];
    const view = viewOn('2027-01-31', falls);
    expect(view?.stage?.words).toMatch(/resorbing/i);
    expect(view?.curve?.points).toHaveLength(4);
    expect(view?.windows).toEqual([]);
    expect(view?.curve?.windows).toEqual([]);
    expect(view?.trend).toMatch(/^−/);
  });
});

test('a fresh sign stands with what it meant before, and not once she has ovulated', () => {
  const sign = (at: string) => anEvent('sign-seen', { animal: her, sign: 'glow', at: on(at) });
  const before = [...wholeSeason, sign('2027-01-15')].toSorted((a, b) => (a.at < b.at ? -1 : 1));
  const now = [scan('2027-12-20', 22), sign('2028-01-10')];
  expect(viewOn('2028-01-12', [...before, ...now])?.signs).toEqual([
    {
      sign: 'glow',
      night: '2028-01-10',
      seen: 'glow, 2 days ago',
      history: 'Seen in 1 of 1 cycles: too few to say when it comes.',
    },
  ]);
  expect(viewOn('2028-01-22', [...before, ...now, ovulated('2028-01-21')])?.signs).toEqual([]);
});

test('earlier seasons are a line each, the newest first', () => {
  const next = [scan('2027-11-01', 24), scan('2028-11-01', 16)];
  const earlier = viewOn('2028-11-02', [...wholeSeason, ...next])?.earlier;
  expect(earlier).toEqual([
    {
      opened: '2027-11-01',
      years: '2027/28',
      says: 'No ovulation on record; 1 scan, largest follicle 24 mm.',
    },
    {
      opened: '2026-11-01',
      years: '2026/27',
      says: 'Ovulation 5 Feb; pre-lay shed 24 Feb, 19 days on; eggs 26 Mar, 30 days on; 6 good, 1 slug.',
    },
  ]);
});

test('a male has his stage, and neither windows nor a curve', () => {
  const picture = aPicture(
    [...arrivals, ...visit('2026-12-01'), ate('2026-12-01')],
    on('2026-12-02'),
  );
  const view = seasonView(him, picture);
  expect(view?.stage?.words).toBe('In rotation');
  expect(view).toMatchObject({ windows: [], curve: undefined, earlier: [], signs: [] });
});

test('eggs lead to the first pip alone', () => {
  const view = viewOn('2027-03-27', [...upTo('2027-03-25', wholeSeason), laid('2027-03-26')]);
  expect(view?.windows.map(({ event }) => event)).toEqual(['first pip']);
});
