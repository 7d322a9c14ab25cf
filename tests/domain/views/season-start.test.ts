import { describe, expect, test } from 'vitest';
import type { RackEvent } from '../../../src/domain/events/event.ts';
import { captureAnimal } from '../../../src/domain/views/capture-view.ts';
import { stageRule } from '../../../src/domain/views/stage-words.ts';
import { anEvent, aPicture, day, instead, nightsAgo } from '../../make.ts';
import { animalId, eventId, photoId } from '../../make-ids.ts';

const sorrel = animalId(1);
const arrived = anEvent('arrived', { at: nightsAgo(300) });

function occupant(...events: RackEvent[]) {
  const view = captureAnimal(sorrel, aPicture([arrived, ...events]));
  const [first] = view?.occupants ?? [];
  if (!first) throw new Error('Nobody there.');
  return first;
}

const scanned = (mm: number, nights: number) =>
  anEvent('follicles-scanned', {
    found: { method: 'ultrasound', largestMm: [mm + 1, mm - 1] },
    at: nightsAgo(nights),
  });
const ovulated = (nights: number) =>
  anEvent('ovulated', { sure: 'seen at peak', at: nightsAgo(nights) });

describe('where she stands', () => {
  test.each([
    { events: [], words: 'Resting' },
    { events: [scanned(31, 4)], words: 'Building, 31 mm, 4 days ago' },
    {
      events: [
        anEvent('follicles-scanned', {
          found: { method: 'palpation', felt: 'large lumps' },
          at: nightsAgo(1),
        }),
      ],
      words: 'Building, felt about 30 mm, last night',
    },
    { events: [scanned(31, 30), ovulated(12)], words: 'Ovulated, 12 days ago' },
    {
      events: [ovulated(19), anEvent('shed', { preLay: true, at: nightsAgo(0) })],
      words: 'Pre-lay shed, tonight',
    },
    { events: [ovulated(50), anEvent('laid', { at: nightsAgo(2) })], words: 'Laid, 2 days ago' },
  ])('is said in a line: $words', ({ events, words }) => {
    expect(occupant(...events).season?.stage.words).toBe(words);
  });

  test('opens to the facts, the rule and where that comes from', () => {
    const { stage } = occupant(scanned(31, 4)).season ?? {};
    expect(stage?.because).toEqual(['Largest follicle 31 mm, 4 days ago.']);
    const { says, source } = stageRule({ stage: stage?.stage ?? 'growing' }, false);
    expect(says).toMatch(/^Follicles large enough to pair/);
    expect(source).toBe('pairFrom');
  });

  test('is not said where the sex is not known', () => {
    const unknown = anEvent('identified', { sex: 'unknown', at: nightsAgo(1) });
    expect(occupant(unknown).season).toBeUndefined();
  });
});

// A shed 10–30 days after ovulation is probably the pre-lay shed. Common practice, no source.
describe('the question of the pre-lay shed', () => {
  test('is prepared for each night it can be written to', () => {
    const { preLay } = occupant(ovulated(12)).season ?? {};
    expect(preLay?.[day('2026-11-24')]).toBe('Ovulation was 12 days before.');
    expect(preLay?.[day('2026-11-22')]).toBe('Ovulation was 10 days before.');
    expect(preLay?.[day('2026-11-21')]).toBeUndefined();
  });

  test('is not put again once it is answered', () => {
    const shed = anEvent('shed', { preLay: true, at: nightsAgo(1) });
    expect(occupant(ovulated(19), shed).season?.preLay).toEqual({});
  });

  test('is still put after an ordinary shed', () => {
    const shed = anEvent('shed', { preLay: false, at: nightsAgo(15) });
    expect(occupant(ovulated(19), shed).season?.preLay[day('2026-11-24')]).toBeDefined();
  });
});

describe('what is said of a shed later', () => {
  const line = (...events: RackEvent[]) =>
    occupant(...events).recent.find(({ type }) => type === 'shed');

  test('is the same shed once more, with its own time, in place of the first', () => {
    const shed = anEvent('shed', {
      preLay: true,
      quality: 'pieces',
      remark: 'wet',
      place: 'B1-1',
      precision: 'day',
      at: nightsAgo(1),
    });
    expect(line(ovulated(19), shed)?.amend).toEqual({
      asks: 'It was not the pre-lay shed',
      draft: {
        type: 'shed',
        animal: sorrel,
        quality: 'pieces',
        remark: 'wet',
        place: 'B1-1',
        precision: 'day',
        at: shed.at,
        preLay: false,
        replaces: { id: shed.id, reason: 'It was not the pre-lay shed' },
      },
    });
  });

  test('turns what was taken for it by its days', () => {
    const unasked = anEvent('shed', { at: nightsAgo(1) });
    expect(line(ovulated(19), unasked)?.amend?.asks).toBe('It was not the pre-lay shed');
    const said = instead(unasked, anEvent('shed', { preLay: false, at: nightsAgo(1) }));
    expect(line(ovulated(19), unasked, said)?.amend?.asks).toBe('It was the pre-lay shed');
  });

  test('is not offered outside a season, nor for a male', () => {
    const shed = anEvent('shed', { at: nightsAgo(1) });
    expect(line(shed)?.amend).toBeUndefined();
    const male = anEvent('identified', { sex: 'male', at: nightsAgo(2) });
    expect(line(ovulated(19), male, shed)?.amend).toBeUndefined();
  });
});

test('the last looks that found nothing are handed to the forms', () => {
  const noOvulation = anEvent('nothing-yet', { lookedFor: 'ovulation', at: nightsAgo(2) });
  const noEggs = anEvent('nothing-yet', { lookedFor: 'eggs', at: nightsAgo(1) });
  const box = anEvent('nest-box-set', { is: 'in', at: nightsAgo(1) });
  expect(occupant(scanned(36, 5), noOvulation, noEggs, box).season).toMatchObject({
    noOvulation: noOvulation.at,
    noEggs: noEggs.at,
    nestBoxIsIn: true,
    isOpen: true,
  });
  expect(occupant().season).toMatchObject({ nestBoxIsIn: false, isOpen: false });
});

test('a kept picture is a line of its own, with the picture to show', () => {
  const kept = anEvent('photo-kept', { photo: photoId(7), about: eventId(1) });
  expect(occupant(kept).recent[0]).toMatchObject({ photo: photoId(7), words: 'picture kept' });
});
