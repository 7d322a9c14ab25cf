import { gathered, type Chances } from './chances.ts';
import { compare, HALF, ONE, oneMinus, sum, times, type Fraction } from './fraction.ts';
import { numberOf, WILD, type Genotype } from './genotype.ts';
import { pairOf } from './inheritance.ts';
import type { BySex, GeneSex, Locus } from './locus.ts';
import { alleleAt } from './look.ts';
import type { Claim, Place, Remark, Statement } from './trait-statement.ts';

export interface Settled {
  /** Missing where what is said of the locus cannot all be so. */
  readonly chances?: BySex<Chances>;
  readonly notes: readonly Remark[];
  readonly contradictions: readonly Remark[];
}

/** Two alleles, in no order, and their chance. */
type PairChance = readonly [Genotype, Fraction];
type Outcome = { readonly pairs: readonly PairChance[]; readonly note?: string } | string;

/** What all statements on one locus come to. `sex` is that of the animal, if it is known. */
export function settleLocus(locus: Locus, said: readonly Statement[], sex?: GeneSex): Settled {
  const place = spanOf(said);
  const claims = said.map(({ claim }) => claim);
  const makers = claims.filter((claim) => claim.kind === 'on Y');
  const against = (message: string): Settled => ({
    notes: [],
    contradictions: [{ ...place, message }],
  });
  if (makers.length > 0 && sex === 'female') {
    return against('Male and female makers are males: a daughter has no Y.');
  }
  const outcome = pairsFrom(locus, claims);
  if (typeof outcome === 'string') return against(outcome);
  const [onY] = makers;
  if (makers.some(({ chance }) => onY && compare(chance, onY.chance) !== 0)) {
    return against('It is a male maker or a female maker, not both.');
  }
  const { pairs } = outcome;
  const dead = pairs.find(([[a, b]]) => pairOf(locus, a, b)?.survival?.share.n === 0n)?.[0];
  if (dead) {
    const [first, second] = dead.map((allele) => nameOf(locus, allele));
    const who = first === second ? `Two copies of ${first}` : `${first} with ${second}`;
    return against(`${who} were never seen to live.`);
  }
  const notes = [
    ...(outcome.note === undefined ? [] : [outcome.note]),
    ...disputesOf(locus, pairs),
    ...(onY === undefined && sex === 'male' && isUnplaced(locus, pairs)
      ? ['Whether he has it from his father (male maker) or his mother is not said: 50 % each.']
      : []),
  ];
  return {
    chances: {
      female: numbered(locus, 'female', pairs, HALF),
      male: numbered(locus, 'male', pairs, onY?.chance ?? HALF),
    },
    notes: notes.map((message) => ({ ...place, message })),
    contradictions: [],
  };
}

function spanOf(said: readonly Statement[]): Place {
  const at = Math.min(...said.map((each) => each.at));
  return { at, length: Math.max(...said.map((each) => each.at + each.length)) - at };
}

const nameOf = (locus: Locus, allele: number): string => alleleAt(locus, allele).name;

function pairsFrom(locus: Locus, claims: readonly Claim[]): Outcome {
  const firm = firmAlleles(locus, claims);
  if (typeof firm === 'string') return firm;
  const second = claims.filter((claim) => claim.kind === 'may have two');
  const possible = claims.filter((claim) => claim.kind === 'may carry');
  const unsure = possible.find(({ allele, chance }) =>
    possible.some((other) => other.allele === allele && compare(other.chance, chance) !== 0),
  );
  if (unsure) return `Two different chances are given to be het ${nameOf(locus, unsure.allele)}.`;
  const maybe = possible.filter(
    ({ allele }, n) =>
      !firm.alleles.includes(allele) && possible.findIndex((each) => each.allele === allele) === n,
  );
  const note =
    firm.repeated || maybe.length < possible.length ? 'Said twice, counted once.' : undefined;
  const noted = (pairs: readonly PairChance[], more = note): Outcome =>
    more === undefined ? { pairs } : { pairs, note: more };

  const [two] = second;
  if (two) {
    const others = [...firm.alleles, ...maybe.map(({ allele }) => allele)];
    if (second.length > 1 || others.some((allele) => allele !== two.allele)) return tooMany(locus);
    return noted([
      [[two.allele, two.allele], two.chance],
      [[WILD, two.allele], oneMinus(two.chance)],
    ]);
  }
  const [first, other] = firm.alleles;
  if (maybe.length === 0) return noted([[[first ?? onlyMaker(locus, claims), other ?? WILD], ONE]]);
  if (other !== undefined) return tooMany(locus);
  const left = oneMinus(sum(maybe.map(({ chance }) => chance)));
  const [one, another] = [...firm.alleles, ...maybe.map(({ allele }) => allele)];
  if (one !== undefined && another !== undefined && (left.n < 0n || firm.hidden)) {
    return oneOnly(locus, one, another);
  }
  const beside = first ?? WILD;
  const shown = first !== undefined && maybe.some(({ allele }) => isRecessive(locus, allele));
  return noted(
    [
      ...maybe.map(({ allele, chance }): PairChance => [[beside, allele], chance]),
      [[beside, WILD], left],
    ],
    shown ? `Beside ${nameOf(locus, beside)} it would show.` : note,
  );
}

interface Firm {
  /** None, one or two. */
  readonly alleles: readonly number[];
  /** One recessive, carried and not shown. */
  readonly hidden: boolean;
  readonly repeated: boolean;
}

function firmAlleles(locus: Locus, claims: readonly Claim[]): Firm | string {
  const copies = new Map<number, number>();
  const atLeast = (allele: number, n: number) =>
    copies.set(allele, Math.max(n, copies.get(allele) ?? 0));
  let told = 0;
  for (const claim of claims) {
    if (claim.kind === 'shows' || claim.kind === 'carries') {
      atLeast(claim.allele, 1);
      told++;
    } else if (claim.kind === 'pair') {
      const [a, b] = claim.alleles;
      if (a === b) atLeast(a, 2);
      else for (const allele of claim.alleles) atLeast(allele, 1);
      told += 2;
    }
  }
  const counted = [...copies.values()].reduce((total, n) => total + n, 0);
  if (counted > 2) return tooMany(locus);
  const shown = (allele: number) =>
    claims.some((claim) => claim.kind === 'shows' && claim.allele === allele);
  const carriedOnly = [...copies.keys()].filter(
    (allele) =>
      isRecessive(locus, allele) &&
      !shown(allele) &&
      claims.some((claim) => claim.kind === 'carries' && claim.allele === allele),
  );
  const repeated = told > counted;
  const [first, other] = copies.keys();
  if (first === undefined) return { alleles: [], hidden: false, repeated };
  if (other !== undefined) {
    const othersHide = [first, other].every((allele) => isRecessive(locus, allele));
    const named = claims.some((claim) => claim.kind === 'pair');
    if (othersHide && carriedOnly.length > 0 && !named) {
      return oneOnly(locus, first, other);
    }
    return { alleles: [first, other], hidden: false, repeated };
  }
  // A recessive that shows, with nothing else beside it, is there twice.
  const twice = copies.get(first) === 2 || (isRecessive(locus, first) && shown(first));
  return {
    alleles: twice ? [first, first] : [first],
    hidden: !twice && carriedOnly.length > 0,
    repeated,
  };
}

const isRecessive = (locus: Locus, allele: number): boolean =>
  alleleAt(locus, allele).mode === 'recessive';

/** "Male maker" alone says which trait, where the locus has only one. */
const onlyMaker = (locus: Locus, claims: readonly Claim[]): number =>
  claims.some(({ kind }) => kind === 'on Y') && locus.alleles.length === 2 ? 1 : WILD;

const tooMany = ({ name }: Locus): string =>
  `More than two at one locus (${name}): an animal carries two at most.`;

/** Two hidden alleles of one locus would not be hidden. */
function oneOnly(locus: Locus, first: number, other: number): string {
  const pair =
    pairOf(locus, first, other)?.name ?? `${nameOf(locus, first)}/${nameOf(locus, other)}`;
  const names = `${nameOf(locus, first)} and ${nameOf(locus, other)}`;
  return `${names} are one locus, and an animal with both shows it. If it does, write ${pair}.`;
}

const isUnplaced = (locus: Locus, pairs: readonly PairChance[]): boolean =>
  locus.linkage.kind === 'sex-linked' && pairs.some(([[a, b]]) => a !== b);

function disputesOf(locus: Locus, pairs: readonly PairChance[]): readonly string[] {
  const alleles = new Set(pairs.flatMap(([pair]) => pair).filter((allele) => allele !== WILD));
  return [...alleles].flatMap((index) => {
    const { name, mode, evidence, remark } = alleleAt(locus, index);
    if (evidence.grade !== 'disputed') return [];
    return [`How ${name} is inherited is disputed; reckoned as ${mode}. ${remark ?? ''}`.trim()];
  });
}

/** In a male, an allele beside wild type lies on his Y with this chance; two others either way. */
function numbered(
  locus: Locus,
  sex: GeneSex,
  pairs: readonly PairChance[],
  onY: Fraction,
): Chances {
  return gathered(
    pairs.flatMap(([[a, b], chance]) => {
      const [low, high] = a < b ? [a, b] : [b, a];
      const first = low === WILD ? onY : HALF;
      return [
        [numberOf(locus, sex, [low, high]), times(chance, first)],
        [numberOf(locus, sex, [high, low]), times(chance, oneMinus(first))],
      ] as const;
    }),
  );
}
