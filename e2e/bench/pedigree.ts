import { fileURLToPath } from 'node:url';
import { chanceFrom, type Chance } from '../../demo-data/random.ts';
import { ballPython } from '../../src/domain/genes/catalogue/ball-python.ts';
import { HALF } from '../../src/domain/genes/fraction.ts';
import { kinshipsIn } from '../../src/domain/genes/kinship/kinship.ts';
import { readLineage, type Kin } from '../../src/domain/genes/kinship/lineage.ts';
import type { GeneSex, Locus } from '../../src/domain/genes/locus.ts';
import { lookOf } from '../../src/domain/genes/look.ts';
import { carrierPosteriors } from '../../src/domain/genes/pedigree/carrier-posteriors.ts';
import type { Evidence, Finding } from '../../src/domain/genes/pedigree/evidence.ts';
import { jointPosterior } from '../../src/domain/genes/pedigree/joint-posterior.ts';
import { pedigreeModel } from '../../src/domain/genes/pedigree/pedigree-model.ts';
import {
  readPedigree,
  type PedigreeAnimal,
  type PedigreeClutch,
} from '../../src/domain/genes/pedigree/pedigree.ts';
import { statesOf, type ByGenotype } from '../../src/domain/genes/pedigree/states.ts';
import { whatMovedIt } from '../../src/domain/genes/pedigree/what-moved-it.ts';
import { atMost, median, print, rounded, type Tell } from './figure.ts';

// How long genes take, on invented collections: every animal's look is known, four young of a clutch
// are sold and only counted, a third stay; every sixth clutch has two possible sires.

const sexes = ['female', 'male'] as const;

interface Collection {
  readonly animals: readonly (PedigreeAnimal & { readonly sex: GeneSex })[];
  readonly clutches: readonly PedigreeClutch[];
}

/** Bought animals, and generations bred from them and from each other. */
function collection(size: number, bought: number, perClutch: number, chance: Chance): Collection {
  const animals: (PedigreeAnimal & { readonly sex: GeneSex })[] = [];
  const clutches: PedigreeClutch[] = [];
  const some = (sex: GeneSex): string => {
    const all = animals.filter((animal) => animal.sex === sex);
    return chance.pick(all as [PedigreeAnimal, ...PedigreeAnimal[]]).id;
  };
  while (animals.length < bought) {
    animals.push({ id: `a${animals.length}`, sex: animals.length % 4 === 0 ? 'male' : 'female' });
  }
  while (animals.length < size) {
    const id = `c${clutches.length}`;
    const fathers = [{ sire: some('male'), weight: 1 }];
    if (clutches.length % 6 === 0) fathers.push({ sire: some('male'), weight: 1 });
    clutches.push({ id, dam: some('female'), fathers });
    for (let n = 0; n < perClutch && animals.length < size; n += 1) {
      animals.push({ id: `a${animals.length}`, sex: chance.pick(sexes), clutch: id });
    }
  }
  return { animals, clutches };
}

function drawn(row: readonly number[] | Float64Array, chance: Chance): number {
  let rest = chance.next();
  const at = row.findIndex((share) => (rest -= share) < 0);
  return Math.max(at, 0);
}

/** Genotypes drawn for one locus, and what a keeper would know of them. */
function evidenceOf(
  { animals, clutches }: Collection,
  locus: Locus,
  carriers: number,
  chance: Chance,
): Evidence {
  const model = pedigreeModel(locus, HALF);
  const states = statesOf(model);
  const vector = (value: (sex: GeneSex, genotype: number) => number): ByGenotype => ({
    female: Array.from({ length: model.genotypes.female }, (_, n) => value('female', n)),
    male: Array.from({ length: model.genotypes.male }, (_, n) => value('male', n)),
  });
  const seen = (own: GeneSex, genotype: number): ByGenotype => {
    const name = lookOf(locus, own, genotype).name;
    return vector((sex, n) => (sex === own && lookOf(locus, sex, n).name === name ? 1 : 0));
  };
  const state = new Map<string, number>();
  const priors = new Map<string, ByGenotype>();
  const findings: Finding[] = [];
  const clutchOf = new Map(clutches.map((clutch) => [clutch.id, clutch]));
  const rowOf = (clutch: PedigreeClutch): Float64Array => {
    const [father] = clutch.fathers;
    const sire = father && 'sire' in father ? (state.get(father.sire) ?? 0) : 0;
    return states.hatched(state.get(clutch.dam) ?? 0, sire - states.females);
  };
  for (const { id, sex, clutch } of animals) {
    const offset = sex === 'male' ? states.females : 0;
    let at = offset;
    if (clutch === undefined) {
      if (chance.happens(carriers)) {
        // Genotype 1 has one copy. Half are sold as carriers, the rest as possible ones.
        const share = chance.pick([1, 1, 2 / 3, 1 / 2]);
        priors.set(
          id,
          vector((_, n) => [1 - share, share][n] ?? 0),
        );
        at += chance.happens(share) ? 1 : 0;
      }
    } else {
      const row = rowOf(clutchOf.get(clutch) ?? { id: '', dam: '', fathers: [] });
      const own = row.map((share, n) => (n < states.females === (sex === 'female') ? share : 0));
      const all = own.reduce((sum, share) => sum + share, 0);
      at = drawn(
        own.map((share) => share / all),
        chance,
      );
    }
    state.set(id, at);
    findings.push({
      kind: 'look',
      id: `look ${id}`,
      animal: id,
      likelihood: seen(sex, at - offset),
    });
  }
  for (const clutch of clutches) {
    const young = Array.from({ length: 4 }, () => {
      const at = drawn(rowOf(clutch), chance);
      const likelihood =
        at < states.females ? seen('female', at) : seen('male', at - states.females);
      return { count: 1, likelihood };
    });
    findings.push({ kind: 'young', id: `sold ${clutch.id}`, clutch: clutch.id, young });
  }
  return { priors, findings };
}

const timed = (work: () => void): number => {
  const from = performance.now();
  work();
  return performance.now() - from;
};

function tellCarriers(tell: Tell): void {
  const chance = chanceFrom(11);
  const made = collection(500, 80, 2, chance);
  const pedigree = readPedigree(made.animals, made.clutches);
  if (!pedigree.ok) throw new Error(pedigree.problem.message);
  const loci = ballPython.loci.filter(({ alleles }) => alleles.length > 1).slice(0, 20);
  const shares = [0.04, 0.1, 0.25];
  const evidence = loci.map((locus, n) => ({
    locus,
    known: evidenceOf(made, locus, shares[n % 3] ?? 0.1, chance),
  }));
  let [largest, untold, tooLarge] = [0, 0, 0];
  const run = (): void => {
    [largest, untold, tooLarge] = [0, 0, 0];
    for (const { locus, known } of evidence) {
      const found = carrierPosteriors(pedigree.value, pedigreeModel(locus, HALF), known);
      untold += made.animals.length - found.of.size;
      for (const trouble of found.troubles) {
        if (trouble.kind === 'contradiction') throw new Error('Invented records do not clash.');
        tooLarge += 1;
        largest = Math.max(largest, trouble.width);
      }
    }
  };
  const all = rounded(median(Array.from({ length: 5 }, () => timed(run))));
  const name = 'genes: chances of 500 animals at 20 loci';
  tell({ name, value: all, unit: 'ms', ...atMost(2_000, all) });
  tell({ name: `${name}, not told as too interwoven`, value: untold, unit: 'of 10,000' });
  tell({ name: `${name}, groups too interwoven`, value: tooLarge, unit: `width to ${largest}` });

  const [first] = evidence;
  if (!first) throw new Error('The catalogue is empty.');
  const model = pedigreeModel(first.locus, HALF);
  const asked = made.animals.slice(-40).map(({ id }) => id);
  const joint = asked.map((id) =>
    timed(() => jointPosterior(pedigree.value, model, first.known, id, 'a0')),
  );
  tell({
    name: 'genes: two animals together, median',
    value: rounded(median(joint), 1),
    unit: 'ms',
  });
  const because = asked
    .slice(0, 10)
    .map((id) => timed(() => whatMovedIt(pedigree.value, model, first.known, id)));
  tell({ name: 'genes: what moved it, median', value: rounded(median(because)), unit: 'ms' });
}

function tellKinship(tell: Tell): void {
  const [generations, size] = [12, 5_000];
  const chance = chanceFrom(12);
  const kin: Kin[] = [];
  const each = Math.floor(size / generations);
  while (kin.length < size) {
    const generation = Math.floor(kin.length / each);
    const id = `a${kin.length}`;
    const sex = kin.length % 2 === 0 ? ('male' as const) : ('female' as const);
    const parent = (odd: number): string =>
      `a${(generation - 1) * each + 2 * chance.whole(0, Math.floor(each / 2) - 1) + odd}`;
    const even = ((generation - 1) * each) % 2;
    kin.push(
      generation === 0 ? { id, sex } : { id, sex, sire: parent(even), dam: parent(1 - even) },
    );
  }
  const newest = kin.slice(-600);
  const ids = (sex: GeneSex, count: number): readonly string[] =>
    newest
      .filter((animal) => animal.sex === sex)
      .slice(0, count)
      .map(({ id }) => id);
  const [males, females] = [ids('male', 60), ids('female', 200)];
  let highest = 0;
  const run = (): void => {
    const read = readLineage(kin);
    if (!read.ok) throw new Error(read.problem.message);
    const pairs = kinshipsIn(read.value).ofPairs(males, females);
    highest = Math.max(...pairs.flat().map(({ atLeast }) => atLeast));
  };
  const ms = rounded(median(Array.from({ length: 5 }, () => timed(run))));
  const name = 'genes: kinship of 60 × 200 pairs among 5,000 animals of 12 generations';
  tell({ name, value: ms, unit: 'ms', ...atMost(1_000, ms) });
  tell({ name: `${name}, the highest`, value: rounded(highest, 3), unit: 'kinship' });
}

export function pedigreeFigures(tell: Tell): void {
  tellCarriers(tell);
  tellKinship(tell);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) pedigreeFigures(print);
