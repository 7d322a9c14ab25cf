import { describe, expect, test } from 'vitest';
import type { RackEvent } from '../../../src/domain/events/event.ts';
import type { RuleId } from '../../../src/domain/rules/rule.ts';
import { anEvent } from '../../make.ts';
import {
  arrivals,
  ate,
  her,
  him,
  on,
  ovulated,
  scan,
  shed,
  visit,
  wholeSeason,
} from '../season/make-season.ts';
import { asked } from './asked.ts';

// Every number of these rules is common practice, no source, unless another source is named.

const askedOn = (day: string, rule: RuleId, events: readonly RackEvent[], animal = her) =>
  asked(rule, [...arrivals, ...events], { at: on(day), animal });

const pass = (rule: RuleId, day: string) =>
  anEvent('passed-over', { animal: her, rule, reason: 'tomorrow', at: on(day) });

const looked = (lookedFor: 'ovulation' | 'eggs', day: string) =>
  anEvent('nothing-yet', { animal: her, lookedFor, at: on(day) });

describe('scans', () => {
  test('[S1] the first is due from the last week of October, for one that may breed', () => {
    expect(askedOn('2026-10-24', 'S1', [])).toBeUndefined();
    expect(askedOn('2026-10-25', 'S1', [])).toMatchObject({ act: 'scan', state: 'due' });
    expect(askedOn('2026-11-02', 'S1', [])?.state).toBe('overdue');
    const light = anEvent('weighed', { animal: her, massG: 1_200, at: on('2026-10-02') });
    expect(askedOn('2026-11-02', 'S1', [light])).toBeUndefined();
    expect(askedOn('2026-11-02', 'S1', [], him)).toBeUndefined();
  });

  // 20 mm is the class of large follicles: J Herpetol Med Surg 2016, 26(3–4):108.
  test.each([
    { mm: 8, days: 30 },
    { mm: 15, days: 21 },
    { mm: 20, days: 14 },
    { mm: 38, days: 14 },
  ])('[S1] after a scan of $mm mm the next is due in $days days', ({ mm, days }) => {
    const due = askedOn('2027-01-31', 'S1', [scan('2026-12-01', mm)])?.due;
    expect(due).toBe(new Date(Date.UTC(2026, 11, 1 + days)).toISOString().slice(0, 10));
  });

  test('[S1] none is asked for once she has ovulated, and passed over it waits its turn', () => {
    expect(askedOn('2027-02-20', 'S1', wholeSeason.slice(0, 8))).toBeUndefined();
    const passed = [scan('2026-12-01', 20), pass('S1', '2026-12-16')];
    expect(askedOn('2026-12-29', 'S1', passed)).toBeUndefined();
    expect(askedOn('2026-12-30', 'S1', passed)).toBeDefined();
  });
});

describe('pairing', () => {
  test.each([
    { mm: 11.9, isAsked: false },
    { mm: 12, isAsked: true },
    { mm: 44, isAsked: true },
    { mm: 45, isAsked: false },
  ])('[S2] the first male goes in from 12 mm on and not from 45: $mm mm', ({ mm, isAsked }) => {
    expect(askedOn('2026-12-02', 'S2', [scan('2026-12-01', mm)]) !== undefined).toBe(isAsked);
  });

  test('[S2] what stands against it is said and not hidden', () => {
    const small = scan('2026-12-01', 14);
    const thin = anEvent('condition-judged', { animal: her, score: 2, at: on('2026-11-20') });
    expect(askedOn('2026-12-02', 'S2', [small, thin])?.blocked).toBe('Condition 2 of 5: thin.');
    expect(askedOn('2026-12-02', 'S2', [small, ate('2026-11-30')])?.blocked).toBe(
      'digesting, ate 2 days ago',
    );
    expect(askedOn('2026-12-03', 'S2', [small, ate('2026-11-30')])?.blocked).toBeUndefined();
  });

  test('[S2] one that has not recovered from her last clutch is held back with her mass', () => {
    const still = anEvent('weighed', { animal: her, massG: 1_600, at: on('2027-10-30') });
    const next = [...wholeSeason, still, scan('2027-11-01', 14)];
    expect(askedOn('2027-11-02', 'S2', next)?.blocked).toBe(
      '1,600\u00A0g is 88 % of the 1,800\u00A0g before her last season.',
    );
  });

  test('[S3] a male visits again nine days after the last one came out', () => {
    const season = [scan('2026-12-01', 14), ...visit('2026-12-01', '2026-12-03')];
    expect(askedOn('2026-12-02', 'S2', season)).toBeUndefined();
    expect(askedOn('2026-12-11', 'S3', season)).toBeUndefined();
    expect(askedOn('2026-12-12', 'S3', season)).toMatchObject({
      act: 'pair',
      because: ['Last visit, Cedar, ended 9 days ago.', 'You pair again after 9 days.'],
    });
    expect(askedOn('2026-12-12', 'S3', [...season, pass('S3', '2026-12-12')])).toBeUndefined();
    expect(askedOn('2026-12-20', 'S3', [...season, ...visit('2026-12-19')])).toBeUndefined();
  });

  test('[S5] he comes out once she has ovulated, and P1 does not ask the same again', () => {
    const season = [...wholeSeason.slice(0, 7), ...visit('2027-02-02')];
    expect(askedOn('2027-02-05', 'S5', season, him)).toBeUndefined();
    expect(askedOn('2027-02-05', 'P1', season, him)).toBeDefined();
    const over = [...season, ovulated('2027-02-05')];
    expect(askedOn('2027-02-05', 'S5', over, him)).toMatchObject({
      act: 'take-out',
      asks: 'Take Cedar out: Sorrel has ovulated',
    });
    expect(askedOn('2027-02-06', 'P1', over, him)).toBeUndefined();
  });
});

describe('the ovulation look', () => {
  test('[S4] is daily from 35 mm, until it is written down for the night', () => {
    expect(askedOn('2027-01-02', 'S4', [scan('2027-01-01', 34)])).toBeUndefined();
    const ripe = [scan('2027-01-01', 35)];
    expect(askedOn('2027-01-02', 'S4', ripe)?.act).toBe('look-ovulation');
    const done = [...ripe, looked('ovulation', '2027-01-02')];
    expect(askedOn('2027-01-02', 'S4', done)).toBeUndefined();
    expect(askedOn('2027-01-03', 'S4', done)?.because).toContain('Last look last night: not yet.');
    expect(askedOn('2027-01-03', 'S4', [...done, ovulated('2027-01-03')])).toBeUndefined();
  });

  test('[S4] reads a refusal with large follicles as a good sign, and says so', () => {
    const refused = (day: string) =>
      anEvent('meal-offered', { animal: her, outcome: 'refused', at: on(day) });
    const large = [scan('2027-01-01', 31), refused('2027-01-04')];
    expect(askedOn('2027-01-05', 'S4', large)?.because).toEqual([
      'Refused her meal with 31 mm follicles: a good sign.',
    ]);
    const small = [scan('2027-01-01', 29), refused('2027-01-04')];
    expect(askedOn('2027-01-05', 'S4', small)).toBeUndefined();
  });
});

describe('before the eggs', () => {
  const gravid = wholeSeason.slice(0, 9); // Ovulated on 5 Feb, pre-lay shed on 24 Feb.
  const noShed = wholeSeason.slice(0, 8);

  test('[S6] the nest box goes in after the pre-lay shed, or 30 days after ovulation', () => {
    expect(askedOn('2027-02-24', 'S6', gravid)).toMatchObject({ act: 'nest-box' });
    expect(askedOn('2027-03-06', 'S6', noShed)).toBeUndefined();
    expect(askedOn('2027-03-07', 'S6', noShed)?.because).toEqual([
      'Ovulation 30 days ago, and no pre-lay shed on record.',
    ]);
    const box = anEvent('nest-box-set', { animal: her, is: 'in', at: on('2027-02-25') });
    expect(askedOn('2027-02-26', 'S6', [...gravid, box])).toBeUndefined();
  });

  test('[S7] eggs are looked for daily from day 20 after the shed, 40 after ovulation', () => {
    expect(askedOn('2027-03-15', 'S7', gravid)).toBeUndefined();
    expect(askedOn('2027-03-16', 'S7', gravid)?.act).toBe('look-eggs');
    expect(askedOn('2027-03-16', 'S7', noShed)).toBeUndefined();
    expect(askedOn('2027-03-17', 'S7', noShed)?.act).toBe('look-eggs');
    const done = [...gravid, looked('eggs', '2027-03-16')];
    expect(askedOn('2027-03-16', 'S7', done)).toBeUndefined();
    expect(askedOn('2027-03-17', 'S7', done)).toBeDefined();
    expect(askedOn('2027-03-27', 'S7', wholeSeason)).toBeUndefined();
  });

  // Clocks of common practice: book a vet at day 40, urgent at day 50 after the shed; 60 and 70 after
  // ovulation.
  test.each([
    { day: '2027-04-04', events: gravid, state: undefined },
    { day: '2027-04-05', events: gravid, state: 'due' },
    { day: '2027-04-15', events: gravid, state: 'overdue' },
    { day: '2027-04-05', events: noShed, state: undefined },
    { day: '2027-04-06', events: noShed, state: 'due' },
    { day: '2027-04-16', events: noShed, state: 'overdue' },
  ])('[S8] on $day laying is late: $state', ({ day, events, state }) => {
    const { act, alarm, state: is } = askedOn(day, 'S8', events) ?? {};
    const late = { act: 'call', alarm: true, is: state };
    expect({ act, alarm, is }).toEqual(state ? late : {});
  });

  test('[S8] it says to check the shed first, is quiet for three days, and ends with the eggs', () => {
    expect(askedOn('2027-04-05', 'S8', gravid)?.because).toContain(
      'First check that it was the pre-lay shed, and not an earlier one.',
    );
    const passed = [...gravid, pass('S8', '2027-04-05')];
    expect(askedOn('2027-04-07', 'S8', passed)).toBeUndefined();
    expect(askedOn('2027-04-08', 'S8', passed)).toBeDefined();
    expect(askedOn('2027-04-06', 'S8', wholeSeason)).toBeUndefined();
  });

  test('gravid, she is not fed as usual', () => {
    const fed = [ate('2027-01-20'), ...gravid];
    expect(askedOn('2027-03-01', 'F1', fed)?.blocked).toMatch(/^gravid/);
  });
});

test('[S9] dates that contradict each other are asked about until they are corrected', () => {
  const soon = [...wholeSeason.slice(0, 8), shed('2027-02-08', true)];
  expect(askedOn('2027-02-09', 'S9', soon)?.because[0]).toMatch(/3 days.*Which is wrong\?/);
  expect(askedOn('2027-02-09', 'S9', [...soon, pass('S9', '2027-02-09')])).toBeUndefined();
  expect(askedOn('2027-04-03', 'S9', wholeSeason)).toBeUndefined();
});
