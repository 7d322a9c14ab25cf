import type { AnimalId } from '../core/ids.ts';
import { locusOf } from '../genes/catalogue.ts';
import { lookOf } from '../genes/look.ts';
import type { GeneSex, Locus } from '../genes/locus.ts';
import type { ByGenotype } from '../genes/pedigree/states.ts';
import type { GenesBook } from '../genes-book/genes-book.ts';
import { lookLikelihood } from '../genes-book/likelihood.ts';
import { exactTest, type Odds } from './exact-test.ts';

/** Fewer young than this prove nothing about odds. Source: exactTest. */
export const FEWEST_YOUNG = 8;

/** Two of which all young were looked at, or given a name. */
export interface BredPair {
  readonly dam: AnimalId;
  readonly sire: AnimalId;
  readonly young: number;
}

interface Parented {
  readonly id: AnimalId;
  readonly dam?: AnimalId | undefined;
  readonly sires: readonly AnimalId[];
  readonly traits?: string | undefined;
}

/** Young that look alike. */
interface Group {
  readonly dam: AnimalId;
  readonly sire: AnimalId;
  readonly looks: string;
  readonly count: number;
}

/** What hatched of one male and one female; where several males were in, the father is not known. */
function groupsIn(animals: readonly Parented[], book: GenesBook): readonly Group[] {
  const counted = book.family.counted.flatMap(({ animal: dam, sires, counts }) => {
    const [only, other] = sires;
    if (!only || other || only.male === 'unknown') return [];
    const sire = only.male;
    return counts.map(({ looks, count }) => ({ dam, sire, looks, count }));
  });
  const named = animals.flatMap(({ dam, sires: [sire, other], traits }) =>
    dam && sire && !other && traits !== undefined ? [{ dam, sire, looks: traits, count: 1 }] : [],
  );
  return [...counted, ...named].filter(({ count }) => count > 0);
}

/** Those with the most young first. */
export function bredPairs(animals: readonly Parented[], book: GenesBook): readonly BredPair[] {
  const pairs = new Map<string, BredPair>();
  for (const { dam, sire, count } of groupsIn(animals, book)) {
    const key = `${dam} ${sire}`;
    pairs.set(key, { dam, sire, young: (pairs.get(key)?.young ?? 0) + count });
  }
  return [...pairs.values()].toSorted((a, b) => b.young - a.young || (a.dam < b.dam ? -1 : 1));
}

/** How the young of a pair look at one gene, beside what was to be expected. */
export interface LocusOutcome {
  readonly locus: string;
  readonly name: string;
  /** Young of which the words say how they look there. */
  readonly of: number;
  readonly kinds: readonly {
    /** Empty for what looks like wild type. */
    readonly look: string;
    readonly seen: number;
    readonly expected: number;
  }[];
  /** Of outcomes no likelier than this one; undefined for too few young. */
  readonly p?: number | undefined;
}

/** What is too rare to be told apart counts together: the ways to split young grow with the kinds. */
const MOST_KINDS = 4;
const REST = 'other looks';

/**
 * Genes that the words on the parents or the young name, and at which the young can differ. The odds are those of the parents by what they hatched
 * with: what their own young have told since would make any outcome fit.
 */
export function outcomesOf(
  { dam, sire }: Pick<BredPair, 'dam' | 'sire'>,
  animals: readonly Parented[],
  book: GenesBook,
): readonly LocusOutcome[] {
  const groups = groupsIn(animals, book).filter((each) => each.dam === dam && each.sire === sire);
  const parents = animals.filter(({ id }) => id === dam || id === sire);
  const texts = [...parents.flatMap(({ traits }) => traits ?? []), ...groups.map((g) => g.looks)];
  const named = new Set(texts.flatMap((text) => [...book.read(text).loci.keys()]));
  const isNamed = (locus: string): boolean => named.has(locus);
  return book.loci.filter(isNamed).flatMap((id) => {
    const locus = locusOf(book.catalogue, id);
    const [hers, his] = [hatchedWith(dam, id, book), hatchedWith(sire, id, book)];
    if (!hers || !his) return [];
    const odds = lookOdds(book, id, hers, his);
    const seen = new Map<string, number>();
    for (const { looks, count } of groups) {
      const look = theLook(book, looks, locus);
      if (look !== undefined) seen.set(look, (seen.get(look) ?? 0) + count);
    }
    const outcome = outcomeAt(seen, odds);
    return outcome.kinds.length > 1 ? [{ locus: id, name: locus.name, ...outcome }] : [];
  });
}

function outcomeAt(
  seen: ReadonlyMap<string, number>,
  odds: readonly (readonly [weight: number, shares: ReadonlyMap<string, number>])[],
): Pick<LocusOutcome, 'of' | 'kinds' | 'p'> {
  const of = [...seen.values()].reduce((sum, count) => sum + count, 0);
  const expected = (look: string): number =>
    odds.reduce((sum, [weight, shares]) => sum + weight * (shares.get(look) ?? 0), 0);
  const known = new Set(odds.flatMap(([, shares]) => [...shares.keys()]));
  const looks = [...new Set([...known, ...seen.keys()])]
    .filter((look) => expected(look) > HARDLY || seen.has(look))
    .toSorted((a, b) => expected(b) - expected(a));
  const told = looks.length > MOST_KINDS ? looks.slice(0, MOST_KINDS - 1) : looks;
  const rest = looks.slice(told.length);
  const kinds = [...told.map((look) => [look]), ...(rest.length > 0 ? [rest] : [])];
  const counts = kinds.map((kind) => kind.reduce((sum, look) => sum + (seen.get(look) ?? 0), 0));
  const cases = odds.map(([weight, shares]): Odds => {
    return {
      weight,
      shares: kinds.map((kind) => kind.reduce((sum, look) => sum + (shares.get(look) ?? 0), 0)),
    };
  });
  return {
    of,
    kinds: kinds.map((kind, n) => ({
      look: kind.length > 1 ? REST : (kind[0] ?? ''),
      seen: counts[n] ?? 0,
      expected: of * kind.reduce((sum, look) => sum + expected(look), 0),
    })),
    p: of < FEWEST_YOUNG ? undefined : exactTest(counts, cases),
  };
}
/** Of a founder that is its prior, and nothing need be solved. */
const hatchedWith = (animal: AnimalId, locus: string, book: GenesBook): ByGenotype | undefined =>
  book.evidence(locus).priors.get(animal) ?? book.atHatching(animal, locus);

/** Rarer looks are only listed where one was seen. */
const HARDLY = 1e-6;

/** The one look that the words allow; undefined where they leave it open. */
function theLook(book: GenesBook, text: string, locus: Locus): string | undefined {
  const likelihood = lookLikelihood(book.read(text), locus);
  if (!likelihood) return undefined;
  const looks = new Set(
    sexes.flatMap((sex) =>
      likelihood[sex].flatMap((open, genotype) =>
        open > 0 ? [lookOf(locus, sex, genotype).name] : [],
      ),
    ),
  );
  return looks.size === 1 ? [...looks][0] : undefined;
}
const sexes: readonly GeneSex[] = ['female', 'male'];

/** For each pair of genotypes they may have, the share of each look among the young that hatch. */
function lookOdds(
  book: GenesBook,
  id: string,
  { female }: ByGenotype,
  { male }: ByGenotype,
): readonly (readonly [number, ReadonlyMap<string, number>])[] {
  const locus = locusOf(book.catalogue, id);
  const model = book.model(id);
  const cases = female.flatMap((hers, dam) =>
    male.flatMap((his, sire) => {
      const weight = hers * his;
      if (!(weight > 0)) return [];
      const shares = new Map<string, number>();
      for (const sex of sexes) {
        for (const [genotype, chance] of model.child(sex, dam, sire).entries()) {
          const lives = chance * model.survival(sex, genotype);
          if (lives === 0) continue;
          const { name } = lookOf(locus, sex, genotype);
          shares.set(name, (shares.get(name) ?? 0) + lives);
        }
      }
      const all = sum([...shares.values()]);
      return all > 0 ? [[weight, new Map([...shares].map(([k, v]) => [k, v / all]))] as const] : [];
    }),
  );
  // Parents of whom nothing lives have no young to be looked at.
  const whole = sum(cases.map(([weight]) => weight));
  return cases.map(([weight, shares]) => [weight / whole, shares] as const);
}

const sum = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0);
