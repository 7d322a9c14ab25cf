import { daysBetween } from '../core/calendar.ts';
import { showGrams } from '../core/units.ts';
import type { Draft } from '../events/event.ts';
import type { Picture } from '../picture/picture.ts';
import { preyG } from '../protocol/planned-meal.ts';
import { agoWords } from '../core/day-words.ts';
import { feedingBlock } from '../rules/feeding-block.ts';
import type { Animal } from '../state/animal.ts';
import type { Doubt, Verdict } from './doubt.ts';

type Offered = Extract<Draft, { type: 'meal-offered' }>;

/** Shares of body mass. Source: mealShare. */
const USUAL_SHARE = { low: 0.02, high: 0.2 };
const MOST_SHARE = 0.35;
const SOON_DAYS = 3;

export function assessMeal({ prey, outcome }: Offered, animal: Animal, picture: Picture): Verdict {
  const { facts } = picture;
  const massG = animal.weighings.at(-1)?.massG;
  const mealG = preyG(prey);
  const share = massG !== undefined && mealG !== undefined ? mealG / massG : undefined;
  if (share !== undefined && share > MOST_SHARE) {
    return {
      refusals: [
        {
          code: 'meal-too-big',
          message: `A meal of ${showGrams(mealG ?? 0)} is ${percent(share)} of ${showGrams(massG ?? 0)}. Up to ${percent(MOST_SHARE)} can be written down; check the size.`,
        },
      ],
      doubts: [],
      notes: [],
    };
  }
  const doubts: Doubt[] = [];
  const block = feedingBlock(animal, facts);
  // Offering to one in blue is common enough; that it ate is the surprise.
  if (block && outcome !== 'refused')
    doubts.push({ code: 'blocked', message: `Not to be fed: ${block}. Fed anyway?` });
  const ate = animal.offers.findLast((offer) => offer.outcome === 'ate');
  if (ate && outcome !== 'refused') {
    const days = daysBetween(facts.nightOf(ate.at), facts.night);
    if (days >= 0 && days <= SOON_DAYS) {
      doubts.push({
        code: 'fed-lately',
        message: `It ate ${agoWords(facts.nightOf(ate.at), facts.night)} already. One more meal?`,
      });
    }
  }
  if (share !== undefined && share > USUAL_SHARE.high) {
    doubts.push({ code: 'big-meal', message: `That is ${percent(share)} of its body mass. Sure?` });
  }
  if (share !== undefined && share < USUAL_SHARE.low) {
    doubts.push({
      code: 'small-meal',
      message: `Only ${percent(share)} of its body mass. Right prey?`,
    });
  }
  if (prey.count > 3) doubts.push({ code: 'many', message: `${prey.count} at once. Sure?` });
  return { refusals: [], doubts, notes: [] };
}

const percent = (share: number): string => `${Math.round(share * 100)} %`;
