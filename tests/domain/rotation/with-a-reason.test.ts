import { describe, expect, test } from 'vitest';
import type { AnimalId } from '../../../src/domain/core/ids.ts';
import type { RackEvent } from '../../../src/domain/events/event.ts';
import { planView } from '../../../src/domain/views/plan-view.ts';
import { highsSolver } from '../../../src/worker/planner/highs-solver.ts';
import { anEvent, aPicture } from '../../make.ts';
import { animalId } from '../../make-ids.ts';
import { arrivals, her, him, on, scan } from '../season/make-season.ts';

// What asks for a reason is never planned without one on record, and is planned with it: from records
// to the plan, by the solver that the app uses.

const solve = highsSolver();
const plan = (events: readonly RackEvent[]) =>
  planView(aPicture([...ready, ...events], on('2026-12-10')), solve);
const ready = [
  ...arrivals,
  scan('2026-11-20', 14),
  scan('2026-12-09', 20),
  anEvent('pair-wanted', { female: her, male: him, choice: 'first', at: on('2026-12-01') }),
];
const reason = (cautions: readonly string[]) =>
  anEvent('pairing-reasoned', {
    female: her,
    male: him,
    cautions: [...cautions],
    reason: 'She is long and lean, and the vet looked at her.',
    at: on('2026-12-09'),
  });

const [dam, sire, second] = [animalId(8), animalId(9), animalId(10)];
const elders = [dam, sire, second].map((animal, i) =>
  anEvent('arrived', {
    animal,
    name: `Elder ${i + 1}`,
    sex: i === 0 ? 'female' : 'male',
    at: on('2020-01-01'),
  }),
);
const bred = (animal: AnimalId, of: AnimalId, ...sires: AnimalId[]) =>
  anEvent('parents-stated', { animal, dam: of, sires, at: on('2025-02-01') });
const weighed = (animal: AnimalId, massG: number, at: string) =>
  anEvent('weighed', { animal, massG, at: on(at) });
const traits = (animal: AnimalId, text: string) =>
  anEvent('identified', { animal, traits: text, at: on('2026-11-01') });

/** What asks for a reason, the records that make it so, and the cautions that a reason names. */
const gates: readonly (readonly [string, readonly RackEvent[], readonly string[]])[] = [
  ['a female under the floor of 1,500 g', [weighed(her, 1_499, '2026-12-08')], ['her-fitness']],
  ['a male under the floor of 500 g', [weighed(him, 499, '2026-10-02')], ['his-fitness']],
  // Young of full siblings, and of mother and son: F = 1/4 (Wright 1922, Am Nat 56:330–338).
  ['full siblings', [...elders, bred(her, dam, sire), bred(him, dam, sire)], ['close-kin']],
  ['mother and son', [...elders, bred(him, her, sire)], ['close-kin']],
  [
    'two that are full siblings if one of two males fathered both',
    [...elders, bred(her, dam, sire, second), bred(him, dam, sire)],
    ['close-kin'],
  ],
  // Two copies are not known to live, and every one wobbles (both by the catalogue's grades).
  [
    'Spider with Spider',
    [traits(her, 'Spider'), traits(him, 'Spider')],
    ['spider-twice', 'spider-wobble'],
  ],
];

/** As near as it may come without being asked about. */
const near: readonly (readonly [string, readonly RackEvent[]])[] = [
  ['a female of 1,500 g', [weighed(her, 1_500, '2026-12-08')]],
  ['a male of 500 g', [weighed(him, 500, '2026-10-02')]],
  // F = 1/8, Wright as above: shown, and not asked about.
  ['half siblings', [...elders, bred(her, dam, sire), bred(him, dam, second)]],
  ['a Pastel with a Pastel', [traits(her, 'Pastel'), traits(him, 'Pastel')]],
];

describe('with the keeper’s recorded reason alone', () => {
  test.each(gates)('%s', async (_, events, cautions) => {
    const without = await plan(events);
    expect(without.visits).toEqual([]);
    expect(without.unplanned[0]?.says.join(' ')).toMatch(/reason of yours/);
    const other = await plan([...events, reason(['spider-with-champagne'])]);
    expect(other.visits).toEqual([]);
    const given = reason(cautions);
    expect((await plan([...events, given])).visits.length).toBeGreaterThan(0);
    const struck = anEvent('struck', { target: given.id, at: on('2026-12-09') });
    expect((await plan([...events, given, struck])).visits).toEqual([]);
  });

  test('each of two: one reason named is not the other', async () => {
    const both = [weighed(her, 1_300, '2026-12-08'), traits(her, 'Spider'), traits(him, 'Spider')];
    expect((await plan([...both, reason(['her-fitness'])])).visits).toEqual([]);
    const genes = ['spider-twice', 'spider-wobble'];
    expect((await plan([...both, reason(genes)])).visits).toEqual([]);
    const { visits } = await plan([...both, reason(['her-fitness', ...genes])]);
    expect(visits.length).toBeGreaterThan(0);
  });

  test.each(near)('and without one: %s', async (_, events) => {
    expect((await plan(events)).visits.length).toBeGreaterThan(0);
  });
});
