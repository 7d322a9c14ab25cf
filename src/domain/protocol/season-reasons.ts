import type { ReasonsFor } from './protocol-value.ts';
import type { seasonValues } from './season-values.ts';

export const seasonReasons: ReasonsFor<typeof seasonValues> = {
  femaleFromG: {
    why: 'A lighter female pays for a clutch with her health.',
    source: 'readySize',
  },
  femaleFromMonths: {
    why: 'A fat young female may have the mass and not the years.',
    source: 'readySize',
  },
  maleFromG: {
    why: 'A lighter male is still growing; many prefer 700–800 g.',
    source: 'readySize',
  },
  maleFromMonths: {
    why: 'Males mature at 10–18 months.',
    source: 'readySize',
  },
  maleLossWatchShare: {
    why: 'Lost since the season began: weigh him weekly.',
    source: 'maleLoss',
  },
  maleLossStopShare: {
    why: 'Lost since the season began: he rests, and is fed.',
    source: 'maleLoss',
  },
  maleRestDays: {
    why: 'Between two visits of a male: to drink, rest and eat.',
    source: 'maleStay',
  },
  maleThinRestDays: {
    why: 'From the mass at which you watch him: he rests longer, and is offered food.',
    source: 'malesShared',
  },
  maleFemales: {
    why: 'A male that is shared by many wears out, and fewer of them take.',
    source: 'malesShared',
  },
  youngMaleFemales: {
    why: 'A male that never had a female before this season is still growing.',
    source: 'malesShared',
  },
  recoveredShare: {
    why: 'Of her mass before the last season: from here she has recovered.',
    source: 'recovery',
  },
  recoveringDays: {
    why: 'Without weights, she counts as recovering for this long after laying.',
    source: 'recovery',
  },
  firstScanMonth: {
    why: 'The first scan of the season is due from the 25th of this month, to March.',
    source: 'scanCadence',
  },
  scanSmallDays: {
    why: 'Between scans while the largest follicle is small.',
    source: 'scanCadence',
  },
  scanGrowingDays: {
    why: 'Between scans once follicles are growing.',
    source: 'scanCadence',
  },
  scanLargeDays: {
    why: 'Between scans once the largest follicle is large.',
    source: 'scanCadence',
  },
  pairFromMm: {
    why: 'Largest follicle from which a male goes in.',
    source: 'pairFrom',
  },
  largeFromMm: {
    why: 'From this size a follicle is called large.',
    source: 'largeFollicle',
  },
  preLayFromMm: {
    why: 'After a scan this large, a shed may be the pre-lay shed, and a refusal a good sign.',
    source: 'preLayShed',
  },
  dailyLooksFromMm: {
    why: 'From here ovulation may come any day, and lasts about one.',
    source: 'ovulationLook',
  },
  pairStopMm: {
    why: 'From here she is about to ovulate or has: no more males.',
    source: 'pairFrom',
  },
  pairAgainDays: {
    why: 'From one visit to the next while she builds.',
    source: 'pairAgain',
  },
  mealToPairingDays: {
    why: 'Between a meal and a visit, for both: mating may bring the meal up.',
    source: 'pairing',
  },
  signsFreshDays: {
    why: 'How long a sign of building says something about tonight.',
    source: 'seasonSigns',
  },
};
