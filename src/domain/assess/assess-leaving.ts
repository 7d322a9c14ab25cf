import { daysBetween } from '../core/calendar.ts';
import { agoWords } from '../core/day-words.ts';
import type { Draft, EventOf } from '../events/event.ts';
import type { Picture } from '../picture/picture.ts';
import { againstSale } from '../sale/against-sale.ts';
import type { Animal } from '../state/animal.ts';
import { noObjection, type Doubt, type Verdict } from './doubt.ts';

/**
 * What stands against letting one go: unwell or in quarantine, young and not established, kept back.
 * The keeper's word stands, and the law is his to know.
 */
export function assessLeaving(
  { how }: Pick<EventOf<'left'>, 'how'>,
  animal: Animal,
  { facts }: Picture,
): Verdict {
  if (how !== 'sold' && how !== 'given') return noObjection;
  return asked(againstGoing(animal, facts, 'Let it go now?'));
}

/** The same where it is promised to somebody; kept back, it would not be on offer. */
export const assessSale = (animal: Animal, { facts }: Picture): Verdict =>
  asked(againstGoing(animal, facts, 'Write it anyway?'));

const SENT_AFTER_MEAL_DAYS = 3;

/** What stands against sending it. Source: sending. */
export function assessHandOver(
  { how }: Extract<Draft, { type: 'handed-over' }>,
  animal: Animal,
  { facts }: Picture,
): Verdict {
  if (how !== 'sent') return noObjection;
  const doubts: Doubt[] = [];
  if (againstSale(animal, facts).some(({ isUnwell }) => isUnwell)) {
    doubts.push({
      code: 'unwell-sent',
      message: `${nameOf(animal)} is unwell, or may be. An unwell animal is not sent. Was it sent?`,
    });
  }
  const fed = animal.offers.findLast(({ outcome }) => outcome !== 'refused');
  const night = fed && facts.nightOf(fed.at);
  if (night !== undefined && daysBetween(night, facts.night) < SENT_AFTER_MEAL_DAYS) {
    doubts.push({
      code: 'sent-full',
      message: `${nameOf(animal)} was fed ${agoWords(night, facts.night)}. On a journey it may bring that up. Sent anyway?`,
    });
  }
  if (animal.opaqueAt !== undefined) {
    doubts.push({ code: 'sent-in-blue', message: `${nameOf(animal)} is in blue. Sent anyway?` });
  }
  return asked(doubts);
}

const nameOf = ({ name }: Animal): string => name || 'It';

const againstGoing = (animal: Animal, facts: Picture['facts'], asks: string): readonly Doubt[] =>
  againstSale(animal, facts).map(({ code, because }) => ({
    code,
    message: `${nameOf(animal)}: ${because.join(' ')} ${asks}`,
  }));

const asked = (doubts: readonly Doubt[]): Verdict =>
  doubts.length === 0 ? noObjection : { refusals: [], doubts, notes: [] };
