import type { Day } from '../src/domain/core/calendar.ts';
import { inBase32, type BuyerId } from '../src/domain/core/ids.ts';
import type { Buyer } from '../src/domain/sale/buyer.ts';

const buyerId = (n: number): BuyerId => `b-${inBase32(n, 12)}DEM03` as BuyerId;

/** Invented buyers, by what they do in the story. */
export const teacher = buyerId(1);
export const neighbour = buyerId(2);

// The number is one that Ofcom keeps for stories.
export const demoBuyers = (since: Day): readonly Buyer[] => [
  { id: teacher, name: 'Ada Rook', contact: '01632 960221, Alder Lane', since },
  { id: neighbour, name: 'Tam Brill', since },
];
