import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chanceFrom } from '../../../demo-data/random.ts';
import type { RackEvent } from '../../../src/domain/events/event.ts';
import { genesBook } from '../../../src/domain/genes-book/genes-book.ts';
import { createPicture } from '../../../src/domain/picture/picture.ts';
import { rules } from '../../../src/domain/rules/all.ts';
import { createLedger } from '../../../src/domain/state/ledger.ts';
import { anEvent, clockAt, nightsAgo, TONIGHT } from '../../make.ts';
import { animalId, clutchId } from '../../make-ids.ts';
import { bookOf, bredFrom, copies, counted, snake } from './make-book.ts';

// Expected chances are worked out by hand from Mendel's rules and Bayes' theorem, beside each.

describe('what is stated', () => {
  it('is the prior of a bought one: 66 % is two in three, and 50 % a half', () => {
    const book = bookOf([snake(1, 'female', '66% het Clown'), snake(2, 'male', '50% het Clown')]);
    expect(copies(book, 1, 'clown').any).toBeCloseTo(2 / 3, 12);
    expect(copies(book, 2, 'clown').any).toBeCloseTo(1 / 2, 12);
  });

  it('is not counted again of one whose parents are known: its chance comes from them', () => {
    const family = (traits: string) =>
      bookOf([
        snake(1, 'female', 'het Clown'),
        snake(2, 'male', 'het Clown'),
        snake(3, 'female', traits),
        bredFrom(3, 1, 2),
      ]);
    // Of 1 : 2 : 1, a normal-looking one is a carrier in 2 of 3, whatever the seller's percentage.
    for (const traits of ['Normal', '66% het Clown', '50% het Clown']) {
      expect(copies(family(traits), 3, 'clown').any).toBeCloseTo(2 / 3, 12);
    }
    expect(copies(family('Clown'), 3, 'clown').two).toBeCloseTo(1, 12);
  });

  it('with words that are not known denies nothing', () => {
    const family = (traits: string) =>
      bookOf([
        snake(1, 'female', 'het Clown'),
        snake(2, 'male', 'het Clown'),
        snake(3, 'female', traits),
        bredFrom(3, 1, 2),
      ]);
    expect(copies(family('Hoarfern'), 3, 'clown').two).toBeCloseTo(1 / 4, 12);
    expect(copies(family('Pastel'), 3, 'clown').two).toBe(0);
    expect(copies(family(''), 3, 'clown').two).toBeCloseTo(1 / 4, 12);
  });

  it('of one with a single parent known counts as a whole', () => {
    const book = bookOf([snake(1, 'female', 'Clown'), snake(2, 'male', 'Normal'), bredFrom(2, 1)]);
    expect(copies(book, 2, 'clown')).toEqual({ any: 1, two: 0 });
  });

  it('of a gene made by the keeper is read as any other; one that cannot be is left out by name', () => {
    const made = anEvent('gene-made', {
      locus: 'own-marsh',
      allele: 'own-marsh',
      name: 'Marsh',
      aliases: [],
      mode: 'recessive',
    });
    const book = bookOf([made, snake(1, 'female', '66% het Marsh')]);
    expect(copies(book, 1, 'own-marsh').any).toBeCloseTo(2 / 3, 12);
    const clash = bookOf([{ ...made, name: 'Clown' }, snake(1, 'female', 'het Clown')]);
    expect(clash.leftOut.map(({ name }) => name)).toEqual(['Clown']);
    expect(copies(clash, 1, 'clown').any).toBe(1);
  });
});

describe('what is seen', () => {
  it('moves a carrier’s chance as a test breeding does', () => {
    // Young 1991 ch. 3 in kind: 2/3 before, (1/2)^n for a carrier with a visual and none showing.
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 20 }), (young) => {
        const book = bookOf([
          snake(1, 'female', '66% het Clown'),
          snake(2, 'male', 'Clown'),
          counted(1, 1, [2], { Normal: young }),
        ]);
        const carrier = (2 / 3) * 0.5 ** young;
        expect(copies(book, 1, 'clown').any).toBeCloseTo(carrier / (carrier + 1 / 3), 9);
      }),
    );
  });

  it('proves one by a single young that shows', () => {
    const book = bookOf([
      snake(1, 'female', '66% het Clown'),
      snake(2, 'male', '50% het Clown'),
      counted(1, 1, [2], { Normal: 4, Clown: 1 }),
    ]);
    expect([copies(book, 1, 'clown').any, copies(book, 2, 'clown').any]).toEqual([1, 1]);
    expect(book.atHatching(animalId(1), 'clown')?.female[1]).toBeCloseTo(2 / 3, 12);
  });

  it('of a laboratory counts by how often that errs', () => {
    const rate = fc.double({ min: 0.5, max: 1, noNaN: true });
    fc.assert(
      fc.property(rate, rate, fc.boolean(), (sensitivity, specificity, isFound) => {
        const book = bookOf([
          snake(1, 'female', '66% het Clown'),
          anEvent('gene-tested', {
            animal: animalId(1),
            locus: 'clown',
            allele: 'clown',
            result: isFound ? 'found' : 'not found',
            sensitivity,
            specificity,
          }),
        ]);
        // Bayes: prior odds of 2 : 1 times the ratio of the likelihoods.
        const carrier = 2 * (isFound ? sensitivity : 1 - sensitivity);
        const other = isFound ? 1 - specificity : specificity;
        fc.pre(carrier + other > 0);
        expect(copies(book, 1, 'clown').any).toBeCloseTo(carrier / (carrier + other), 5);
      }),
    );
  });

  it('of one sibling tells the father of its whole clutch, and of no other year’s', () => {
    const family = (year: string) =>
      bookOf([
        snake(1, 'female', 'Clown'),
        snake(2, 'male', 'Clown'),
        snake(3, 'male', 'Normal'),
        snake(4, 'female', 'Clown', '2025-07-01'),
        snake(5, 'female', '', `${year}-07-02`),
        bredFrom(4, 1, 2, 3),
        bredFrom(5, 1, 2, 3),
      ]);
    // A clown has a clown for a father; the two males were as likely before.
    expect(copies(family('2025'), 5, 'clown').two).toBeCloseTo(1, 6);
    expect(copies(family('2024'), 5, 'clown').two).toBeCloseTo(1 / 2, 6);
  });

  it('goes by the clutch it is on record to have hatched from, before it goes by the year', () => {
    const from = (n: number, clutch: number) =>
      anEvent('hatched', { animal: animalId(n), clutch: clutchId(clutch), defects: [] });
    const family = (clutchOfFive: number) =>
      bookOf([
        snake(1, 'female', 'Clown'),
        snake(2, 'male', 'Clown'),
        snake(3, 'male', 'Normal'),
        snake(4, 'female', 'Clown', '2025-12-30'),
        snake(5, 'female', '', clutchOfFive === 1 ? '2026-01-02' : '2025-12-29'),
        bredFrom(4, 1, 2, 3),
        bredFrom(5, 1, 2, 3),
        from(4, 1),
        from(5, clutchOfFive),
      ]);
    // As above: the same father within a clutch, either of the two in another.
    expect(copies(family(1), 5, 'clown').two).toBeCloseTo(1, 6);
    expect(copies(family(2), 5, 'clown').two).toBeCloseTo(1 / 2, 6);
  });

  it('in a named young is not asked of the count again', () => {
    const book = bookOf([
      snake(1, 'female', '66% het Clown'),
      snake(2, 'male', 'Clown'),
      snake(3, 'male', 'Normal', '2026-10-01'),
      bredFrom(3, 1, 2),
      counted(1, 1, [2], { Normal: 2 }),
    ]);
    expect(book.family.pedigree.clutches).toHaveLength(1);
    // Three in all: 2/3 × 1/8 to 1/3.
    expect(copies(book, 1, 'clown').any).toBeCloseTo(1 / 5, 12);
  });
});

describe('what cannot be', () => {
  it('is named with its records, and takes nothing from the rest', () => {
    const book = bookOf([
      snake(1, 'female', 'Clown'),
      snake(2, 'male', 'Clown'),
      snake(3, 'female', 'Normal'),
      bredFrom(3, 1, 2),
      snake(4, 'female', '66% het Clown'),
    ]);
    const [trouble, more] = book.posteriors('clown').troubles;
    expect(more).toBeUndefined();
    expect(trouble?.kind).toBe('contradiction');
    expect(trouble?.kind === 'contradiction' && trouble.findings).toEqual([
      `look of ${animalId(3)}`,
    ]);
    expect(book.chances(animalId(3), 'clown')).toBeUndefined();
    expect(copies(book, 4, 'clown').any).toBeCloseTo(2 / 3, 12);
  });

  it('as parents is cut and told, a ring and a dam that is a male', () => {
    const book = bookOf([
      snake(1, 'female', 'het Clown'),
      snake(2, 'male', 'het Clown'),
      bredFrom(1, 3, 2),
      snake(3, 'female', 'Normal'),
      bredFrom(3, 1, 2),
      snake(4, 'female', 'Normal'),
      bredFrom(4, 2, 2),
    ]);
    expect(book.family.faults.map(({ code }) => code).toSorted()).toContain('ring');
    expect(book.family.faults.length).toBeGreaterThanOrEqual(2);
    expect(copies(book, 2, 'clown').any).toBe(1);
  });
});

describe('the book', () => {
  const started = (events: Parameters<typeof bookOf>[0]) => {
    const ledger = createLedger();
    ledger.add(events);
    const picture = createPicture(ledger, clockAt(TONIGHT), rules);
    return { ledger, picture };
  };

  it('stays for a meal and a weight, and is written anew for a test', () => {
    const events = [snake(1, 'female', '66% het Clown')];
    const { ledger, picture } = started(events);
    const first = genesBook(picture);
    const meal = anEvent('weighed', { animal: animalId(1), massG: 1_500, at: nightsAgo(1) });
    ledger.add([meal]);
    picture.update([animalId(1)], clockAt(TONIGHT));
    expect(genesBook(picture)).toBe(first);
    const test = anEvent('gene-tested', { animal: animalId(1), result: 'not found' });
    ledger.add([test]);
    picture.update([animalId(1)], clockAt(TONIGHT));
    expect(genesBook(picture)).not.toBe(first);
    expect(copies(genesBook(picture), 1, 'clown').any).toBeLessThan(0.1);
  });

  /** 300 snakes by chance: 60 founders, their young in clutches of six, and 60 of the next generation. */
  const large = (founder: (n: number) => string, young: string) => {
    const chance = chanceFrom(5);
    const events: RackEvent[] = [];
    let [dam, sire] = [0, 0];
    for (let n = 0; n < 300; n += 1) {
      events.push(snake(n + 1, n % 4 === 0 ? 'male' : 'female', n < 60 ? founder(n) : young));
      if (n < 60) continue;
      if (n % 6 === 0) {
        const first = n < 240 ? 0 : 60;
        sire = first + 4 * chance.whole(0, 14);
        dam = first + 4 * chance.whole(0, 14) + chance.whole(1, 3);
      }
      events.push(bredFrom(n + 1, dam + 1, sire + 1));
    }
    return bookOf(events);
  };

  it.each([
    ['one in eight may carry, and looks are stated', 8, 'Normal'],
    ['every other one may carry, and nothing is stated of the young', 2, ''],
  ])('answers for all of a collection of 300 in which %s', (_, of, young) => {
    const book = large((n) => (n % of === 0 ? '66% het Clown' : 'Normal'), young);
    const posteriors = book.posteriors('clown');
    expect(posteriors.troubles).toEqual([]);
    expect(posteriors.of.size).toBe(300);
  });
});
