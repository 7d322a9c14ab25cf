import type { AnimalId } from '../core/ids.ts';
import type { Catalogue } from '../genes/catalogue.ts';
import type { GeneSex, Locus } from '../genes/locus.ts';
import { alleleAt } from '../genes/look.ts';
import type { Target, Want } from '../genes/target.ts';
import { readStatements } from '../genes/trait-grammar.ts';
import type { Statement } from '../genes/trait-statement.ts';

/** What is wanted of a pairing. */
export type Goal =
  /** Young that carry or show something. */
  | { readonly kind: 'young'; readonly target: Target; readonly wants: readonly string[] }
  /** To learn whether an animal carries an allele. */
  | {
      readonly kind: 'prove';
      readonly animal: AnimalId;
      readonly locus: Locus;
      /** By its id. */
      readonly allele: string;
    };

export type GoalReading =
  { readonly ok: true; readonly goal: Goal } | { readonly ok: false; readonly problem: string };

/** Whom a goal may name, and the hidden genes each may carry by the records, but need not. */
export interface GoalReader {
  readonly catalogue: Catalogue;
  readonly animals: readonly { readonly id: AnimalId; readonly name: string }[];
  readonly mayCarry: (
    animal: AnimalId,
  ) => readonly { readonly locus: Locus; readonly allele: string }[];
}

const bad = (problem: string): GoalReading => ({ ok: false, problem });

/** Reads "visual clown pied", "female het clown" or "prove the 66 % het of Sorrel". Never throws. */
export function readGoal(text: string, reader: GoalReader): GoalReading {
  const plain = text.trim().replace(/\s+/g, ' ').slice(0, 200);
  if (plain === '')
    return bad('Write what you want: “visual clown pied”, or “prove the het of …”.');
  const proof = /^prove (.*)$/i.exec(plain)?.[1];
  return proof === undefined ? readYoung(plain, reader) : readProof(proof, reader);
}

function readYoung(text: string, { catalogue }: GoalReader): GoalReading {
  const { sex, rest } = sexIn(text);
  const read = statementsIn(rest, catalogue);
  if (!read.ok) return read;
  const wants = read.statements.flatMap(wantsOf);
  if (wants.length === 0) return bad('Name a trait that the young shall show or carry.');
  const target: Target = {
    wants: wants.map(([want]) => want),
    ...(sex === undefined ? {} : { sex }),
  };
  return { ok: true, goal: { kind: 'young', target, wants: wants.map(([, words]) => words) } };
}

/** "male maker" is a word for a gene and asks for no male. */
function sexIn(text: string): { readonly sex?: GeneSex; readonly rest: string } {
  const word = /\b(female|male)s?\b(?! maker)/i;
  const found = word.exec(text)?.[1]?.toLowerCase();
  const rest = text.replace(word, ' ').replace(/^\s*an? /i, '');
  return found === 'female' || found === 'male' ? { sex: found, rest } : { rest };
}

type Read =
  | { readonly ok: true; readonly statements: readonly Statement[] }
  | { readonly ok: false; readonly problem: string };

function statementsIn(text: string, catalogue: Catalogue): Read {
  const { statements, contradictions, unknown } = readStatements(text, catalogue);
  const [word] = unknown;
  if (word) {
    const nearest = word.nearest.length > 0 ? ` Near it: ${word.nearest.join(', ')}.` : '';
    return {
      ok: false,
      problem: `“${word.words}” is not known. ${word.message ?? ''}${nearest}`.trim(),
    };
  }
  const [against] = contradictions;
  if (against) return { ok: false, problem: against.message };
  return { ok: true, statements };
}

/** A want and its words. One copy of what shows with one is enough; what is hidden must be there twice. */
function wantsOf({ locus, claim }: Statement): readonly (readonly [Want, string])[] {
  const want = (index: number, copies: 1 | 2): readonly [Want, string] => {
    const { id, name } = alleleAt(locus, index);
    const words = copies === 2 ? `${name}: two copies` : `${name}: at least one copy`;
    return [{ locus: locus.id, carries: id, copies }, words];
  };
  switch (claim.kind) {
    case 'shows':
      return [want(claim.allele, alleleAt(locus, claim.allele).mode === 'recessive' ? 2 : 1)];
    case 'carries':
    case 'may carry':
      return [want(claim.allele, 1)];
    case 'may have two':
      return [want(claim.allele, 2)];
    case 'pair': {
      const [a, b] = claim.alleles;
      const named = [a, b].filter((index) => alleleAt(locus, index).id !== '+');
      return a === b ? [want(a, 2)] : named.map((index) => want(index, 1));
    }
    case 'on Y':
      return [];
  }
}

function readProof(text: string, { catalogue, animals, mayCarry }: GoalReader): GoalReading {
  const found = namedIn(text, animals);
  if (found.length === 0)
    return bad('Say whose het it is, by the name on record: “prove the het of …”.');
  if (found.length > 1) return bad(`More than one snake is called ${found[0]?.name ?? ''}.`);
  const [{ id: animal, name } = { id: undefined, name: '' }] = found;
  if (animal === undefined) return bad('Say whose het it is.');
  const open = mayCarry(animal);
  const rest = withoutName(text, name);
  const gene = rest === '' ? { ok: true as const, statements: [] } : statementsIn(rest, catalogue);
  if (!gene.ok) return gene;
  const [statement] = gene.statements;
  if (statement) {
    const { locus, claim } = statement;
    const index = 'allele' in claim ? claim.allele : undefined;
    if (index === undefined) return bad('Name one gene that is hidden in a single copy.');
    const { id: allele, mode, name: trait } = alleleAt(locus, index);
    if (mode !== 'recessive') return bad(`${trait} shows with one copy: look at ${name}.`);
    return { ok: true, goal: { kind: 'prove', animal, locus, allele } };
  }
  const [only] = open;
  if (!only) return bad(`By the records ${name} has no het that is open.`);
  if (open.length > 1) {
    const names = open.map(({ locus }) => locus.name).join(', ');
    return bad(`${name} may carry more than one: ${names}. Name the one to prove.`);
  }
  return { ok: true, goal: { kind: 'prove', animal, ...only } };
}

/** All that bear the longest name found in the text as whole words; what follows the last "of" first. */
function namedIn(text: string, animals: GoalReader['animals']): GoalReader['animals'] {
  const after = / of (.+)$/i.exec(` ${text}`)?.[1]?.toLowerCase();
  const exact = animals.filter(({ name }) => name !== '' && name.toLowerCase() === after);
  if (exact.length > 0) return exact;
  const padded = ` ${text.toLowerCase()} `;
  const held = animals.filter(
    ({ name }) => name !== '' && padded.includes(` ${name.toLowerCase()} `),
  );
  const longest = Math.max(...held.map(({ name }) => name.length));
  return held.filter(({ name }) => name.length === longest);
}

/** What is left that can name a gene: "the 66 % het of Sorrel" leaves nothing. */
function withoutName(text: string, name: string): string {
  const at = text.toLowerCase().lastIndexOf(name.toLowerCase());
  const rest = `${text.slice(0, at)} ${text.slice(at + name.length)}`;
  return rest
    .replace(/\b(the|of|that|is|possible|poss|het|hets)\b|['’]s\b|\d+(\.\d+)? ?%/gi, ' ')
    .replace(/\s+/g, ' ')
    .trim();
}
