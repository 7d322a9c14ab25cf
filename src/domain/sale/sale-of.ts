import type { Moment } from '../core/calendar.ts';
import type { AnimalId, BuyerId } from '../core/ids.ts';
import type { EventOf, RackEvent } from '../events/event.ts';
import type { Money } from '../events/sales.ts';
import type { Picture } from '../picture/picture.ts';

/** One sale, from the word given to the hand-over or its end. */
export interface Sale {
  readonly animal: AnimalId;
  /** When it was sold; where only its leaving is on record, when it left. */
  readonly at: Moment;
  readonly price?: Money | undefined;
  readonly buyer?: BuyerId | undefined;
  /** A record of the sale itself says so, and not only that it left. */
  readonly isAgreed: boolean;
  /** Since when it had been on offer. */
  readonly listedAt?: Moment | undefined;
  readonly how?: EventOf<'handed-over'>['how'] | undefined;
  readonly leftAt?: Moment | undefined;
  /** It is here again, by a slip at the hand-over or because it was brought back. */
  readonly backAt?: Moment | undefined;
  readonly ended?: EventOf<'sale-ended'> | undefined;
}

export type SaleStage = 'not offered' | 'for sale' | 'reserved' | 'sold' | 'handed over';

/** What the records say of an animal’s sale, now and earlier. */
export interface SaleStory {
  readonly stage: SaleStage;
  readonly listedAt?: Moment | undefined;
  /** As last named. */
  readonly price?: Money | undefined;
  readonly reserved?: EventOf<'reserved'> | undefined;
  /** The one under way or done. */
  readonly sale?: Sale | undefined;
  /** Sales that came to nothing, oldest first. */
  readonly past: readonly Sale[];
  readonly source?: EventOf<'source-stated'> | undefined;
}

type Open = { -readonly [Key in keyof Omit<SaleStory, 'stage'>]: SaleStory[Key] };

/** Of one animal's records that count, oldest first. Total, like all folds. */
export function saleStory(events: readonly RackEvent[]): SaleStory {
  const story: Open = { past: [] };
  for (const event of events) change(story, event);
  const { sale, reserved, listedAt } = story;
  const stage = sale
    ? sale.leftAt === undefined || sale.backAt !== undefined
      ? 'sold'
      : 'handed over'
    : reserved
      ? 'reserved'
      : listedAt === undefined
        ? 'not offered'
        : 'for sale';
  return { stage, ...story };
}

function change(story: Open, event: RackEvent): void {
  switch (event.type) {
    case 'put-up-for-sale':
      story.listedAt ??= event.at;
      story.price = event.price ?? story.price;
      break;
    case 'taken-off-sale':
    case 'held-back':
      story.listedAt = undefined;
      break;
    case 'reserved':
      story.reserved = event;
      story.price = event.price ?? story.price;
      break;
    case 'sold': {
      const { animal, at, buyer = story.reserved?.buyer, price = story.price } = event;
      story.price = price;
      story.sale = { animal, at, buyer, price, isAgreed: true, listedAt: story.listedAt };
      break;
    }
    case 'handed-over':
      if (story.sale) story.sale = { ...story.sale, how: event.how };
      break;
    case 'left':
      if (event.how === 'sold') {
        const { animal, at } = event;
        const { listedAt, price } = story;
        const buyer = story.reserved?.buyer;
        const sale = story.sale ?? { animal, at, listedAt, price, buyer, isAgreed: false };
        story.sale = { ...sale, leftAt: at, backAt: undefined };
      }
      break;
    case 'came-back':
      // Where only its leaving said that it was sold, nothing is left of that.
      story.sale = story.sale?.isAgreed ? { ...story.sale, backAt: event.at } : undefined;
      break;
    case 'sale-ended':
      if (story.sale) story.past = [...story.past, { ...story.sale, ended: event }];
      story.sale = undefined;
      story.reserved = undefined;
      if (event.why === 'brought back') story.listedAt = undefined;
      break;
    case 'source-stated':
      story.source = event;
      break;
    default: // Says nothing of a sale.
  }
}

export const standingOf = (id: AnimalId, { ledger }: Picture): readonly RackEvent[] =>
  ledger.history(id).filter((event) => ledger.stands(event.id));

export const storyOf = (id: AnimalId, picture: Picture): SaleStory =>
  saleStory(standingOf(id, picture));
