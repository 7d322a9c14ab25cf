import type { ReasonsFor } from './protocol-value.ts';
import type { follicleValues } from './follicle-values.ts';

export const follicleReasons: ReasonsFor<typeof follicleValues> = {
  follicleErrorShare: {
    name: 'Error of a scan',
    why: 'One SD of a size on ultrasound, as a share of the size. Repeat scans of one night correct it.',
    source: 'follicleError',
  },
  follicleErrorLeastMm: {
    name: 'Least error of a scan',
    why: 'No ultrasound size is better than this (one SD), however small the follicle.',
    source: 'follicleError',
  },
  follicleErrorWorth: {
    name: 'Weight of the assumed error',
    why: 'So many repeat scans weigh as much as the assumed error.',
    source: 'follicleModel',
  },
  feltErrorShare: {
    name: 'Error of a felt class',
    why: 'One SD of a felt class, as a share of the size it stands for.',
    source: 'follicleModel',
  },
  feltSmallMm: {
    name: 'Small bumps are',
    why: 'What small bumps under the fingers stand for. Less than this is not felt.',
    source: 'feltSizes',
  },
  feltRoundMm: {
    name: 'Round lumps are',
    why: 'What round lumps under the fingers stand for.',
    source: 'feltSizes',
  },
  feltLargeMm: {
    name: 'Large lumps are',
    why: 'What large lumps under the fingers stand for.',
    source: 'feltSizes',
  },
  feltEggMm: {
    name: 'Egg-like lumps are',
    why: 'What egg-like lumps under the fingers stand for, at the least.',
    source: 'feltSizes',
  },
  follicleSeenFromMm: {
    name: 'None seen means less than',
    why: 'Where ultrasound shows none, the largest follicle is taken to be smaller than this.',
    source: 'follicleModel',
  },
  follicleGrowsFromMm: {
    name: 'Growing from',
    why: 'A smaller follicle rests: it is not growing yet, or has shrunk back, and no line runs through it.',
    source: 'follicleStages',
  },
  follicleSwingMm: {
    name: 'Change in a week',
    why: 'How far a size may move in a week, up or down (one SD), before any scan has said so.',
    source: 'follicleModel',
  },
  follicleWithinDays: {
    name: 'Not this season after',
    why: 'A size not reached within so many days is not reached this season.',
    source: 'follicleStages',
  },
  follicleReachChance: {
    name: 'Chance needed for a window',
    why: 'A window is shown only where her scans make it this likely that she gets there at all.',
    source: 'follicleModel',
  },
  resorbingApartDays: {
    name: 'Falling scans lie apart by',
    why: 'Two smaller scans this far apart suggest that she is resorbing; one never does.',
    source: 'resorbing',
  },
};
