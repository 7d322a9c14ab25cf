import type { Protocol } from '../protocol/values.ts';

/** McCue M.D. 2007, Zoology 110:318–327: ball pythons lost this share of their mass in so many days. */
const MEASURED = { share: 0.183, days: 168 };

/** The mass after days without food, at the one published rate. Unit: grams, days. */
export const fastedG = (massG: number, days: number): number =>
  massG * (1 - MEASURED.share) ** (days / MEASURED.days);

/** The shares of body mass that a fast costs at the least and at the most. */
export interface FastLoss {
  readonly low: number;
  readonly high: number;
}

/** What a fast of so many days costs. Unit: days. */
export const fastLoss = (days: number, protocol: Protocol): FastLoss => ({
  low: over(protocol.fastLossLowShare, days),
  high: over(protocol.fastLossHighShare, days),
});

const over = (monthly: number, days: number): number =>
  1 - (1 - monthly) ** (Math.max(0, days) / 30);
