import type { citesSources } from '../core/trade-words.ts';

type CitesSource = (typeof citesSources)[number];

/**
 * What the codes mean, in our own words; the keeper states which holds, and an authority may see it
 * otherwise. Source: citesSource.
 */
export const citesWords: Readonly<Record<CitesSource, string>> = {
  C: 'bred in captivity, as CITES defines it',
  F: 'born in captivity, without meeting that definition',
  R: 'ranched: taken from the wild as egg or young, and raised',
  W: 'taken from the wild',
  O: 'from before the Convention',
  I: 'confiscated or seized',
  U: 'not known',
};

/** What a buyer should know, on every sheet. Sources: practice but for Salmonella, on the Shelf too. */
export const buyerCautions: readonly string[] = [
  'Leave it in peace for a week. Then offer what it has eaten here, at the same pace.',
  'Keep it apart from other reptiles, with tools of its own, for three months or as a vet says.',
  'Open-mouth breathing, bubbles, a prolapse, steady weight loss: to a reptile vet within a day or two. No medicine without a vet.',
  'Snakes, their tubs and rodents can carry Salmonella: wash your hands, keep them out of the kitchen, and away from small children, pregnant, old or ill people.',
  'Genes are as stated, with how sure that is. “Possible” is a chance, and no promise.',
];

/** What to see to before one is sent or driven. Source: sending. */
export const journeyCautions: readonly string[] = [
  'Only a healthy animal travels: nothing in quarantine, under treatment, in blue or freshly fed.',
  'Look up the weather at both ends and between. Many do not send below 4 °C or above 32 °C.',
  'Ask the carrier whether it takes live reptiles; most parcel services do not. Ordinary post is no way.',
  'Across a border it needs CITES papers before it travels. Check local rules, also at the other end.',
];
