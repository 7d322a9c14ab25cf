import fc, { type GeneratorValue } from 'fast-check';
import {
  group,
  incomplete,
  neverSeen,
  recessive,
  tenth,
  two,
  agreed,
} from '../../../../src/domain/genes/catalogue/make-locus.ts';
import { fraction } from '../../../../src/domain/genes/fraction.ts';
import { genotypeCount } from '../../../../src/domain/genes/genotype.ts';
import type { Locus } from '../../../../src/domain/genes/locus.ts';
import type { Evidence, Finding } from '../../../../src/domain/genes/pedigree/evidence.ts';
import type {
  PedigreeAnimal,
  PedigreeClutch,
  PossibleFather,
} from '../../../../src/domain/genes/pedigree/pedigree.ts';
import type { ByGenotype } from '../../../../src/domain/genes/pedigree/states.ts';

export const aRecessive = group('r', 'Recessive', [recessive('a', 'A')]);
export const aSeries = group('s', 'Series', [recessive('a', 'A'), recessive('b', 'B')]);
const half = { share: fraction(1, 2), evidence: agreed };
export const aLethal = group('l', 'Lethal', [incomplete('a', 'A'), incomplete('b', 'B')], {
  pairs: [two('a', { survival: neverSeen(agreed) }), two('b', { survival: half })],
});
const linkage = { kind: 'sex-linked', recombination: tenth, evidence: agreed } as const;
export const aLinked = group('x', 'Linked', [incomplete('a', 'A')], { linkage });
export const aLinkedLethal = group('y', 'Linked lethal', [incomplete('a', 'A')], {
  linkage,
  pairs: [two('a', { survival: neverSeen(agreed) })],
});

const loci = [aRecessive, aRecessive, aSeries, aLethal, aLinked, aLinkedLethal];

export interface RandomCase {
  readonly locus: Locus;
  readonly apart: number;
  readonly animals: readonly PedigreeAnimal[];
  readonly clutches: readonly PedigreeClutch[];
  readonly evidence: Evidence;
}

/** A small pedigree with loops, half known parents, open fathers, and evidence of every kind. */
export function randomCase(g: GeneratorValue, most: number): RandomCase {
  const dice = (max: number): number => g(fc.nat, { max: max - 1 });
  const pick = <Item>(items: readonly Item[]): Item => items[dice(items.length)]!;
  const locus = pick(loci);
  const large = genotypeCount(locus, 'female') > 3;
  const count = 2 + dice((large ? Math.min(6, most) : most) - 1);
  const sexes = Array.from({ length: count }, (_, n) => (['female', 'male'] as const)[n % 2]!);
  const animals: PedigreeAnimal[] = [];
  const clutches: PedigreeClutch[] = [];
  const known = (sex: 'female' | 'male'): readonly string[] =>
    animals.filter(({ id }) => sexes[Number(id)] === sex).map(({ id }) => id);

  while (animals.length < count) {
    const id = String(animals.length);
    const sex = sexes[animals.length]!;
    const said = dice(3) > 0 ? { sex } : {};
    if (animals.length < 2 || dice(6) === 0) {
      animals.push({ id, ...said });
      continue;
    }
    if (clutches.length > 0 && dice(3) === 0) {
      const clutch = pick(clutches);
      const alone = clutch.fathers.every((father) => 'fatherless' in father);
      // All young of one that bred alone are daughters, and are bred from as daughters.
      if (!alone || sex === 'female') animals.push({ id, ...said, clutch: clutch.id });
      else animals.push({ id, ...said });
      continue;
    }
    const fathers: PossibleFather[] = [{ sire: pick(known('male')), weight: 1 }];
    if (dice(3) === 0) fathers.push({ sire: pick(known('male')), weight: 1 + dice(3) });
    if (dice(6) === 0) fathers.push({ fatherless: true, weight: 1 });
    const clutch: PedigreeClutch = {
      id: `c${clutches.length}`,
      dam: pick(known('female')),
      fathers,
      ...(dice(3) === 0 ? { fathered: 'each egg its own' } : {}),
    };
    clutches.push(clutch);
    if (dice(4) > 0) animals.push({ id, ...said, clutch: clutch.id });
  }

  const vector = (value: () => number): ByGenotype => ({
    female: Array.from({ length: genotypeCount(locus, 'female') }, value),
    male: Array.from({ length: genotypeCount(locus, 'male') }, value),
  });
  const seen = (): ByGenotype =>
    dice(2) === 0 ? vector(() => pick([0, 1, 1, 1])) : vector(() => pick([0.05, 0.5, 0.95, 1]));
  const priors = new Map(
    animals
      .filter(({ clutch }) => clutch === undefined && dice(4) > 0)
      .map(({ id }) => [id, vector(() => pick([0, 1, 2, 3]))] as const)
      .filter(([, { female, male }]) => Math.max(...female) > 0 && Math.max(...male) > 0),
  );
  const findings: Finding[] = animals
    .filter(() => dice(3) === 0)
    .map(({ id }) => ({
      kind: pick(['look', 'test'] as const),
      id: `f${id}`,
      animal: id,
      likelihood: seen(),
    }));
  for (const clutch of clutches) {
    if (dice(2) === 0) continue;
    const young = [
      { count: dice(4), likelihood: seen() },
      { count: dice(3), likelihood: seen() },
    ];
    findings.push({ kind: 'young', id: `y${clutch.id}`, clutch: clutch.id, young });
  }
  // Records come in no order.
  const shuffled = dice(2) === 0 ? animals.toReversed() : animals;
  const apart = pick([0, 0.5, 2 / 3]);
  return { locus, apart, animals: shuffled, clutches, evidence: { priors, findings } };
}
