import { describe, expect, test } from 'vitest';
import { anEvent, instead } from '../../make.ts';
import {
  her,
  laid,
  on,
  ovulated,
  scan,
  shed,
  standsOn,
  upTo,
  visit,
  wholeSeason,
} from './make-season.ts';

// Stages and what puts a female into them: common practice, no source, but for the class of large
// follicles. Published sets name the same passage otherwise (Bertocchi M. et al. 2018, PLoS ONE
// 13(6):e0199377: anovulatory, transition, folliculogenesis, embryogenesis).

test('a season of one female, step by step', () => {
  const stageOn = (day: string) => standsOn(day, upTo(day, wholeSeason))?.stage;
  expect(stageOn('2026-10-20')).toBe('resting');
  expect(stageOn('2026-11-02')).toBe('resting');
  expect(stageOn('2026-11-29')).toBe('building');
  expect(stageOn('2027-01-30')).toBe('building');
  expect(stageOn('2027-02-05')).toBe('ovulated');
  expect(stageOn('2027-02-24')).toBe('pre-lay shed');
  expect(stageOn('2027-03-26')).toBe('laid');
  expect(stageOn('2027-04-03')).toBe('recovering');
});

test('each stage names the facts that put her there', () => {
  expect(standsOn('2026-12-21', upTo('2026-12-21', wholeSeason))).toMatchObject({
    stage: 'building',
    since: '2026-11-29',
    because: ['Largest follicle 22 mm, last night.'],
  });
  expect(standsOn('2027-03-01', upTo('2027-03-01', wholeSeason))?.because).toEqual([
    'Shed 5 days ago, pre-lay as you said.',
    'Ovulation 19 days before.',
  ]);
});

test('back at her mass she rests again, and the next season begins with its first scan', () => {
  const back = anEvent('weighed', { animal: her, massG: 1_790, at: on('2027-07-01') });
  expect(standsOn('2027-07-02', [...wholeSeason, back])?.stage).toBe('resting');
  const next = [...wholeSeason, back, scan('2027-11-01', 15)];
  expect(standsOn('2027-11-02', next)).toMatchObject({ stage: 'building', since: '2027-11-01' });
});

describe('a late fact', () => {
  test('moves all that follows: an ovulation entered a week late', () => {
    const missed = upTo('2027-02-12', wholeSeason).filter(({ type }) => type !== 'ovulated');
    expect(standsOn('2027-02-12', missed)?.stage).toBe('building');
    expect(standsOn('2027-02-12', [...missed, ovulated('2027-02-05')])).toMatchObject({
      stage: 'ovulated',
      since: '2027-02-05',
    });
  });

  test('takes all back: the wrong shed struck out', () => {
    const early = shed('2027-02-18', true);
    const season = [...upTo('2027-02-19', wholeSeason), early];
    expect(standsOn('2027-02-19', season)?.stage).toBe('pre-lay shed');
    const struck = anEvent('struck', { target: early.id, at: on('2027-02-19') });
    expect(standsOn('2027-02-19', [...season, struck])?.stage).toBe('ovulated');
  });

  test('corrects a shed: replaced by one that was not pre-lay', () => {
    const early = shed('2027-02-18', true);
    const ordinary = instead(early, shed('2027-02-18', false));
    const season = [...upTo('2027-02-19', wholeSeason), early, ordinary];
    expect(standsOn('2027-02-19', season)?.stage).toBe('ovulated');
  });
});

describe('a shed that nobody was asked about', () => {
  const before = upTo('2027-02-06', wholeSeason);

  // Ovulation 10–30 days before. Common practice, no source.
  test.each([
    { day: '2027-02-14', days: 9, stage: 'ovulated' },
    { day: '2027-02-15', days: 10, stage: 'pre-lay shed' },
    { day: '2027-03-07', days: 30, stage: 'pre-lay shed' },
    { day: '2027-03-08', days: 31, stage: 'ovulated' },
  ])('$days days after ovulation leaves her at: $stage', ({ day, stage }) => {
    expect(standsOn(day, [...before, shed(day)])?.stage).toBe(stage);
  });

  test('before any ovulation is an ordinary one: such a shed fools keepers', () => {
    const noOvulation = before.filter(({ type }) => type !== 'ovulated');
    expect(standsOn('2027-02-15', [...noOvulation, shed('2027-02-15')])?.stage).toBe('building');
    expect(standsOn('2027-02-15', [...noOvulation, shed('2027-02-15', true)])).toMatchObject({
      stage: 'pre-lay shed',
      now: { ovulation: { how: 'from the shed' } },
    });
  });
});

describe('follicles that shrink', () => {
  const grown = [scan('2026-11-01', 12), scan('2026-12-01', 26)];

  test('are read as resorbing only after a second fall, two weeks on', () => {
    const once = [...grown, scan('2026-12-20', 19)];
    expect(standsOn('2026-12-20', once)?.stage).toBe('building');
    const twice = [...once, scan('2027-01-05', 13)];
    expect(standsOn('2027-01-05', twice)?.stage).toBe('resorbing');
    expect(standsOn('2027-01-05', twice)?.because[1]).toMatch(/suggestion: scan again/);
  });

  test('end the season on the keeper’s word, and she rests', () => {
    const closed = anEvent('season-closed', { animal: her, why: 'resorbed', at: on('2027-01-06') });
    expect(standsOn('2027-01-07', [...grown, closed])).toMatchObject({
      stage: 'resting',
      because: ['Season over, last night: resorbed.'],
    });
  });
});

test('two kinds of signs put her at building where nobody scanned; one does not', () => {
  const sign = (day: string, which: 'glow' | 'inverted') =>
    anEvent('sign-seen', { animal: her, sign: which, at: on(day) });
  const one = [sign('2027-01-02', 'glow'), sign('2027-01-05', 'glow')];
  expect(standsOn('2027-01-06', one)?.stage).toBe('resting');
  const two = [...one, sign('2027-01-06', 'inverted')];
  expect(standsOn('2027-01-06', two)?.stage).toBe('building');
  expect(standsOn('2027-04-06', two)?.stage).toBe('resting');
});

test('a season nothing was written in for two hundred days is over', () => {
  const season = [scan('2026-11-29', 14), ...visit('2026-12-01', '2026-12-03')];
  expect(standsOn('2027-03-01', season)?.stage).toBe('building');
  expect(standsOn('2027-07-01', season)?.stage).toBe('resting');
});

test('dates that contradict each other are asked about', () => {
  const soon = [...upTo('2027-02-06', wholeSeason), shed('2027-02-08', true)];
  expect(standsOn('2027-02-09', soon)?.conflicts).toEqual([
    'From ovulation to pre-lay shed: 3 days. It takes 8–40. Which is wrong?',
  ]);
  const early = [...upTo('2027-02-25', wholeSeason), laid('2027-03-01')];
  expect(standsOn('2027-03-02', early)?.conflicts).toEqual([
    'From pre-lay shed to eggs: 5 days. It takes 14–55. Which is wrong?',
  ]);
  expect(standsOn('2027-04-03', wholeSeason)?.conflicts).toEqual([]);
});

test('a light or a young one is growing, with the floor named', () => {
  const light = anEvent('weighed', { animal: her, massG: 1_380, at: on('2026-10-05') });
  expect(standsOn('2026-10-06', [light])).toMatchObject({
    stage: 'growing',
    because: ['1,380\u00A0g, weighed last night; your floor is 1,500\u00A0g.'],
  });
});
