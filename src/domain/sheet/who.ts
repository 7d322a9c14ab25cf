import { editDistance } from '../genes/nearest-names.ts';
import type { Picture } from '../picture/picture.ts';
import type { Animal } from '../state/animal.ts';
import type { RowRead } from './item.ts';

/** Rows of one snake. */
export interface Whose {
  /** As it stands in the file the first time. */
  readonly name: string;
  /** Undefined: new here. */
  readonly known?: Animal | undefined;
  readonly rows: readonly RowRead[];
}

/** Rows that say of nobody known whose they are. */
export interface Nobodys {
  readonly line: number;
  readonly why: string;
}

/** A new name that looks like a slip of another one. */
export interface NameAsk {
  /** `name:sorel` */
  readonly key: string;
  readonly name: string;
  readonly like: string;
  readonly line: number;
}

export interface WhoIsWho {
  readonly snakes: readonly Whose[];
  readonly nobodys: readonly Nobodys[];
  readonly asks: readonly NameAsk[];
}

/** Names are the same whatever their case and spaces. */
export const nameKey = (name: string): string => name.trim().toLowerCase().replaceAll(/\s+/g, ' ');

const SHORTEST_TO_SLIP = 5;

/**
 * Whose each row is: by its name, else by whoever lives in the tub it names.
 *
 * `answers` says of names that look like slips: `instead`, the other one was meant; `leave`, it is
 * another snake. Until one is said, their rows are left out.
 */
export function whoIsWho(
  rows: readonly RowRead[],
  picture: Picture,
  answers: Readonly<Record<string, string>>,
): WhoIsWho {
  const byName = new Map<string, Animal[]>();
  for (const animal of picture.animals()) {
    const key = nameKey(animal.name);
    byName.set(key, [...(byName.get(key) ?? []), animal]);
  }
  const tubs = new Map(picture.walk().map((tub) => [picture.position(tub.id) ?? '', tub.id]));
  const groups = new Map<string, { name: string; known: Animal | undefined; rows: RowRead[] }>();
  const nobodys: Nobodys[] = [];
  for (const row of rows) {
    const found = row.name === '' ? livingIn(row) : named(row);
    if ('why' in found) {
      // A row that says nothing at all, such as one of sums below the table, is no loss.
      if (row.items.length > 0 || row.name !== '') nobodys.push({ line: row.line, why: found.why });
      continue;
    }
    const key = found.known?.id ?? nameKey(found.name);
    const group = groups.get(key) ?? { ...found, rows: [] };
    group.rows.push(row);
    groups.set(key, group);
  }
  return { nobodys, ...withSlips([...groups.values()], answers) };

  type Found = { readonly name: string; readonly known: Animal | undefined };

  function named({ name }: RowRead): Found | { readonly why: string } {
    const all = byName.get(nameKey(name)) ?? [];
    const living = all.filter(({ gone }) => !gone);
    const [only, second] = living.length > 0 ? living : all;
    return second ? { why: `two snakes are called ${name}` } : { name, known: only };
  }

  function livingIn({ facts }: RowRead): Found | { readonly why: string } {
    const { position } = facts;
    if (position === undefined) return { why: 'says no name' };
    const tub = tubs.get(position);
    const [only, second] = tub === undefined ? [] : picture.ownersOf(tub);
    return only && !second
      ? { name: only.name, known: only }
      : { why: `says no name, and ${second ? 'two live' : 'nobody lives'} in ${position}` };
  }

  function withSlips(
    snakes: readonly Whose[],
    said: typeof answers,
  ): { readonly snakes: readonly Whose[]; readonly asks: readonly NameAsk[] } {
    const asks: NameAsk[] = [];
    const merged = new Map<Whose, RowRead[]>();
    const apart = new Map<string, Whose>();
    const others = snakes.filter((each) => each.known ?? hasFacts(each));
    const kept = snakes.filter((each) => {
      const like =
        each.known || hasFacts(each) ? undefined : others.find((other) => isSlip(each, other));
      const known = like
        ? like.name
        : each.known || hasFacts(each)
          ? undefined
          : nearKnown(each.name);
      if (known === undefined) return true;
      const key = `name:${nameKey(each.name)}`;
      asks.push({ key, name: each.name, like: known, line: each.rows[0]?.line ?? 0 });
      if (said[key] !== 'instead') return said[key] === 'leave';
      const target = like ?? fromElsewhere(known);
      merged.set(target, [...(merged.get(target) ?? []), ...each.rows]);
      return false;
    });
    return {
      asks,
      snakes: [...kept, ...apart.values()].map((each) => ({
        ...each,
        rows: [...each.rows, ...(merged.get(each) ?? [])].toSorted((a, b) => a.line - b.line),
      })),
    };

    /** One known here that the file names in slips alone. */
    function fromElsewhere(name: string): Whose {
      const inFile = snakes.find((other) => nameKey(other.name) === nameKey(name));
      const whose = inFile ??
        apart.get(name) ?? { name, known: byName.get(nameKey(name))?.[0], rows: [] };
      if (!inFile) apart.set(name, whose);
      return whose;
    }
  }

  function nearKnown(name: string): string | undefined {
    return picture.living().find((animal) => isNear(name, animal.name))?.name;
  }
}

/** A snake that the file itself describes, and not only names in passing. */
const hasFacts = ({ rows }: Whose): boolean =>
  rows.some(({ facts }) => facts.sex ?? facts.hatchedDay ?? facts.traits ?? facts.position);

const isSlip = (one: Whose, other: Whose): boolean => one !== other && isNear(one.name, other.name);

/** One letter off. Numbers differ from each other on purpose. */
function isNear(one: string, other: string): boolean {
  const [a, b] = [nameKey(one), nameKey(other)];
  if (a === b || Math.min(a.length, b.length) < SHORTEST_TO_SLIP) return false;
  if (a.replaceAll(/\D/g, '') !== b.replaceAll(/\D/g, '')) return false;
  return Math.abs(a.length - b.length) <= 1 && editDistance(a, b) === 1;
}
