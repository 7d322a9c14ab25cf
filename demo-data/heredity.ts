import { ballPython } from '../src/domain/genes/catalogue/ball-python.ts';
import { locusOf } from '../src/domain/genes/catalogue.ts';
import { blended, certainly, normalised, type Chances } from '../src/domain/genes/chances.ts';
import { fraction, toNumber } from '../src/domain/genes/fraction.ts';
import { WILD } from '../src/domain/genes/genotype.ts';
import { childChances, survivalOf } from '../src/domain/genes/inheritance.ts';
import type { GeneSex, Locus } from '../src/domain/genes/locus.ts';
import { lookOf } from '../src/domain/genes/look.ts';
import { readTraits } from '../src/domain/genes/read-traits.ts';
import { writeTraits } from '../src/domain/genes/write-traits.ts';
import type { Chance } from './random.ts';

/** What an animal really carries: genotype numbers by locus; wild type where none is given. */
export type Genes = ReadonlyMap<string, number>;

const chancesIn = (text: string, sex: GeneSex): ReadonlyMap<string, Chances> =>
  new Map([...readTraits(text, ballPython).loci].map(([id, bySex]) => [id, bySex[sex]]));

function drawn(chances: Chances, chance: Chance): number {
  let left = chance.next();
  for (const [genotype, share] of chances) {
    left -= toNumber(share);
    if (left < 0) return genotype;
  }
  return [...chances.keys()].at(-1) ?? WILD;
}

/** One of the animals that could be called this. */
export const genesCalled = (text: string, sex: GeneSex, chance: Chance): Genes =>
  new Map([...chancesIn(text, sex)].map(([id, chances]) => [id, drawn(chances, chance)]));

const lociOf = (...carriers: readonly ReadonlyMap<string, unknown>[]): readonly Locus[] =>
  [...new Set(carriers.flatMap((carrier) => [...carrier.keys()]))].map((id) =>
    locusOf(ballPython, id),
  );

/** A young of two animals that hatches: what cannot live is drawn again. */
export function bornOf(dam: Genes, sire: Genes, sex: GeneSex, chance: Chance): Genes {
  return new Map(
    lociOf(dam, sire).map((locus) => {
      const { id } = locus;
      const possible = childChances(locus, sex, dam.get(id) ?? WILD, sire.get(id) ?? WILD);
      const hatching = [...possible].filter(([g]) => survivalOf(locus, sex, g).n > 0n);
      return [id, drawn(normalised(hatching), chance)];
    }),
  );
}

const looks = (locus: Locus, sex: GeneSex, genotype: number): string =>
  lookOf(locus, sex, genotype).name;

/** How it looks, and no word of what is hidden. */
export function lookWords(genes: Genes, sex: GeneSex): string {
  const names = lociOf(genes).map((locus) => looks(locus, sex, genes.get(locus.id) ?? WILD));
  return names.filter((name) => name !== '').join(', ') || 'Normal';
}

/** A parent as its keeper calls it. */
export interface Called {
  readonly text: string;
  readonly sex: GeneSex;
}

/**
 * What a careful keeper calls a young: how it looks, and the hets its parents' names give it. Where
 * two males may be the father, how it looks alone.
 */
export function calledAfter(
  genes: Genes,
  sex: GeneSex,
  dam: Called,
  sires: readonly Called[],
): string {
  const [sire, other] = sires;
  if (!sire || other) return lookWords(genes, sex);
  const [ofDam, ofSire] = [chancesIn(dam.text, 'female'), chancesIn(sire.text, 'male')];
  const known = new Map(
    lociOf(ofDam, ofSire, genes).map((locus) => {
      const { id } = locus;
      const look = looks(locus, sex, genes.get(id) ?? WILD);
      const possible = childrenOf(locus, sex, ofDam.get(id), ofSire.get(id));
      return [id, normalised([...possible].filter(([g]) => looks(locus, sex, g) === look))];
    }),
  );
  return writeTraits(known, sex, ballPython).text;
}

function childrenOf(
  locus: Locus,
  sex: GeneSex,
  dams: Chances = certainly(WILD),
  sires: Chances = certainly(WILD),
): Chances {
  return blended(
    [...dams].flatMap(([dam, damShare]) =>
      [...sires].map(([sire, sireShare]) => {
        const share = fraction(damShare.n * sireShare.n, damShare.d * sireShare.d);
        return [share, childChances(locus, sex, dam, sire)] as const;
      }),
    ),
  );
}
