import { describe, expect, it } from 'vitest';
import { geneWhyView } from '../../../src/domain/views/gene-why-view.ts';
import { genesView } from '../../../src/domain/views/genes-view.ts';
import { anEvent, aPicture } from '../../make.ts';
import { animalId } from '../../make-ids.ts';
import { bredFrom, counted, snake } from '../genes-book/make-book.ts';

const clown = { locus: 'clown', allele: 'clown' } as const;

describe('what a snake carries', () => {
  const picture = aPicture([
    snake(1, 'female', '66% het Clown, Pastel'),
    snake(2, 'male', 'Clown'),
    counted(1, 1, [2], { Normal: 2 }),
  ]);

  it('is told by the records, beside what was stated', () => {
    const lines = genesView(animalId(1), picture)?.lines ?? [];
    expect(lines.map(({ name, now, before }) => [name, now, before])).toEqual([
      ['Pastel', 'one copy', 'one copy'],
      // 2/3 × 1/4 to 1/3 is 1 in 3.
      ['Clown', '33 %', '66 % (2/3)'],
    ]);
    expect(lines.map(({ hasMoved, isOpen }) => [hasMoved, isOpen])).toEqual([
      [false, false],
      [true, true],
    ]);
  });

  it('opens to the records that moved it, and what it would be without each', () => {
    const why = geneWhyView({ animal: animalId(1), ...clown }, picture);
    expect(why?.start).toBe('66 % (2/3)');
    expect(why?.movers).toHaveLength(1);
    expect(why?.movers[0]).toMatchObject({
      says: 'young counted: 2 Normal with snake 2',
      without: '67 %',
      of: { id: animalId(1) },
    });
    expect(why?.now).toBe('33 %');
  });

  it('says what would prove it: with which mate, and how many young', () => {
    const why = geneWhyView({ animal: animalId(1), ...clown }, picture);
    const [own, any] = why?.proof?.lines ?? [];
    expect(own?.mate?.id).toBe(animalId(2));
    expect(any?.mate).toBeUndefined();
    // 1/3 to 2/3, halved by each: below 1 to 19 after four, as (1/2)^4 / 2 = 1/32.
    expect(own?.says.join(' ')).toContain(
      '4 more hatched young, none of them Clown, bring the chance under 5 %.',
    );
    expect(own?.says.join(' ')).toContain('50 % of the young show it: about 2 hatched young');
  });

  it('asks for the sex first, and proves nothing that shows by itself', () => {
    const unsexed = aPicture([
      anEvent('arrived', {
        animal: animalId(1),
        name: 'x',
        sex: 'unknown',
        traits: '66% het Clown',
      }),
    ]);
    const why = geneWhyView({ animal: animalId(1), ...clown }, unsexed);
    expect(why?.proof).toEqual({
      lines: [],
      because: 'It must be sexed before young can prove it.',
    });
    const pastel = { animal: animalId(1), locus: 'pastel', allele: 'pastel' };
    expect(geneWhyView(pastel, picture)?.proof).toBeUndefined();
  });
});

describe('records that cannot all be so', () => {
  it('are named with the snake each stands on', () => {
    const view = genesView(
      animalId(3),
      aPicture([
        snake(1, 'female', 'Clown'),
        snake(2, 'male', 'Clown'),
        snake(3, 'female', 'Normal'),
        bredFrom(3, 1, 2),
      ]),
    );
    const [trouble] = view?.troubles ?? [];
    expect(trouble?.gene).toContain('Clown');
    expect(trouble?.records.map(({ of }) => of.id)).toEqual([
      animalId(3),
      animalId(1),
      animalId(2),
    ]);
  });

  it('and words that are not known are told as such, with the nearest', () => {
    const view = genesView(animalId(1), aPicture([snake(1, 'female', 'Clonw, Pastel')]));
    expect(view?.reading?.unknown.map(({ words }) => words)).toEqual(['Clonw']);
    expect(view?.lines.map(({ name }) => name)).toEqual(['Pastel']);
  });
});
