import { toNumber } from '../genes/fraction.ts';
import { everyGenotype, survivalOf } from '../genes/inheritance.ts';
import type { GeneSex, Locus } from '../genes/locus.ts';
import type { GeneModel } from '../genes/gene-model.ts';
import { meets, type Want } from '../genes/target.ts';

/** Chances of genotypes by number, 0 where there is none. */
export type Known = readonly number[];

/** One possible draw of both parents: shares of daughters and sons that meet the wants, and that hatch. */
interface Draw {
  readonly weight: number;
  readonly female: number;
  readonly male: number;
  readonly hatchFemale: number;
  readonly hatchMale: number;
}

/** What is wanted at one locus, and how it is inherited. */
export interface WantedLocus {
  readonly locus: Locus;
  readonly model: GeneModel;
  readonly wants: readonly Want[];
}

const SURE: readonly Draw[] = [{ weight: 1, female: 1, male: 1, hatchFemale: 1, hatchMale: 1 }];

/**
 * The chance per clutch for very many pairs, in floating point: what `targetCases` and `inClutch` give
 * exactly, for all loci but those that are not wanted. Parents alike at a locus are reckoned once.
 */
export function quickOdds(wanted: readonly WantedLocus[], sex: GeneSex | undefined) {
  const loci = wanted.map((each) => ({ ...each, draws: new Map<string, readonly Draw[]>() }));
  const tables = loci.map(({ locus, model, wants }) => broodTable(locus, model, wants));

  /** `dam` and `sire`: what is known of each at each wanted locus, and a key that is its own. */
  return function chance(dam: Candidate, sire: Candidate, young: number): number {
    let draws = SURE;
    for (const [n, { draws: kept }] of loci.entries()) {
      const key = `${dam.keys[n]} ${sire.keys[n]}`;
      let here = kept.get(key);
      if (!here) {
        here = drawsOf(dam.at[n] ?? [], sire.at[n] ?? [], tables[n]);
        kept.set(key, here);
      }
      if (here.length === 0) return 0;
      draws = draws === SURE ? here : crossed(draws, here);
    }
    return draws.reduce((sum, draw) => {
      const met = (sex === 'male' ? 0 : draw.female) + (sex === 'female' ? 0 : draw.male);
      const p = met / (draw.hatchFemale + draw.hatchMale);
      return sum - draw.weight * Math.expm1(young * Math.log1p(-p));
    }, 0);
  };
}

export interface Candidate {
  readonly at: readonly Known[];
  /** Equal for animals of whom the same is known. */
  readonly keys: readonly string[];
}

type Brood = Omit<Draw, 'weight'>;
type BroodTable = (dam: number, sire: number) => Brood;

function broodTable(locus: Locus, model: GeneModel, wants: readonly Want[]): BroodTable {
  const known = new Map<number, Brood>();
  const share = (sex: GeneSex) => {
    const lives = everyGenotype(locus, sex).map((g) => toNumber(survivalOf(locus, sex, g)));
    const isMet = lives.map((_, g) => wants.every((want) => meets(want, locus, sex, g)));
    return (dam: number, sire: number) => {
      const chances = model.child(sex, dam, sire);
      const hatch = chances.reduce((sum, chance, g) => sum + chance * (lives[g] ?? 0), 0);
      const met = chances.reduce((sum, c, g) => sum + (isMet[g] ? c * (lives[g] ?? 0) : 0), 0);
      return { met, hatch };
    };
  };
  const [daughters, sons] = [share('female'), share('male')];
  return (dam, sire) => {
    const key = dam * 65_536 + sire;
    const before = known.get(key);
    if (before) return before;
    const [her, his] = [daughters(dam, sire), sons(dam, sire)];
    const brood = { female: her.met, male: his.met, hatchFemale: her.hatch, hatchMale: his.hatch };
    known.set(key, brood);
    return brood;
  };
}

/** Those that can meet the wants; draws that come to the same are taken together. */
function drawsOf(dam: Known, sire: Known, table: BroodTable | undefined): readonly Draw[] {
  const draws = new Map<string, Draw>();
  dam.forEach((ofDam, d) => {
    if (ofDam === 0) return;
    sire.forEach((ofSire, s) => {
      const brood = ofSire === 0 ? undefined : table?.(d, s);
      if (!brood || brood.female + brood.male === 0) return;
      const key = Object.values(brood).join(' ');
      const weight = ofDam * ofSire + (draws.get(key)?.weight ?? 0);
      draws.set(key, { weight, ...brood });
    });
  });
  return [...draws.values()];
}

const crossed = (a: readonly Draw[], b: readonly Draw[]): readonly Draw[] =>
  a.flatMap((left) =>
    b.map((right) => ({
      weight: left.weight * right.weight,
      female: left.female * right.female,
      male: left.male * right.male,
      hatchFemale: left.hatchFemale * right.hatchFemale,
      hatchMale: left.hatchMale * right.hatchMale,
    })),
  );
