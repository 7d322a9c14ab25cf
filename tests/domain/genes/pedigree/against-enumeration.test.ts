import fc from 'fast-check';
import { expect, test } from 'vitest';
import { nearestFraction } from '../../../../src/domain/genes/fraction.ts';
import {
  carrierPosteriors,
  type Posteriors,
} from '../../../../src/domain/genes/pedigree/carrier-posteriors.ts';
import type { Evidence, Finding } from '../../../../src/domain/genes/pedigree/evidence.ts';
import { jointPosterior } from '../../../../src/domain/genes/pedigree/joint-posterior.ts';
import { pedigreeModel } from '../../../../src/domain/genes/pedigree/pedigree-model.ts';
import { readPedigree, type Pedigree } from '../../../../src/domain/genes/pedigree/pedigree.ts';
import type { ByGenotype } from '../../../../src/domain/genes/pedigree/states.ts';
import { whatMovedIt } from '../../../../src/domain/genes/pedigree/what-moved-it.ts';
import { runs } from '../../../arbitrary.ts';
import { enumerate, type Enumerated } from './brute-force.ts';
import { randomCase, type RandomCase } from './random-pedigree.ts';

const pedigreeOf = ({ animals, clutches }: RandomCase): Pedigree => {
  const read = readPedigree(animals, clutches);
  if (!read.ok) throw new Error(`${read.problem.message} ${read.problem.about.join()}`);
  return read.value;
};

const expectSame = (found: ByGenotype, sums: ReadonlyMap<string, number>, total: number): void => {
  for (const sex of ['female', 'male'] as const) {
    found[sex].forEach((chance, number) => {
      expect(chance).toBeCloseTo((sums.get(`${sex}${number}`) ?? 0) / total, 10);
    });
  }
};

/** A male who is named twice has one chance, where he is named first. */
const merged = ({ clutches }: RandomCase, id: string, weights: readonly number[]) => {
  const { fathers } = clutches.find((clutch) => clutch.id === id)!;
  const sums = new Map<string, number>();
  fathers.forEach((father, n) => {
    const who = 'sire' in father ? father.sire : 'none';
    sums.set(who, (sums.get(who) ?? 0) + weights[n]!);
  });
  return [...sums.values()];
};

function expectPosteriors(made: RandomCase, found: Posteriors, truth: Enumerated): void {
  expect(found.troubles).toEqual([]);
  for (const [id, sums] of truth.of) expectSame(found.of.get(id)!, sums, truth.total);
  for (const [id, chances] of found.fathers) {
    const expected = merged(made, id, truth.fathers.get(id)!);
    chances.forEach((chance, n) => expect(chance).toBeCloseTo(expected[n]! / truth.total, 10));
  }
}

function expectContradiction(made: RandomCase, found: Posteriors, pair: [string, string]): void {
  const clash = found.troubles.find(({ kind }) => kind === 'contradiction');
  if (clash?.kind !== 'contradiction') throw new Error('The contradiction went unseen.');
  const { priors, findings } = made.evidence;
  const named = findings.filter(({ id }) => clash.findings.includes(id));
  const weight = (some: readonly Finding[]): number =>
    enumerate(made, { priors, findings: some }, pair).total;
  expect(weight(named)).toBe(0);
  for (const one of named) expect(weight(named.filter((each) => each !== one))).toBeGreaterThan(0);
}

const withPair = (made: RandomCase): [string, string] => [
  made.animals[0]!.id,
  made.animals.at(-1)!.id,
];

// The oracle is the definition of the posterior: see brute-force.ts.
test('posteriors of random pedigrees are those of trying everything', () => {
  let [consistent, contradictory] = [0, 0];
  fc.assert(
    fc.property(fc.gen(), (g) => {
      const made = randomCase(g, 8);
      const pair = withPair(made);
      const truth = enumerate(made, made.evidence, pair);
      const model = pedigreeModel(made.locus, nearestFraction(made.apart));
      const pedigree = pedigreeOf(made);
      const found = carrierPosteriors(pedigree, model, made.evidence);
      if (truth.total === 0) {
        contradictory += 1;
        expectContradiction(made, found, pair);
        return;
      }
      consistent += 1;
      expectPosteriors(made, found, truth);
      const both = jointPosterior(pedigree, model, made.evidence, ...pair);
      if (both.kind !== 'together') throw new Error(both.kind);
      const keys = new Map(
        both.chances.map(({ a, b, chance }) => [
          `${a.sex}${a.genotype} ${b.sex}${b.genotype}`,
          chance,
        ]),
      );
      for (const key of new Set([...keys.keys(), ...truth.together.keys()])) {
        const expected = (truth.together.get(key) ?? 0) / truth.total;
        expect(keys.get(key) ?? 0).toBeCloseTo(expected, 10);
      }
    }),
    runs(800),
  );
  expect(consistent).toBeGreaterThan(500);
  expect(contradictory).toBeGreaterThan(40);
}, 60_000);

test('each finding left out gives what trying everything without it gives', () => {
  let movers = 0;
  fc.assert(
    fc.property(fc.gen(), (g) => {
      const made = randomCase(g, 6);
      const pair = withPair(made);
      const { evidence } = made;
      if (enumerate(made, evidence, pair).total === 0) return;
      const model = pedigreeModel(made.locus, nearestFraction(made.apart));
      const moved = whatMovedIt(pedigreeOf(made), model, evidence, pair[0]);
      if (moved.kind !== 'moved') throw new Error(moved.kind);
      const without = (left: readonly Finding[]): Enumerated =>
        enumerate(made, { ...evidence, findings: left } satisfies Evidence, pair);
      const check = (chances: ByGenotype, { of, total }: Enumerated): void =>
        expectSame(chances, of.get(pair[0])!, total);
      check(moved.before, without([]));
      for (const { id } of evidence.findings) {
        const left = without(evidence.findings.filter((each) => each.id !== id));
        movers += moved.movers.length;
        check(moved.movers.find(({ finding }) => finding === id)?.without ?? moved.now, left);
      }
    }),
    runs(150),
  );
  expect(movers).toBeGreaterThan(100);
}, 60_000);

test('so are those of pedigrees of twelve', () => {
  let compared = 0;
  fc.assert(
    fc.property(fc.gen(), (g) => {
      const made = randomCase(g, 12);
      const pair = withPair(made);
      const truth = enumerate(made, made.evidence, pair);
      if (truth.total === 0) return;
      compared += 1;
      const model = pedigreeModel(made.locus, nearestFraction(made.apart));
      expectPosteriors(made, carrierPosteriors(pedigreeOf(made), model, made.evidence), truth);
    }),
    runs(60),
  );
  expect(compared).toBeGreaterThan(20);
}, 60_000);
