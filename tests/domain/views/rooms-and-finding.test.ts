import { describe, expect, test } from 'vitest';
import { captureAnimal, captureTub, findByCode } from '../../../src/domain/views/capture-view.ts';
import { findView } from '../../../src/domain/views/find-view.ts';
import { labelsView } from '../../../src/domain/views/labels-view.ts';
import { racksView, rackView, rowMeals } from '../../../src/domain/views/racks-view.ts';
import { anEvent, aPicture, nightsAgo } from '../../make.ts';
import { animalId, code, rackId, tubId } from '../../make-ids.ts';
import { dweller, room } from './little-room.ts';

const events = [
  ...room,
  ...dweller(1, 'Sorrel', 1),
  ...dweller(2, 'Cedar', 2, 'male'),
  ...dweller(3, 'Ångström', 3),
  anEvent('introduced', {
    male: animalId(2),
    female: animalId(1),
    tub: tubId(1),
    at: nightsAgo(3),
  }),
  anEvent('identified', { animal: animalId(3), traits: 'Pastel het Clown' }),
  anEvent('label-assigned', { code: code(50), to: { kind: 'animal', animal: animalId(3) } }),
  anEvent('label-printed', { codes: [code(51)] }),
];
const picture = aPicture(events);

describe('at a tub', () => {
  test('its owner and a visitor are both shown, as a pair', () => {
    expect(captureTub(tubId(1), picture)).toMatchObject({
      position: 'B1-1',
      occupants: [{ name: 'Sorrel' }, { name: 'Cedar' }],
      pair: { male: animalId(2), female: animalId(1) },
    });
  });

  test('whose owner is away, nobody is in, and where he is is said', () => {
    const { occupants, away } = captureTub(tubId(2), picture);
    expect(occupants).toEqual([]);
    expect(away).toMatchObject({ name: 'Cedar', with: 'Sorrel', position: 'B1-1' });
  });

  test('that is empty, or not known at all, nobody is in', () => {
    expect(captureTub(tubId(4), picture)).toMatchObject({ position: 'B2-2', occupants: [] });
    expect(captureTub(tubId(99), picture)).toMatchObject({ occupants: [] });
  });

  test('the screen of a snake is that of the tub it is in now', () => {
    expect(captureAnimal(animalId(2), picture)).toMatchObject({
      position: 'B1-1',
      occupants: [{ name: 'Cedar' }, { name: 'Sorrel' }],
    });
    expect(captureAnimal(animalId(99), picture)).toBeUndefined();
  });
});

test('a code leads to the tub or the snake it is assigned to, or says that it is new', () => {
  expect(findByCode(code(1), picture)).toMatchObject({
    kind: 'capture',
    view: { position: 'B1-1' },
  });
  expect(findByCode(code(50), picture)).toMatchObject({
    view: { occupants: [{ name: 'Ångström' }] },
  });
  expect(findByCode(code(51), picture)).toEqual({ kind: 'unassigned', code: code(51) });
  expect(findByCode(code(77), picture)).toEqual({ kind: 'unknown', code: code(77) });
});

describe('finding', () => {
  test.each([
    { typed: 'B2-1', found: ['Ångström'], why: 'a position' },
    { typed: 'b 2-1', found: ['Ångström'], why: 'a position, as a thumb types it' },
    { typed: 'B2-2', found: ['B2-2'], why: 'an empty tub' },
    { typed: 'angstrom', found: ['Ångström'], why: 'a name without its accents' },
    { typed: 'SORR', found: ['Sorrel'], why: 'the beginning of a name' },
    { typed: 'clown', found: ['Ångström'], why: 'a trait' },
    { typed: code(50), found: ['Ångström'], why: 'the code of a card' },
    { typed: code(1).toLowerCase(), found: ['Sorrel', 'Cedar'], why: 'the code of a tub' },
    { typed: 'B1-1', found: ['Cedar', 'Sorrel'], why: 'where two are now' },
    { typed: 'nobody', found: [], why: 'a name no one has' },
    { typed: '', found: ['Ångström', 'Cedar', 'Sorrel'], why: 'nothing lists all' },
  ])('$typed finds $found: $why', ({ typed, found }) => {
    expect(findView(typed, picture).map(({ title }) => title)).toEqual(found);
  });

  test('shows those that left last', () => {
    const sold = anEvent('left', { animal: animalId(3), how: 'sold' });
    const hits = findView('', aPicture([...events, sold]));
    expect(hits.map(({ title, gone }) => [title, gone])).toEqual([
      ['Cedar', false],
      ['Sorrel', false],
      ['Ångström', true],
    ]);
  });
});

describe('the racks', () => {
  test('stand in the order they are walked, with who is in them', () => {
    const { racks } = racksView(picture);
    expect(racks.map(({ name, snakes, quarantine }) => [name, snakes, quarantine])).toEqual([
      ['A', 0, false],
      ['B', 3, false],
      ['Q', 0, true],
    ]);
  });

  test('mark each tub with what is to be seen there', () => {
    const more = [
      anEvent('opaque-seen', { animal: animalId(3), at: nightsAgo(1) }),
      anEvent('regurgitated', { animal: animalId(4), at: nightsAgo(1) }),
      anEvent('quarantine-started', { animal: animalId(4) }),
    ];
    const view = rackView(rackId(1), aPicture([...events, ...dweller(4, 'Tansy', 4), ...more]));
    const marks = new Map(view?.cells.map((cell) => [cell.position, cell.marks]));
    expect(marks.get('B1-1')).toEqual(['pair', 'take out']);
    expect(marks.get('B1-2')).toEqual(['away']);
    expect(marks.get('B2-1')).toEqual(['in blue']);
    expect(marks.get('B2-2')).toEqual(['quarantine', 'on hold']);
  });

  test('list the meals of a row that are due and not held back', () => {
    expect(rowMeals(rackId(1), picture)).toMatchObject([
      { name: 'Ångström', position: 'B2-1', row: 2 },
    ]);
  });
});

test('labels can be printed for every tub and card, and say which were', () => {
  const { labelled, cardless } = labelsView(picture);
  expect(labelled.filter(({ kind }) => kind === 'tub')).toHaveLength(12);
  expect(labelled.filter(({ kind }) => kind === 'animal')).toMatchObject([{ title: 'Ångström' }]);
  expect(labelled.some(({ wasPrinted }) => wasPrinted)).toBe(false);
  expect(cardless).toEqual([animalId(1), animalId(2)]);
  const printed = aPicture([...events, anEvent('label-printed', { codes: [code(1)] })]);
  expect(labelsView(printed).labelled.filter(({ wasPrinted }) => wasPrinted)).toHaveLength(1);
});
