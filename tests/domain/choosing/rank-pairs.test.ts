import { describe, expect, test } from 'vitest';
import { rankPairs, type RankedPair } from '../../../src/domain/choosing/rank-pairs.ts';
import type { RackEvent } from '../../../src/domain/events/event.ts';
import { aPicture, anEvent, nightsAgo } from '../../make.ts';
import { animalId } from '../../make-ids.ts';
import { goalIn, grown, ranked } from './make-collection.ts';

const onePair = (his: string, hers: string, goal: string, young = 6): RankedPair => {
  const [pair] = ranked([grown(1, 'male', his), grown(2, 'female', hers)], goal, young).pairs;
  if (!pair) throw new Error('The pair was not ranked.');
  return pair;
};

// Independent eggs of known parents: 1 − (1 − p)^n, plain arithmetic. Where a parent is uncertain the
// whole clutch shares what it is, so cases are mixed and chances are not pooled.
describe('worked examples', () => {
  test.each([
    ['het Clown', 'het Clown', 'visual clown', 3367 / 4096],
    ['Clown', 'het Clown', 'clown', 63 / 64],
    ['het Clown het Pied', 'het Clown het Pied', 'visual clown pied', 5386591 / 16777216],
    ['66% het Clown', 'het Clown', 'clown', 3367 / 6144],
    ['66% het Clown', '66% het Clown', 'clown', 3367 / 9216],
    ['66% het Clown', 'Clown', 'clown', 21 / 32],
    ['Pastel', 'Pastel', 'pastel', 1 - (1 / 4) ** 6],
    ['Pastel', 'Pastel', 'super pastel', 3367 / 4096],
    // Half of a quarter are females.
    ['het Clown', 'het Clown', 'female clown', 144495 / 262144],
  ])('%s × %s for %s', (his, hers, goal, chance) => {
    expect(onePair(his, hers, goal).perClutch).toBeCloseTo(chance, 12);
  });

  // Smallest n with 1 − (1 − p)^n ≥ 9/10: 9 at 1/4, 36 at 1/16, by trying each n.
  test.each([
    ['het Clown', 'het Clown', 'clown', 9, 2],
    ['het Clown het Pied', 'het Clown het Pied', 'clown pied', 36, 6],
    ['Clown', 'het Clown', 'clown', 4, 1],
  ])('%s × %s for %s: %d young, %d clutches of six', (his, hers, goal, n, clutches) => {
    const pair = onePair(his, hers, goal);
    expect([pair.needed, pair.clutches]).toEqual([{ reachable: true, n }, clutches]);
  });

  // A quarter each, but both or neither with the sire’s own half: 1/2 · 1/2 · 1/2, not 1/4 · 1/4.
  test('what ties one parent to the other is kept', () => {
    const parents = { dam: animalId(2), sires: [animalId(1)], at: nightsAgo(800) };
    const { pairs } = ranked(
      [
        grown(1, 'male', '50% het Clown'),
        grown(2, 'female', 'Normal'),
        grown(3, 'male', ''),
        grown(4, 'female', ''),
        anEvent('parents-stated', { animal: animalId(3), ...parents }),
        anEvent('parents-stated', { animal: animalId(4), ...parents }),
      ],
      'clown',
    );
    const pair = pairs.find(({ male, female }) => male === animalId(3) && female === animalId(4));
    expect(pair?.perClutch).toBeCloseTo((1 / 8) * (3367 / 4096), 12);
  });

  test('what cannot be reached is said, and not waited for', () => {
    const { needed, clutches } = onePair('66% het Clown', 'Clown', 'clown');
    expect(needed).toMatchObject({ reachable: false, limit: { n: 2n, d: 3n } });
    expect(clutches).toBeUndefined();
  });

  // A carrier to a visual: 1/2, so 5 young for 19/20; to a carrier: 1/4, so 11. By trying each n.
  test('proving a het: the visual first, then the carrier, and none that can show nothing', () => {
    const { pairs, possible } = ranked(
      [
        grown(1, 'female', '66% het Clown', 'Sorrel'),
        grown(2, 'male', 'het Clown'),
        grown(3, 'male', 'Clown'),
        grown(4, 'male', 'Normal'),
        grown(5, 'female', 'Clown'),
      ],
      'prove the 66 % het of Sorrel',
    );
    expect(possible).toBe(2);
    expect(pairs.map(({ male, clutches }) => [male, clutches])).toEqual([
      [animalId(3), 1],
      [animalId(2), 2],
    ]);
    expect(pairs.map(({ needed }) => needed)).toEqual([
      { reachable: true, n: 5 },
      { reachable: true, n: 11 },
    ]);
    expect(pairs[0]?.perClutch).toBeCloseTo(21 / 32, 12);
    expect(pairs[0]?.ifCarrier).toBeCloseTo(63 / 64, 12);
  });
});

describe('what stands beside the chance', () => {
  const parents = [grown(1, 'male', 'Pied'), grown(2, 'female', 'Clown')];
  const young = (n: number, sex: 'male' | 'female') => [
    grown(n, sex, ''),
    anEvent('parents-stated', {
      animal: animalId(n),
      dam: animalId(2),
      sires: [animalId(1)],
      at: nightsAgo(800),
    }),
  ];
  // Children of a visual of each are double hets: 1/16 a young, as for any two double hets.
  test('siblings are ranked with the inbreeding of their young', () => {
    const { pairs } = ranked(
      [...parents, ...young(3, 'male'), ...young(4, 'female')],
      'clown pied',
    );
    const siblings = pairs.find(
      ({ male, female }) => male === animalId(3) && female === animalId(4),
    );
    expect(siblings?.perClutch).toBeCloseTo(5386591 / 16777216, 12);
    expect(siblings?.kin).toMatchObject({ atLeast: 1 / 4, atMost: 1 / 4, generations: 1 });
  });
  test('of equal chances, the less related and the ready come first', () => {
    const stranger = grown(5, 'female', 'het Clown het Pied');
    const thin = anEvent('weighed', { animal: animalId(5), massG: 300, at: nightsAgo(5) });
    const events = [...parents, ...young(3, 'male'), ...young(4, 'female'), stranger];
    const femalesOf = (all: readonly RackEvent[]) =>
      ranked(all, 'clown pied')
        .pairs.filter(({ male }) => male === animalId(3))
        .map(({ female }) => female);
    const order = femalesOf(events).filter((id) => id !== animalId(2));
    expect(order).toEqual([animalId(5), animalId(4)]);
    const later = femalesOf([...events, thin]).filter((id) => id !== animalId(2));
    expect(later).toEqual([animalId(4), animalId(5)]);
  });
  test('one that is not grown is told with the keeper’s floor, and left out when asked', () => {
    const events = [
      grown(1, 'male', 'Clown'),
      grown(2, 'female', 'Clown'),
      anEvent('weighed', { animal: animalId(2), massG: 900, at: nightsAgo(5) }),
    ];
    const picture = aPicture(events);
    const goal = goalIn(picture, 'clown');
    const [pair] = rankPairs(goal, picture, { young: 6 }).pairs;
    expect(pair?.notReady.female).toEqual([expect.stringMatching(/^900\u00A0g.*your floor is/)]);
    expect(rankPairs(goal, picture, { young: 6, readyOnly: true }).pairs).toEqual([]);
  });
  test('cautions of the young stand beside the pair and block nothing', () => {
    const { cautions } = onePair('Spider', 'Champagne', 'spider');
    expect(cautions.map(({ caution }) => caution.id)).toContain('spider-with-champagne');
  });
  test('a pair with a grave caution comes last, however good its chance', () => {
    const { pairs } = ranked(
      [
        grown(1, 'male', 'Spider Clown'),
        grown(2, 'female', 'Champagne Clown'),
        grown(3, 'female', 'het Clown'),
      ],
      'clown',
    );
    expect(pairs.map(({ female }) => female)).toEqual([animalId(3), animalId(2)]);
  });
  test('the gone, the young and the unsexed are no candidates', () => {
    const events = [
      grown(1, 'male', 'Clown'),
      grown(2, 'female', 'Clown'),
      grown(3, 'female', 'Clown'),
      anEvent('left', { animal: animalId(3), how: 'sold', at: nightsAgo(3) }),
      anEvent('arrived', {
        animal: animalId(4),
        sex: 'unknown',
        traits: 'Clown',
        at: nightsAgo(3),
      }),
      anEvent('arrived', {
        animal: animalId(5),
        sex: 'female',
        traits: 'Clown',
        at: nightsAgo(3),
        hatchedDay: '2026-08-01' as never,
      }),
    ];
    expect(ranked(events, 'clown')).toMatchObject({ females: 1, males: 1, possible: 1 });
  });
});
