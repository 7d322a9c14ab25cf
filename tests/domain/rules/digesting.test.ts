import { describe, expect, test } from 'vitest';
import { assess } from '../../../src/domain/assess/assess.ts';
import { anEvent, aPicture, clockAt, day, nightsAgo, TONIGHT } from '../../make.ts';
import { animalId } from '../../make-ids.ts';
import { asked } from './asked.ts';

const meal = (nights: number, eachG: number) =>
  anEvent('meal-offered', {
    prey: { kind: 'rat', size: 'medium', eachG, count: 1, state: 'thawed' },
    at: nightsAgo(nights),
  });

const female = [
  anEvent('arrived', { sex: 'female', at: nightsAgo(400) }),
  anEvent('weighed', { massG: 1_000, at: nightsAgo(60) }),
];

// No handling for 48 hours after a meal: common veterinary advice. That a large one rests five days, from
// 15 % of body mass, is the program's own number.
describe('[W1] a snake that digests is not put on the scale', () => {
  test.each([
    { nights: 0, eachG: 60, blocked: 'digesting, ate tonight' },
    { nights: 1, eachG: 60, blocked: 'digesting, ate last night' },
    { nights: 2, eachG: 60, blocked: undefined },
    { nights: 2, eachG: 149, blocked: undefined },
    { nights: 4, eachG: 150, blocked: 'digesting a large meal, ate 4 days ago' },
    { nights: 5, eachG: 150, blocked: undefined },
  ])('$eachG g of 1,000 g, $nights nights ago', ({ nights, eachG, blocked }) => {
    expect(asked('W1', [...female, meal(nights, eachG)])?.blocked).toBe(blocked);
  });

  test('a refusal is no meal, and a meal that came up is none any more', () => {
    const refused = anEvent('meal-offered', { outcome: 'refused', at: nightsAgo(0) });
    expect(asked('W1', [...female, refused])?.blocked).toBeUndefined();
    const upset = anEvent('regurgitated', { at: nightsAgo(0) });
    expect(asked('W1', [...female, meal(1, 60), upset])?.blocked).toBeUndefined();
  });
});

describe('a male is asked about before he goes in to her', () => {
  const male = animalId(2);
  const his = [
    anEvent('arrived', { animal: male, name: 'Cedar', sex: 'male', at: nightsAgo(900) }),
    anEvent('weighed', { animal: male, massG: 1_000, at: nightsAgo(60) }),
  ];
  const doubts = (...events: Parameters<typeof aPicture>[0]) => {
    const picture = aPicture([...female, ...his, ...events]);
    const { tub } = anEvent('introduced');
    const draft = { type: 'introduced', male, female: animalId(1), tub } as const;
    return assess(draft, picture, clockAt(TONIGHT), undefined).doubts.map(({ code }) => code);
  };
  const ate = (nights: number, eachG: number) => ({ ...meal(nights, eachG), animal: male });

  test('three nights after a meal he may, after a large one he digests', () => {
    expect(doubts(ate(2, 60))).toContain('fed-lately');
    expect(doubts(ate(3, 60))).not.toContain('fed-lately');
    expect(doubts(ate(4, 150))).toContain('fed-lately');
    expect(doubts(ate(5, 150))).not.toContain('fed-lately');
  });
});

describe('under treatment, the vet’s word comes before the plan', () => {
  const treated = (until?: string) =>
    anEvent('treated', { at: nightsAgo(3), ...(until === undefined ? {} : { until: day(until) }) });

  test.each([
    { until: '2026-11-23', blocked: undefined },
    { until: '2026-11-24', blocked: 'under treatment until 24 Nov: what the vet said comes first' },
    { until: undefined, blocked: undefined },
  ])('[F1] until $until', ({ until, blocked }) => {
    expect(asked('F1', [...female, treated(until)])?.blocked).toBe(blocked);
  });

  test('[S1] a scan waits as well, and the label itself is never read', () => {
    const scan = anEvent('follicles-scanned', { at: nightsAgo(60) });
    const label = { ...treated('2026-12-03'), asOnLabel: 'no food, 99 ml, every hour' };
    const task = asked('S1', [...female, scan, label]);
    expect(task?.blocked).toContain('under treatment until 3 Dec');
    expect(JSON.stringify(task)).not.toContain('99 ml');
  });
});
