import { compare, HALF, ONE, type Fraction } from './fraction.ts';
import { alleleAt } from './look.ts';
import type { Meaning } from './trait-dictionary.ts';
import type { Modifier } from './trait-parts.ts';
import type { Claim } from './trait-statement.ts';

/** Words before a name. */
export interface Before {
  readonly words: ReadonlySet<Modifier>;
  readonly chance?: Fraction;
  /** A colon stands between. */
  readonly lists?: boolean;
}

/** A "het" that goes on to further names: to so many more, through the phrase, or through a list. */
export interface Het {
  readonly chance: Fraction;
  readonly left: number | 'phrase' | 'list';
}

/** What a name claims, with the words before it; or why they do not go together. */
export interface NameClaim {
  readonly claim?: Claim;
  readonly against?: string;
  readonly note?: string;
  /** How the "het" goes on. */
  readonly het?: Het;
}

type Known = Exclude<Meaning, { kind: 'unclear' }>;
type AlleleName = Extract<Meaning, { kind: 'allele' }>;

const nothing: Before = { words: new Set() };

export function claimOf(said: string, meaning: Known, before = nothing, het?: Het): NameClaim {
  if (meaning.kind === 'pair') return pairClaim(said, meaning.alleles, before);
  if (before.words.has('super')) return superClaim(said, meaning, before);
  if (saysHet(before)) return hetClaim(said, meaning, before);
  const { allele, locus } = meaning;
  const goesOn =
    het !== undefined &&
    !before.words.has('visual') &&
    (typeof het.left === 'number' || alleleAt(locus, allele).mode === 'recessive');
  if (!goesOn) return { claim: { kind: 'shows', allele } };
  const claim = carried(allele, het.chance);
  if (het.left === 'list') return { claim, het };
  if (het.left !== 'phrase') {
    return het.left > 1 ? { claim, het: { ...het, left: het.left - 1 } } : { claim };
  }
  const note = `Read as het ${said}, like the one before. Write "visual ${said}" if it shows.`;
  return { claim, note, het };
}

const saysHet = ({ words, chance }: Before): boolean =>
  chance !== undefined ||
  (['het', 'possible', 'double', 'triple'] as const).some((word) => words.has(word));

function pairClaim(said: string, alleles: readonly [number, number], before: Before): NameClaim {
  const claim = { kind: 'pair', alleles } as const;
  if (before.words.has('super')) {
    return alleles[0] === alleles[1]
      ? { claim, note: `${said} is two copies already.` }
      : { against: `${said} is two different genes: there is no super of it.` };
  }
  if (saysHet(before)) return { against: `${said} is two copies: nothing is het ${said}.` };
  return { claim };
}

function superClaim(said: string, { allele, locus }: AlleleName, before: Before): NameClaim {
  if (before.words.has('het')) return { against: `${said} is het or has two copies, not both.` };
  const { chance } = before;
  if (chance && compare(chance, ONE) < 0)
    return { claim: { kind: 'may have two', allele, chance } };
  const claim = { kind: 'pair', alleles: [allele, allele] } as const;
  const { mode } = alleleAt(locus, allele);
  if (mode === 'recessive') return { claim, note: `Two copies of a recessive: read as ${said}.` };
  if (mode === 'incomplete dominant') return { claim };
  return { claim, note: `Two copies of ${said} look like one: only breeding tells.` };
}

function hetClaim(said: string, { allele, locus }: AlleleName, before: Before): NameClaim {
  const { words } = before;
  const unsaid = words.has('possible') && !before.chance;
  const chance = before.chance ?? (unsaid ? HALF : ONE);
  const inName = said.toLowerCase().startsWith('het ');
  const visible = alleleAt(locus, allele).mode !== 'recessive' && !inName;
  const notes = [
    ...(unsaid ? ['No percentage is given: 50 % is assumed.'] : []),
    ...(visible ? [`One copy of ${said} shows: "het" is a word for recessives.`] : []),
    ...(words.size === 0 && !inName && !visible ? [`Read as a chance to be het ${said}.`] : []),
  ];
  const named = words.has('double') ? 1 : words.has('triple') ? 2 : 'phrase';
  const left = before.lists ? 'list' : named;
  return {
    claim: carried(allele, chance),
    het: { chance, left },
    ...(notes.length > 0 ? { note: notes.join(' ') } : {}),
  };
}

const carried = (allele: number, chance: Fraction): Claim =>
  compare(chance, ONE) === 0 ? { kind: 'carries', allele } : { kind: 'may carry', allele, chance };
