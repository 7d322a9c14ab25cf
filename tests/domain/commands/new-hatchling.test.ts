import { describe, expect, test } from 'vitest';
import {
  newHatchlingDrafts,
  type NewHatchling,
} from '../../../src/domain/commands/new-hatchling.ts';
import { codeOf, newLabelDrafts } from '../../../src/domain/commands/new-labels.ts';
import { createMinter, type DeviceId } from '../../../src/domain/core/ids.ts';
import { clutchView } from '../../../src/domain/views/clutch-view.ts';
import { labelsView } from '../../../src/domain/views/labels-view.ts';
import { aPicture, anEvent, nightsAgo } from '../../make.ts';
import { animalId, clutchId, code, incubatorId, rackId, tubId } from '../../make-ids.ts';

const clutch = clutchId(1);
const incubator = incubatorId(1);
const [dam, male] = [animalId(1), animalId(2)];
const collection = [
  anEvent('rack-made', { rack: rackId(1), rows: 1, columns: 2, at: nightsAgo(90) }),
  anEvent('tub-made', { tub: tubId(1), at: nightsAgo(90), row: 1, column: 1 }),
  anEvent('tub-made', { tub: tubId(2), code: code(2), at: nightsAgo(90), row: 1, column: 2 }),
  anEvent('arrived', { animal: dam, name: 'Sorrel', at: nightsAgo(90) }),
  anEvent('moved', { animal: dam, tub: tubId(1), at: nightsAgo(90) }),
  anEvent('arrived', { animal: male, name: 'Flint', sex: 'male', at: nightsAgo(90) }),
  anEvent('laid', { animal: dam, clutch, good: 3, slugs: 1, at: nightsAgo(60) }),
  anEvent('paternity-stated', {
    animal: dam,
    clutch,
    sires: [
      { male, grounds: 'locked' },
      { male: 'unknown', grounds: 'stored sperm' },
    ],
    at: nightsAgo(60),
  }),
  anEvent('incubator-made', { incubator, name: 'Left', at: nightsAgo(60) }),
];
const picture = aPicture(collection);
const minter = createMinter('HATCH' as DeviceId, () => 1_800_000_000_000);
let drawn = 0;
/** Another number each time, or codes would never differ. */
const chance = () => (drawn += 1) / 1_000;
const wanted: NewHatchling = {
  clutch,
  name: '26-001A',
  sex: 'male',
  sexedBy: 'popped',
  massG: 61,
  defects: ['kink'],
  tub: tubId(2),
};

describe('a hatchling', () => {
  test('comes with its parents, its sex and how it was told, its weight, tub and label', () => {
    const made = newHatchlingDrafts(wanted, picture, minter, chance);
    expect(made).toMatchObject({
      ok: true,
      value: {
        drafts: [
          { type: 'arrived', name: '26-001A', hatchedDay: '2026-11-24', origin: 'own' },
          { type: 'hatched', clutch, defects: ['kink'] },
          { type: 'parents-stated', dam, sires: [male] },
          { type: 'identified', sexedBy: 'popped' },
          { type: 'weighed', massG: 61 },
          { type: 'moved', tub: tubId(2) },
          { type: 'label-assigned', to: { kind: 'animal' } },
        ],
      },
    });
  });

  test('may come with a picture, and none is asked for', () => {
    const kinds = (parts: Partial<NewHatchling>) => {
      const made = newHatchlingDrafts({ ...wanted, ...parts }, picture, minter, chance);
      return made.ok ? made.value.drafts.filter(({ type }) => type === 'photo-kept') : [];
    };
    const kept = { photo: minter.photo(), bytes: 90_000 };
    expect(kinds({ picture: kept })).toMatchObject([{ type: 'photo-kept', ...kept }]);
    expect(kinds({})).toEqual([]);
  });

  test.each([
    ['no-such-clutch', { clutch: clutchId(9) }],
    ['name-taken', { name: 'Flint' }],
    ['position-taken', { tub: tubId(1) }],
  ])('is refused as %s', (problem, parts) => {
    const made = newHatchlingDrafts({ ...wanted, ...parts }, picture, minter, chance);
    expect(made).toMatchObject({ ok: false, problem: { code: problem } });
  });

  test('is offered the next name of its clutch, and a tub that is free', () => {
    expect(clutchView(clutch, picture)).toMatchObject({
      nextName: '26-001A',
      freeTubs: [{ id: tubId(2) }],
      fathers: { isStated: true, says: ['Flint (locked)', 'an unknown male (stored sperm)'] },
    });
  });
});

describe('labels of eggs', () => {
  const given = newLabelDrafts([clutch, incubator], picture, chance);

  test('are given to what has none', () => {
    expect(given).toMatchObject([
      { type: 'label-assigned', to: { kind: 'clutch', clutch } },
      { type: 'label-assigned', to: { kind: 'incubator', incubator } },
    ]);
    expect(labelsView(picture).unlabelledEggs).toEqual([clutch, incubator]);
  });

  test('are two for a box, one of them for its lid, and say no more than a box should', () => {
    const labelled = aPicture([
      ...collection,
      anEvent('label-assigned', { code: code(31), to: { kind: 'clutch', clutch } }),
      anEvent('label-assigned', { code: code(32), to: { kind: 'incubator', incubator } }),
    ]);
    expect(codeOf(clutch, labelled)).toBe(code(31));
    const labels = labelsView(labelled).labelled.filter(({ kind }) => kind !== 'tub');
    expect(labels.map(({ title, code: each }) => [title, each])).toEqual([
      ['Box: Sorrel', code(31)],
      ['Lid: Sorrel', code(31)],
      ['Left', code(32)],
    ]);
    expect(labels[0]?.lines).toEqual([
      'by Flint or unknown',
      'laid 2026-09-25',
      '3 good, 1 slugs',
      expect.stringMatching(/^pips 2026-\d\d-\d\d to 2026-\d\d-\d\d$/),
    ]);
  });
});
