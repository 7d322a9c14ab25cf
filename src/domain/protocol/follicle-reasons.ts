import type { ReasonsFor } from './protocol-value.ts';
import type { follicleValues } from './follicle-values.ts';

export const follicleReasons: ReasonsFor<typeof follicleValues> = {
  follicleErrorShare: {
    why: 'One SD of a size on ultrasound, as a share of the size. Repeat scans of one night correct it.',
    source: 'follicleError',
  },
  follicleErrorLeastMm: {
    why: 'No ultrasound size is better than this (one SD), however small the follicle.',
    source: 'follicleError',
  },
  follicleErrorWorth: {
    why: 'So many repeat scans weigh as much as the assumed error.',
    source: 'follicleModel',
  },
  feltErrorShare: {
    why: 'One SD of a felt class, as a share of the size it stands for.',
    source: 'follicleModel',
  },
  feltSmallMm: {
    why: 'What small bumps under the fingers stand for. Less than this is not felt.',
    source: 'feltSizes',
  },
  feltRoundMm: {
    why: 'What round lumps under the fingers stand for.',
    source: 'feltSizes',
  },
  feltLargeMm: {
    why: 'What large lumps under the fingers stand for.',
    source: 'feltSizes',
  },
  feltEggMm: {
    why: 'What egg-like lumps under the fingers stand for, at the least.',
    source: 'feltSizes',
  },
  follicleSeenFromMm: {
    why: 'Where ultrasound shows none, the largest follicle is taken to be smaller than this.',
    source: 'follicleModel',
  },
  follicleGrowsFromMm: {
    why: 'A smaller follicle rests: it is not growing yet, or has shrunk back, and no line runs through it.',
    source: 'follicleStages',
  },
  follicleSwingMm: {
    why: 'How far a size may move in a week, up or down (one SD), before any scan has said so.',
    source: 'follicleModel',
  },
  follicleWithinDays: {
    why: 'A size not reached within so many days is not reached this season.',
    source: 'follicleStages',
  },
  follicleReachChance: {
    why: 'A window is shown only where her scans make it this likely that she gets there at all.',
    source: 'follicleModel',
  },
  resorbingApartDays: {
    why: 'Two smaller scans this far apart suggest that she is resorbing; one never does.',
    source: 'resorbing',
  },
};
