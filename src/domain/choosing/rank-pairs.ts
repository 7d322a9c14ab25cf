import type { AnimalId } from '../core/ids.ts';
import type { Fraction } from '../genes/fraction.ts';
import type { Needed } from '../genes/in-clutch.ts';
import { genesBook, type GenesBook } from '../genes-book/genes-book.ts';
import { locusOf } from '../genes/catalogue.ts';
import type { GeneSex } from '../genes/locus.ts';
import type { PairCaution } from '../genes/pair-cautions.ts';
import type { Target } from '../genes/target.ts';
import { familyTree } from '../lineage/family-tree.ts';
import type { Relatedness } from '../lineage/relatedness.ts';
import type { Picture } from '../picture/picture.ts';
import type { Animal } from '../state/animal.ts';
import type { Goal } from './goal.ts';
import { exactPair } from './exact-pair.ts';
import { quickOdds, type Candidate, type WantedLocus } from './quick-odds.ts';
import { candidatesIn, notReady } from './readiness.ts';

/** One possible pairing, with all that speaks for it and against it. */
export interface RankedPair {
  readonly female: AnimalId;
  readonly male: AnimalId;
  /** Chance of at least one in a clutch of so many hatched young. */
  readonly perClutch: number;
  /** Of a proof: the same if it does carry, that is the chance to see it. */
  readonly ifCarrier: number | undefined;
  /** Of one young. */
  readonly each: Fraction;
  /** Hatched young for a chance of `sure`. */
  readonly needed: Needed;
  /** Clutches for that, one a season; undefined where no number is enough. */
  readonly clutches: number | undefined;
  readonly kin: Relatedness;
  /** Reasons against breeding from her, or from him, now. */
  readonly notReady: { readonly female: readonly string[]; readonly male: readonly string[] };
  readonly cautions: readonly PairCaution[];
}

export interface Ranking {
  readonly females: number;
  readonly males: number;
  /** Pairs that can give it at all. */
  readonly possible: number;
  /** The best of them, best first. */
  readonly pairs: readonly RankedPair[];
  /** The chance that `needed` asks for. */
  readonly sure: Fraction;
}

export interface RankOptions {
  /** Hatched young in a clutch. */
  readonly young: number;
  /** Leave out pairs of which one is not ready. */
  readonly readyOnly?: boolean;
  /** How many are told. */
  readonly most?: number;
}

const NINE_IN_TEN: Fraction = { n: 9n, d: 10n };
/** What a proof may miss: one in twenty. */
const NINETEEN_IN_TWENTY: Fraction = { n: 19n, d: 20n };

/**
 * Pairs of living adults by their chance to reach a goal in one clutch; of equal ones, those that are
 * ready and less related first, and those with a grave caution last. Reckoned quickly for all, exactly for those that are told.
 */
export function rankPairs(
  goal: Goal,
  picture: Picture,
  { young, readyOnly = false, most = 20 }: RankOptions,
): Ranking {
  const book = genesBook(picture);
  const target = targetOf(goal);
  const { females, males } = candidatesFor(goal, picture);
  const chance = quickOdds(wantedLoci(target, book), target.sex);
  const ids = [...new Set(target.wants.map(({ locus }) => locus))];
  const against = new Map([...females, ...males].map((each) => [each.id, notReady(each, picture)]));
  const isReady = ({ id }: Animal): boolean => (against.get(id) ?? []).length === 0;
  const known = (animal: Animal, sex: GeneSex) => ({
    animal,
    isReady: isReady(animal),
    candidate: candidateOf(animal, sex, ids, book),
  });
  const dams = females.map((each) => known(each, 'female'));
  const sires = males.map((each) => known(each, 'male'));
  const { kin } = familyTree(picture);
  const least = kin.leastOf(
    sires.map(({ animal }) => animal.id),
    dams.map(({ animal }) => animal.id),
  );
  const possible = sires.flatMap((sire, row) =>
    dams.flatMap((dam, column) => {
      if (readyOnly && !(sire.isReady && dam.isReady)) return [];
      const perClutch = chance(dam.candidate, sire.candidate, young);
      if (!(perClutch > 0)) return [];
      const ready = Number(sire.isReady) + Number(dam.isReady);
      return [
        { dam: dam.animal, sire: sire.animal, perClutch, ready, f: least[row]?.[column] ?? 0 },
      ];
    }),
  );
  const sure = goal.kind === 'prove' ? NINETEEN_IN_TWENTY : NINE_IN_TEN;
  const told = possible
    .toSorted((a, b) => inOrder(a, b) || byIds(a, b))
    .slice(0, most)
    .map(({ dam, sire, ready }) => {
      const pair: RankedPair = {
        female: dam.id,
        male: sire.id,
        ...exactPair({ goal, target, book, dam: dam.id, sire: sire.id, young, sure }),
        kin: kin.between(dam.id, sire.id),
        notReady: { female: against.get(dam.id) ?? [], male: against.get(sire.id) ?? [] },
      };
      const f = pair.kin.atMost ?? pair.kin.atLeast;
      return { pair, perClutch: pair.perClutch, ready, f };
    });
  return {
    females: females.length,
    males: males.length,
    possible: possible.length,
    // Sorting keeps the order of equals. What is not suggested is told last, and not kept back.
    pairs: told
      .toSorted((a, b) => Number(isGrave(a.pair)) - Number(isGrave(b.pair)) || inOrder(a, b))
      .map(({ pair }) => pair),
    sure,
  };
}

/** Young that cannot live, or a mother at risk: see `Weight`. */
export const isGrave = ({ cautions }: Pick<RankedPair, 'cautions'>): boolean =>
  cautions.some(({ caution }) => caution.weight === 'grave');

interface Ordered {
  readonly perClutch: number;
  readonly ready: number;
  readonly f: number;
}

/** Chances that differ by rounding alone are the same. */
const inOrder = (a: Ordered, b: Ordered): number =>
  Math.round((b.perClutch - a.perClutch) * 1e9) || b.ready - a.ready || a.f - b.f;

const byIds = (a: { dam: Animal; sire: Animal }, b: { dam: Animal; sire: Animal }): number =>
  `${a.dam.id} ${a.sire.id}` < `${b.dam.id} ${b.sire.id}` ? -1 : 1;

function targetOf(goal: Goal): Target {
  if (goal.kind === 'young') return goal.target;
  return { wants: [{ locus: goal.locus.id, carries: goal.allele, copies: 2 }] };
}

function candidatesFor(goal: Goal, picture: Picture) {
  const { females, males } = candidatesIn(picture);
  const tested = goal.kind === 'prove' ? picture.animal(goal.animal) : undefined;
  if (!tested) return { females, males };
  if (tested.sex === 'female') return { females: [tested], males };
  return tested.sex === 'male' ? { females, males: [tested] } : { females: [], males: [] };
}

const wantedLoci = (target: Target, book: GenesBook): readonly WantedLocus[] =>
  [...new Set(target.wants.map(({ locus }) => locus))].map((id) => ({
    locus: locusOf(book.catalogue, id),
    model: book.model(id),
    wants: target.wants.filter(({ locus }) => locus === id),
  }));

/** What is known of it at the wanted loci; wild type where the records contradict each other. */
function candidateOf(
  animal: Animal,
  sex: GeneSex,
  loci: readonly string[],
  book: GenesBook,
): Candidate {
  const at = loci.map((locus) => {
    const chances = book.chances(animal.id, locus)?.[sex] ?? [1];
    const all = chances.reduce((sum, chance) => sum + chance, 0);
    return chances.map((chance) => (chance < all * 1e-9 ? 0 : chance / all));
  });
  return { at, keys: at.map((chances) => chances.map((each) => each.toPrecision(10)).join()) };
}
