import type { Catalogue } from './catalogue.ts';
import { compare, HALF, isChance } from './fraction.ts';
import { alleleIndex } from './genotype.ts';
import type { Locus } from './locus.ts';
import { dictionaryOf, namesOf } from './trait-dictionary.ts';
import { isTaken } from './trait-parts.ts';
import { spoken } from './trait-text.ts';

/** What is wrong with a catalogue, and at which locus, allele, pair or caution. */
export interface CatalogueFault {
  readonly where: string;
  readonly message: string;
}

/** Everything that would make the engine misread or miscount; empty for a sound catalogue. */
export function catalogueFaults(catalogue: Catalogue): readonly CatalogueFault[] {
  const { loci } = catalogue;
  return [
    ...repeated(
      loci.map(({ id }) => id),
      'Two loci have this id.',
    ),
    ...repeated(
      catalogue.cautions.map(({ id }) => id),
      'Two cautions have this id.',
    ),
    ...loci.flatMap(locusFaults),
    ...loci
      .filter(({ linkage }) => linkage.kind === 'sex-linked')
      .slice(1)
      .map(({ id }) => ({
        where: id,
        message: 'A second sex-linked locus would be linked to the first, which is not reckoned.',
      })),
    ...nameFaults(catalogue),
    ...cautionFaults(catalogue),
  ];
}

const ID = /^[a-z0-9][a-z0-9-]{0,39}$/u;

function locusFaults({ id, alleles, pairs, linkage }: Locus): readonly CatalogueFault[] {
  const faults: CatalogueFault[] = [];
  const fault = (where: string, message: string) => faults.push({ where, message });
  const isKnown = (allele: string) => alleles.slice(1).some((each) => each.id === allele);
  if (!ID.test(id)) fault(id, 'An id is small letters, digits and hyphens, 40 at most.');
  if (alleles[0]?.id !== '+') fault(id, 'The first allele is the wild type, "+".');
  if (alleles.length < 2) fault(id, 'A locus has a mutation besides the wild type.');
  for (const allele of alleles.slice(1)) {
    if (!ID.test(allele.id))
      fault(`${id}: ${allele.id}`, 'An id is small letters, digits and hyphens.');
  }
  faults.push(
    ...repeated(
      alleles.map((each) => `${id}: ${each.id}`),
      'Two alleles of the locus have this id.',
    ),
    ...repeated(
      pairs.map((each) => `${id}: ${each.alleles.toSorted().join('/')}`),
      'The pair is there twice.',
    ),
  );
  for (const pair of pairs) {
    const where = `${id}: ${pair.alleles.join('/')}`;
    if (!pair.alleles.every(isKnown)) fault(where, 'The pair names an allele the locus has not.');
    const share = pair.survival?.share;
    if (share && !isChance(share)) {
      fault(where, 'A share that survives lies between 0 and 1.');
    }
  }
  if (linkage.kind === 'sex-linked') {
    const r = linkage.recombination;
    if (!isChance(r) || compare(r, HALF) > 0) {
      fault(id, 'A recombination rate lies between 0 and 1/2.');
    }
  }
  return faults;
}

/** Names are what a keeper's text is read by: each must say one thing. */
function nameFaults(catalogue: Catalogue): readonly CatalogueFault[] {
  const { loci, unclear } = catalogue;
  const names = loci.flatMap(namesOf).map(({ name }) => name);
  const sounds = [...names, ...unclear.flatMap((each) => each.names)].map(spoken);
  const unreadable = names
    .filter((name) => spoken(name) === '' || name.length > 40 || isTaken(spoken(name)))
    .map((where) => ({ where, message: 'The name cannot be read, or means something else.' }));
  return [...repeated(sounds, 'Two things have this name.'), ...unreadable, ...shadowed(catalogue)];
}

/**
 * "super Stripe" must not be read as the Superstripe that is also written so, nor "het Scaleless Head"
 * as a het Scaleless that has a head.
 */
function shadowed(catalogue: Catalogue): readonly CatalogueFault[] {
  const { meanings } = dictionaryOf(catalogue);
  return catalogue.loci.flatMap((locus) =>
    locus.alleles.slice(1).flatMap(({ name }, n) =>
      ['super', 'het', 'visual']
        .filter((word) => {
          const words = spoken(`${word} ${name}`).split(' ');
          const sounds = words.map((_, last) => words.slice(0, last + 1).join(' '));
          const longest = sounds.findLast((sound) => meanings.has(sound));
          if (longest === undefined) return false;
          const read = meanings.get(longest);
          const isItself = read?.kind === 'allele' && read.locus === locus && read.allele === n + 1;
          return !isItself || longest !== sounds.at(-1);
        })
        .map((word) => ({ where: name, message: `"${word} ${name}" would be misread.` })),
    ),
  );
}

function cautionFaults({ loci, cautions }: Catalogue): readonly CatalogueFault[] {
  return cautions.flatMap(({ id, wants }) => {
    const lost = wants.filter((want) => {
      const locus = loci.find((each) => each.id === want.locus);
      return !locus || ('carries' in want && alleleIndex(locus, want.carries) < 1);
    });
    const empty = wants.length === 0 ? [{ where: id, message: 'It applies to nothing.' }] : [];
    return [...empty, ...lost.map(() => ({ where: id, message: 'It names a gene there is not.' }))];
  });
}

function repeated(all: readonly string[], message: string): readonly CatalogueFault[] {
  const twice = new Set(all.filter((each, n) => all.indexOf(each) !== n));
  return [...twice].map((where) => ({ where, message }));
}
