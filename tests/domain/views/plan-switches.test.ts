import { describe, expect, test } from 'vitest';
import { inPounds } from '../../../src/domain/core/pounds.ts';
import { GRAMS_PER_OUNCE, GRAMS_PER_POUND } from '../../../src/domain/core/units.ts';
import type { RackEvent } from '../../../src/domain/events/event.ts';
import { schools } from '../../../src/domain/protocol/schools.ts';
import { feedingView } from '../../../src/domain/views/feeding-view.ts';
import { preyView } from '../../../src/domain/views/prey-view.ts';
import { weightView } from '../../../src/domain/views/weight-view.ts';
import { anEvent, aPicture, nightsAgo } from '../../make.ts';
import { animalId } from '../../make-ids.ts';

const female = (massG: number, fed: number): readonly RackEvent[] => [
  anEvent('arrived', { sex: 'female', at: nightsAgo(90) }),
  anEvent('weighed', { massG, at: nightsAgo(20) }),
  anEvent('meal-offered', { at: nightsAgo(fed) }),
];

const set = (values: Readonly<Record<string, number>>) =>
  anEvent('protocol-set', { values, at: nightsAgo(1) });

const isDue = (events: readonly RackEvent[]): boolean =>
  feedingView(aPicture(events)).due.length > 0;

const offers = (events: readonly RackEvent[]) => preyView(4, aPicture(events)).order[0]?.offers;

describe('what the keeper switches changes the plan as it says', () => {
  // November: fed up every 8 days in the north, kept every 14 in the southern spring. Common practice, no source.
  test('the hemisphere: tonight’s feeding and the order follow the season of the place', () => {
    const fed = female(1_700, 9);
    expect(isDue(fed)).toBe(true);
    expect(isDue([...fed, set({ yearShiftMonths: 6 })])).toBe(false);
    expect(offers(fed)).toBe(4);
    // Days 5 and 19 of 28.
    expect(offers([...fed, set({ yearShiftMonths: 6 })])).toBe(2);
  });

  test('a limit between classes: the same snake becomes a grower, with a grower’s rhythm', () => {
    const fed = female(800, 7);
    expect(isDue(fed)).toBe(false);
    expect(isDue([...fed, set({ adultFromG: 900 })])).toBe(true);
  });

  test.each([
    ['oz', 60, GRAMS_PER_OUNCE],
    ['lb', 3.75, GRAMS_PER_POUND],
  ] as const)(
    'the unit on the scale, %s: the record differs, and the plan does not',
    (unit, value, grams) => {
      const typed = anEvent('weighed', {
        massG: value * grams,
        entered: { value, unit },
        at: nightsAgo(2),
      });
      const inGrams = anEvent('weighed', { massG: value * grams, at: nightsAgo(2) });
      const plan = (weighed: RackEvent) => {
        const picture = aPicture([...female(1_600, 9), weighed]);
        return { due: feedingView(picture).due, order: preyView(4, picture).order };
      };
      expect(plan(typed)).toEqual(plan(inGrams));
    },
  );

  // The page takes the desk's views apart and says their masses otherwise: no view may be part of it.
  test('pounds and ounces on the screen: the words change, and neither numbers nor records do', () => {
    const events = female(1_600, 9);
    const before = JSON.stringify(events);
    const view = feedingView(aPicture(events));
    const told = inPounds(view);
    const bare = (each: unknown) => JSON.stringify(each).replace(/[\d,.]+(\u00A0g| oz| lb)/g, '');
    expect(JSON.stringify(view)).toMatch(/\d\u00A0g/);
    expect(JSON.stringify(told)).not.toMatch(/\d\u00A0g/);
    expect(bare(told)).toBe(bare(view));
    expect(JSON.stringify(events)).toBe(before);
    expect(feedingView(aPicture(events))).toEqual(view);
  });

  // 86 °F is 30 °C: NIST Special Publication 811 (2008), Appendix B.8.
  test('°F: what is read of the room leaves the plan of meals alone', () => {
    const read = anEvent('room-read', {
      tempC: 30,
      entered: { unit: '°F', temp: 86 },
      at: nightsAgo(1),
    });
    const fed = female(1_700, 9);
    expect(feedingView(aPicture([...fed, read])).due).toEqual(feedingView(aPicture(fed)).due);
  });

  test.each(schools)(
    'the preset $name: the limit of mass that a female is held against',
    (school) => {
      const { femaleFromG = 1_500 } = school.values;
      const preset = anEvent('protocol-set', {
        values: { ...school.values },
        school: school.id,
        at: nightsAgo(1),
      });
      const view = weightView(animalId(1), aPicture([...female(1_600, 9), preset]));
      const mass = view?.readiness.find(({ what }) => what === 'Mass');
      expect(mass?.isMet).toBe(1_600 >= femaleFromG);
      expect(mass?.says).toContain(femaleFromG.toLocaleString('en'));
    },
  );
});
