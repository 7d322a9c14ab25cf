import { alone, recessive } from '../../../../src/domain/genes/catalogue/make-locus.ts';
import { HALF } from '../../../../src/domain/genes/fraction.ts';
import {
  carrierPosteriors,
  type Posteriors,
} from '../../../../src/domain/genes/pedigree/carrier-posteriors.ts';
import type { Evidence, Finding } from '../../../../src/domain/genes/pedigree/evidence.ts';
import { pedigreeModel } from '../../../../src/domain/genes/pedigree/pedigree-model.ts';
import {
  readPedigree,
  type Pedigree,
  type PedigreeAnimal,
  type PedigreeClutch,
} from '../../../../src/domain/genes/pedigree/pedigree.ts';
import type { ByGenotype } from '../../../../src/domain/genes/pedigree/states.ts';

/** A recessive locus: genotypes 0 wild type, 1 het, 2 visual, in both sexes. */
export const recessiveModel = pedigreeModel(alone(recessive('a', 'A')), HALF);

export const either = (...values: readonly number[]): ByGenotype => ({
  female: values,
  male: values,
});
export const het = either(0, 1, 0);
export const visual = either(0, 0, 1);
export const nonVisual = either(1, 1, 0);
/** "66 %": a carrier with this chance, else wild type. */
export const possible = (chance: number): ByGenotype => either(1 - chance, chance, 0);

/** One male for each clutch, written as id: [dam, sire]. */
export function pedigreeOf(
  animals: readonly (string | PedigreeAnimal)[],
  clutches: Readonly<Record<string, readonly [string, string]>> | readonly PedigreeClutch[],
): Pedigree {
  const read = readPedigree(
    animals.map((animal) => (typeof animal === 'string' ? { id: animal } : animal)),
    'length' in clutches
      ? (clutches as readonly PedigreeClutch[])
      : Object.entries(clutches).map(([id, [dam, sire]]) => ({
          id,
          dam,
          fathers: [{ sire, weight: 1 }],
        })),
  );
  if (!read.ok) throw new Error(`${read.problem.message} ${read.problem.about.join()}`);
  return read.value;
}

export const looks = (animal: string, likelihood: ByGenotype): Finding => ({
  kind: 'look',
  id: `look of ${animal}`,
  animal,
  likelihood,
});

/** So many young of a clutch that do not show, and that do. */
export const young = (clutch: string, hidden: number, shown = 0): Finding => ({
  kind: 'young',
  id: `young of ${clutch}`,
  clutch,
  young: [
    { count: hidden, likelihood: nonVisual },
    { count: shown, likelihood: visual },
  ],
});

export const evidence = (
  priors: Readonly<Record<string, ByGenotype>>,
  ...findings: readonly Finding[]
): Evidence => ({ priors: new Map(Object.entries(priors)), findings });

export function answers(pedigree: Pedigree, known: Evidence): Posteriors {
  return carrierPosteriors(pedigree, recessiveModel, known);
}

/** The chance that an animal has exactly one copy. */
export function hetChance({ of }: Posteriors, id: string): number {
  const { female = [], male = [] } = of.get(id) ?? {};
  return (female[1] ?? NaN) + (male[1] ?? NaN);
}
