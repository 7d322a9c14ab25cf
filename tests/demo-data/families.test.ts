import { describe, expect, it } from 'vitest';
import { demoScenario } from '../../demo-data/scenario.ts';
import { simulate } from '../../demo-data/simulate.ts';
import type { Day } from '../../src/domain/core/calendar.ts';
import { genesBook } from '../../src/domain/genes-book/genes-book.ts';
import { aPicture } from '../make.ts';

const autumn = '2026-11-24' as Day;

describe('the families of the demo', () => {
  it.each([7, 8, 9])('hold together: seed %i', (seed) => {
    const demo = simulate({ ...demoScenario(autumn, 60), seed });
    const book = genesBook(aPicture(demo));
    expect(book.leftOut).toEqual([]);
    expect(book.family.faults).toEqual([]);
    expect(book.loci.length).toBeGreaterThan(5);
    for (const locus of book.loci) expect(book.posteriors(locus).troubles).toEqual([]);
  });

  it('tell more than was known at hatching', () => {
    const book = genesBook(aPicture(simulate(demoScenario(autumn, 60))));
    const moved = book.family.pedigree.members.filter(({ id }) => {
      const now = book.posteriors('clown').of.get(id)?.female ?? [];
      const then = book.atHatching(id as Parameters<typeof book.atHatching>[0], 'clown')?.female;
      return now.some((chance, genotype) => Math.abs(chance - (then?.[genotype] ?? 0)) > 0.05);
    });
    expect(moved.length).toBeGreaterThan(0);
  });
});
