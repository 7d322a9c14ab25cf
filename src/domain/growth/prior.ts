import { lengthened } from './scale.ts';

/** A mass that is a normal on its log: its median in grams, and one SD of the log. */
interface LogNormal {
  readonly medianG: number;
  readonly spread: number;
}

/** What is usual for growing animals of a sex, before any weight of this one. */
export interface GrowthPrior {
  /** At the age of a year, from a hatchling of 65 g. */
  readonly yearG: LogNormal;
  /** What growth slows towards. */
  readonly adultG: LogNormal;
}

/**
 * The middle of what is usual for the age, and its range as two SDs either side: 200–1,000 g at a year and 1,100–3,500 g
 * grown for females, 180–800 g and 550–1,900 g for males. Source: growthPriors.
 */
export const growthPriors: Readonly<Record<'female' | 'male' | 'unknown', GrowthPrior>> = {
  female: {
    yearG: { medianG: 450, spread: 0.4 },
    adultG: { medianG: 1_950, spread: 0.29 },
  },
  male: {
    yearG: { medianG: 380, spread: 0.37 },
    adultG: { medianG: 1_000, spread: 0.31 },
  },
  unknown: {
    yearG: { medianG: 420, spread: 0.4 },
    adultG: { medianG: 1_400, spread: 0.45 },
  },
};

const HATCH_G = 65;
const YEAR_DAYS = 365;

/** One way of growing that is thought possible. */
export interface Course {
  /** On the scale of this power of mass, the way to the adult mass shrinks by the same share each day. */
  readonly power: number;
  readonly adult: number;
  /** Share of the way there that is made in a day. */
  readonly pace: number;
  /** How far log mass strays from its course, per square root of a day: meals missed, winters. */
  readonly strays: number;
  readonly weight: number;
}

/** How soon growth slows: early on, as a straight line in mass would; or late. Nobody knows for this species. */
const POWERS = [-0.5, 0, 0.5] as const;

const STRAYS = [
  { strays: 0.003, weight: 0.2 },
  { strays: 0.006, weight: 0.35 },
  { strays: 0.012, weight: 0.3 },
  { strays: 0.024, weight: 0.15 },
] as const;

/** Points of a normal, in SDs from its middle, and what each weighs. */
const POINTS = [-2.4, -1.6, -0.8, 0, 0.8, 1.6, 2.4].map((z) => {
  return { z, weight: Math.exp((-z * z) / 2) };
});

/** A year's growth that leaves less than this to grow is no course. */
const STILL_TO_GROW = 0.05;

/** Courses thought possible for a sex; weights need not add up to 1. */
export function coursesOf({ yearG, adultG }: GrowthPrior): readonly Course[] {
  return POWERS.flatMap((power) =>
    POINTS.flatMap((grown) =>
      POINTS.flatMap((early) => {
        const adult = lengthened(adultG.medianG * Math.exp(adultG.spread * grown.z), power);
        const year = lengthened(yearG.medianG * Math.exp(yearG.spread * early.z), power);
        const left = (adult - year) / (adult - lengthened(HATCH_G, power));
        if (left < STILL_TO_GROW) return [];
        const pace = -Math.log(left) / YEAR_DAYS;
        return STRAYS.map(({ strays, weight }) => {
          return { power, adult, pace, strays, weight: weight * grown.weight * early.weight };
        });
      }),
    ),
  );
}
