import fc from 'fast-check';
import { expect, test } from 'vitest';
import { animalView } from '../../../src/domain/views/animal-view.ts';
import { eventWords } from '../../../src/domain/views/words.ts';
import { anyEventOf, anyLog, eventTypes, runs } from '../../arbitrary.ts';
import { anEvent, aPicture, instead, nightsAgo } from '../../make.ts';
import { animalId } from '../../make-ids.ts';

test.each(eventTypes)('there are words for %s', (type) => {
  fc.assert(
    fc.property(anyEventOf(type), (event) => {
      const words = eventWords(event, () => 'Sorrel');
      expect(words.trim()).not.toBe('');
      expect(words).not.toMatch(/undefined|NaN|\[object/);
    }),
    runs(30),
  );
});

test('an animal’s page can be drawn after any records, with every one of them in its history', () => {
  fc.assert(
    fc.property(anyLog, (log) => {
      const picture = aPicture(log);
      for (const { id } of picture.animals()) {
        expect(animalView(id, picture)?.history).toHaveLength(picture.ledger.history(id).length);
      }
    }),
    runs(100),
  );
});

test('struck and replaced records stay in the history with the reason, and out of the curve', () => {
  const first = anEvent('weighed', { massG: 1_640, at: nightsAgo(3) });
  const mended = instead(first, anEvent('weighed', { massG: 1_460, at: nightsAgo(3) }));
  const other = anEvent('weighed', { massG: 900, at: nightsAgo(2) });
  const struck = anEvent('struck', { target: other.id, reason: 'wrong snake' });
  const view = animalView(animalId(1), aPicture([first, mended, other, struck]));
  expect(view?.masses.map(({ massG }) => massG)).toEqual([1_460]);
  const reasons = new Map(view?.history.map((line) => [line.id, line.struck]));
  expect(reasons.get(first.id)).toBe('mistyped');
  expect(reasons.get(other.id)).toBe('wrong snake');
  expect(reasons.get(mended.id)).toBeUndefined();
});

test('a meal left overnight counts as what became of it', () => {
  const left = anEvent('meal-offered', { outcome: 'left', at: nightsAgo(1) });
  const settled = anEvent('meal-settled', { offer: left.id });
  const ate = (...more: (typeof settled)[]) =>
    animalView(animalId(1), aPicture([left, ...more]))?.meals.map((meal) => meal.ate);
  expect(ate()).toEqual([false]);
  expect(ate(settled)).toEqual([true]);
});
