import type { Day } from '../core/calendar.ts';
import type { AnimalId } from '../core/ids.ts';
import { agoWords } from '../core/day-words.ts';
import { seasonOutlook } from '../clutch/season-outlook.ts';
import type { Picture } from '../picture/picture.ts';
import { signStatistics } from '../season/sign-statistics.ts';
import type { SeasonNow } from '../season/standing.ts';
import type { Animal } from '../state/animal.ts';
import { earlierSeason, type EarlierSeason } from './earlier-seasons.ts';
import { follicleCurve, growthIn, type FollicleCurveView } from './follicle-curve-view.ts';
import { signLine } from './sign-words.ts';
import { stageInWords, type StageInWords } from './stage-in-words.ts';
import { trendWords } from './trend-words.ts';
import { comingWindow, type ComingWindow } from './window-words.ts';

/** A sign of building seen lately, and what it meant in the keeper's own records. */
export interface FreshSign {
  readonly sign: string;
  readonly night: Day;
  /** "round the bowl, 3 days ago" */
  readonly seen: string;
  readonly history?: string | undefined;
}

/** The season of one snake: the section of its page. */
export interface SeasonView {
  readonly night: Day;
  readonly stage?: StageInWords | undefined;
  /** Since when she is in that stage, where it began on a night. */
  readonly since?: Day | undefined;
  /** Records that cannot all be true, a question each. */
  readonly conflicts: readonly string[];
  /** The nearest first. */
  readonly windows: readonly ComingWindow[];
  /** How fast the largest follicle grows, or why nothing is said of it. */
  readonly trend?: string | undefined;
  readonly curve?: FollicleCurveView | undefined;
  readonly signs: readonly FreshSign[];
  /** Newest first. */
  readonly earlier: readonly EarlierSeason[];
}

/** Undefined when nothing is known of the animal. */
export function seasonView(id: AnimalId, picture: Picture): SeasonView | undefined {
  const animal = picture.animal(id);
  if (!animal) return undefined;
  const { night } = picture.facts;
  const standing = picture.standing(animal);
  const now = standing?.now;
  const { forecasts } = seasonOutlook(picture, animal);
  const growth = now && growthIn(now, picture);
  return {
    night,
    stage: standing && stageInWords(standing, night, animal.sex === 'male'),
    since: standing?.since,
    conflicts: standing?.conflicts ?? [],
    windows: forecasts.map((forecast) => comingWindow(forecast, night)),
    trend: growth && now.ovulation === undefined ? trendWords(growth) : undefined,
    curve: growth && follicleCurve(growth, now, forecasts, picture),
    signs: now ? freshSigns(now, picture) : [],
    earlier: earlierOf(animal, now, picture),
  };
}

function freshSigns(now: SeasonNow, picture: Picture): readonly FreshSign[] {
  if (now.ovulation || now.signs.length === 0) return [];
  const statistics = signStatistics(picture.experience());
  const { facts } = picture;
  return now.season.signs
    .filter(
      ({ sign }, i, all) =>
        now.signs.includes(sign) && all.findLastIndex((each) => each.sign === sign) === i,
    )
    .map(({ sign, at }) => {
      const night = facts.nightOf(at);
      const statistic = statistics.find((each) => each.sign === sign);
      const seen = `${sign}, ${agoWords(night, facts.night)}`;
      return { sign, night, seen, history: statistic && signLine(statistic).says };
    });
}

function earlierOf(
  animal: Animal,
  now: SeasonNow | undefined,
  { facts }: Picture,
): readonly EarlierSeason[] {
  if (animal.sex === 'male') return []; // What is kept of them is only the last lock.
  const over = animal.season && !now ? [...animal.pastSeasons, animal.season] : animal.pastSeasons;
  return over.toReversed().map((season) => earlierSeason(season, facts));
}
