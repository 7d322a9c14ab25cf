import { describe, expect, test } from 'vitest';
import type { RackEvent } from '../../../src/domain/events/event.ts';
import type { RuleId } from '../../../src/domain/rules/rule.ts';
import { aPicture, anEvent } from '../../make.ts';
import { animalId, clutchId } from '../../make-ids.ts';

const animal = animalId(1);
const at = (day: string, time = '22:00') => `${day}T${time}:00+02:00`;
const dam = anEvent('arrived', { animal, name: 'Sorrel', sex: 'female', at: at('2026-01-02') });
const laid = anEvent('laid', { animal, clutch: clutchId(1), at: at('2027-04-10', '07:00') });

const asked = (rule: RuleId, now: string, ...events: readonly RackEvent[]) =>
  aPicture([dam, laid, ...events], now)
    .tasks(animal)
    .find((task) => task.rule === rule);

describe('[L1] eggs felt in her after laying', () => {
  const felt = (left: 'none' | 'unsure' | 'some', time = '09:00') =>
    anEvent('eggs-felt', { animal, left, at: at('2027-04-10', time) });

  // WikiVet, Lizard and Snake Dystocia: treatment works best within 48 hours.
  test.each([
    ['2027-04-10', 'feel again, have a vet ready', 'due'],
    ['2027-04-11', 'call a vet', 'overdue'],
    ['2027-04-13', 'a vet, urgently', 'overdue'],
  ])('are an alarm at once, and on %s: %s', (day, words, state) => {
    const task = asked('L1', at(day), felt('some'));
    expect(task).toMatchObject({ alarm: true, state, act: 'call' });
    expect(task?.asks).toContain(words);
  });

  test('are not asked about where none are left, or a later feeling finds none', () => {
    expect(asked('L1', at('2027-04-11'), felt('none'))).toBeUndefined();
    expect(asked('L1', at('2027-04-11'), felt('unsure'), felt('none', '20:00'))).toBeUndefined();
  });
});

describe('[L2] her recovery', () => {
  const weighed = (day: string, massG: number) =>
    anEvent('weighed', { animal, massG, at: at(day) });
  const ate = anEvent('meal-offered', { animal, outcome: 'ate', at: at('2027-04-18') });

  // No food by day 21, or a further loss of over 5 % after day 14: common practice, no source.
  test('is late without a meal by day 21, and not before', () => {
    expect(asked('L2', at('2027-04-29'))).toBeUndefined();
    expect(asked('L2', at('2027-04-30'))?.asks).toBe('No meal since laying: ask a vet');
    expect(asked('L2', at('2027-04-30'), ate)).toBeUndefined();
  });

  test('fails where she goes on losing after day 14', () => {
    const steady = [weighed('2027-04-25', 1_250), weighed('2027-05-10', 1_200)];
    const losing = [weighed('2027-04-25', 1_250), weighed('2027-05-10', 1_180)];
    expect(asked('L2', at('2027-05-11'), ate, ...steady)).toBeUndefined();
    expect(asked('L2', at('2027-05-11'), ate, ...losing)?.because).toContain(
      '1,250\u00A0g two weeks after laying, 1,180\u00A0g now.',
    );
  });

  test('of one that broods is left to her', () => {
    const broods = anEvent('laid', {
      animal,
      clutch: clutchId(1),
      at: laid.at,
      care: 'with her',
    });
    const picture = aPicture([dam, broods], at('2027-05-05'));
    expect(picture.tasks(animal).filter(({ rule }) => rule === 'L2')).toEqual([]);
  });
});
