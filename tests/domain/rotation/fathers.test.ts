import { describe, expect, test } from 'vitest';
import { newHatchlingDrafts } from '../../../src/domain/commands/new-hatchling.ts';
import { createMinter, type AnimalId, type DeviceId } from '../../../src/domain/core/ids.ts';
import type { EventOf, RackEvent } from '../../../src/domain/events/event.ts';
import { copiesIn } from '../../../src/domain/genes-book/copies.ts';
import { genesBook } from '../../../src/domain/genes-book/genes-book.ts';
import { locusOf } from '../../../src/domain/genes/catalogue.ts';
import { alleleIndex } from '../../../src/domain/genes/genotype.ts';
import { clutchFathers, possibleFathers } from '../../../src/domain/rotation/paternity.ts';
import type { Clutch } from '../../../src/domain/state/clutch.ts';
import { clutchView } from '../../../src/domain/views/clutch-view.ts';
import { fathersView } from '../../../src/domain/views/father-offers.ts';
import { youngView } from '../../../src/domain/views/young-view.ts';
import { anEvent, aPicture } from '../../make.ts';
import { animalId, clutchId, tubId } from '../../make-ids.ts';
import { arrivals, her, him, on, ovulated, scan, visit } from '../season/make-season.ts';

// Days between the events of a season are common practice, no source.

const other = animalId(5);
const clutch = clutchId(1);
const rush = anEvent('arrived', { animal: other, name: 'Rush', sex: 'male', at: on('2025-01-01') });
const stay = (male: AnimalId, since: string, until: string): readonly RackEvent[] => [
  anEvent('introduced', { male, female: her, tub: tubId(1), at: on(since) }),
  anEvent('taken-out', { male, female: her, at: on(until) }),
];
const locked = (male: AnimalId, night: string) =>
  anEvent('pair-seen', { male, female: her, seen: 'locked', at: on(night) });
const laid = (night: string, id = clutch) =>
  anEvent('laid', { animal: her, clutch: id, good: 6, at: on(night) });

/** Cedar was seen locked, Rush came later and nobody saw a lock. */
const season: readonly RackEvent[] = [
  ...arrivals,
  rush,
  scan('2026-11-01', 14),
  ...visit('2026-11-21', '2026-11-24'),
  locked(him, '2026-11-22'),
  ...stay(other, '2026-12-03', '2026-12-05'),
];
const eggs = [...season, ovulated('2026-12-10'), laid('2027-01-22')];
const stated = (sires: EventOf<'paternity-stated'>['sires'], at = '2027-01-22') =>
  anEvent('paternity-stated', { animal: her, clutch, sires, at: on(at) });

const fathersOn = (night: string, events: readonly RackEvent[], id = clutch) => {
  const picture = aPicture(events, on(night));
  return clutchFathers(picture.ledger.subjects.get(id) as Clutch, picture);
};

describe('who may be the father', () => {
  test('is a set: visits, locks and the days before ovulation of each', () => {
    const picture = aPicture([...season, ovulated('2026-12-10')], on('2026-12-10'));
    expect(possibleFathers(picture.animal(her)!, picture)).toMatchObject([
      { male: him, visits: 1, locks: 1, daysBeforeOvulation: 18, isEarlier: false },
      { male: other, visits: 1, locks: 0, daysBeforeOvulation: 5, isEarlier: false },
    ]);
  });

  test('is offered in words, before the eggs and after', () => {
    const says = [
      'Cedar: 1 visit, 1 lock seen, last 22 Nov, 18 days before ovulation.',
      'Rush: 1 visit, no lock seen, last 5 Dec, 5 days before ovulation.',
    ];
    const before = aPicture([...season, ovulated('2026-12-10')], on('2027-01-20'));
    expect(fathersView(her, before).map((each) => each.says)).toEqual(says);
    const after = clutchView(clutch, aPicture(eggs, on('2027-01-23')))!;
    expect(after.offers.map((each) => each.says)).toEqual(says);
    expect(after.offers[1]).toMatchObject({
      name: 'Rush',
      evidence: '1 visit, no lock seen, last 5 Dec, 5 days before ovulation',
    });
  });

  test('is no male that came after the ovulation, or too late for the eggs where none was seen', () => {
    const late = [...season, ovulated('2026-12-01'), laid('2027-01-14')];
    expect(fathersOn('2027-01-15', late).sires.map(({ male }) => male)).toEqual([him]);
    // From ovulation to shed at least 10 days, to eggs at least 15 (the middle school's windows).
    const unseen = [...season, laid('2026-12-20')];
    expect(fathersOn('2026-12-20', unseen).sires.map(({ male }) => male)).toEqual([him]);
  });

  test('is one of the season before only where this one had none, for stored sperm', () => {
    const next = [scan('2027-12-01', 20)];
    const second = clutchId(2);
    const alone = [...eggs, ...next, laid('2028-01-30', second)];
    expect(fathersOn('2028-01-30', alone, second).sires).toEqual([
      { male: him, grounds: 'stored sperm' },
      { male: other, grounds: 'stored sperm' },
    ]);
    const met = [...eggs, ...next, ...stay(other, '2027-12-05', '2027-12-08')];
    const withRush = [...met, laid('2028-01-30', second)];
    expect(fathersOn('2028-01-30', withRush, second).sires).toEqual([
      { male: other, grounds: 'together' },
    ]);
    const { offers } = clutchView(second, aPicture(withRush, on('2028-01-30')))!;
    expect(offers.map(({ name, isLikely }) => [name, isLikely])).toEqual([
      ['Rush', true],
      ['Cedar', false],
    ]);
  });

  test('is still known of last season’s clutch, and is not guessed of an older one', () => {
    const opened = [...eggs, scan('2027-12-01', 20)];
    expect(fathersOn('2027-12-02', opened).sires.map(({ male }) => male)).toEqual([him, other]);
    const again = [...opened, laid('2028-01-30', clutchId(2)), scan('2028-12-01', 20)];
    expect(fathersOn('2028-12-02', again).sires).toEqual([]);
  });
});

describe('the clutch carries the set', () => {
  test('by the records until it is stated, and then as stated', () => {
    const before = clutchView(clutch, aPicture(eggs, on('2027-01-23')))!;
    expect(before.fathers).toEqual({
      isStated: false,
      says: ['Cedar (locked)', 'Rush (together)'],
    });
    const after = aPicture(
      [...eggs, stated([{ male: other, grounds: 'DNA test' }])],
      on('2027-01-23'),
    );
    expect(clutchView(clutch, after)!.fathers).toEqual({
      isStated: true,
      says: ['Rush (DNA test)'],
    });
  });

  test('to the count of its young, which begins with them', () => {
    const fathers = (events: readonly RackEvent[]) =>
      youngView(her, aPicture(events, on('2027-03-25')))!.clutches[0]!.fathers;
    expect(fathers(eggs)).toEqual([him, other]);
    expect(fathers([...eggs, stated([{ male: other, grounds: 'DNA test' }])])).toEqual([other]);
  });
});

describe('the genes of the young go by the set', () => {
  const night = '2027-03-24';
  const clown = anEvent('identified', { animal: him, traits: 'Clown', at: on('2026-01-01') });
  const takenIn = (events: readonly RackEvent[]) => {
    const picture = aPicture(events, on(night));
    const wanted = { clutch, name: '27-001A', sex: 'unknown' as const, defects: [] };
    const minter = createMinter('HATCH' as DeviceId, () => 1_800_000_000_000);
    let drawn = 0;
    const made = newHatchlingDrafts(wanted, picture, minter, () => (drawn += 1) / 1_000);
    if (!made.ok) throw new Error(made.problem.message);
    const { animal } = made.value;
    const born: readonly RackEvent[] = made.value.drafts.flatMap((draft) =>
      draft.type === 'arrived' || draft.type === 'hatched' || draft.type === 'parents-stated'
        ? [anEvent(draft.type, { ...draft, at: on(night) })]
        : [],
    );
    return { animal, events: [...events, ...born] };
  };
  const het = (events: readonly RackEvent[], animal: AnimalId) => {
    const book = genesBook(aPicture(events, on('2027-04-01')));
    const at = locusOf(book.catalogue, 'clown');
    return copiesIn(book.chances(animal, 'clown')!, at, alleleIndex(at, 'clown')).any;
  };

  test('by the records: of a Clown and a normal male every second one carries Clown', () => {
    const { animal, events } = takenIn([...eggs, clown]);
    expect(het(events, animal)).toBeCloseTo(1 / 2, 8);
  });

  test('once one of them is stated, for the clutch and its young, it is his', () => {
    const { animal, events } = takenIn([...eggs, clown]);
    const { followers } = clutchView(clutch, aPicture(events, on(night)))!;
    expect(followers).toEqual([animal]);
    const dna = [
      stated([{ male: him, grounds: 'DNA test' }], '2027-03-30'),
      anEvent('parents-stated', { animal, dam: her, sires: [him], at: on('2027-03-30') }),
    ];
    expect(het([...events, ...dna], animal)).toBeCloseTo(1, 8);
  });

  test('where a male that is not on record may be the father as well, he counts', () => {
    const open = stated([
      { male: him, grounds: 'locked' },
      { male: 'unknown', grounds: 'stored sperm' },
    ]);
    const { animal, events } = takenIn([...eggs, clown, open]);
    expect(het(events, animal)).toBeCloseTo(1 / 2, 8);
  });

  test('where she bred alone, by a DNA test, none of his genes is in them', () => {
    const alone = stated([{ male: 'none', grounds: 'DNA test' }]);
    const { animal, events } = takenIn([...eggs, clown, alone]);
    expect(het(events, animal)).toBeCloseTo(0, 8);
  });
});
