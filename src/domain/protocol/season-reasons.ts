import type { ReasonsFor } from './protocol-value.ts';
import type { seasonValues } from './season-values.ts';

export const seasonReasons: ReasonsFor<typeof seasonValues> = {
  femaleFromG: {
    name: 'A female breeds from',
    why: 'A lighter female pays for a clutch with her health.',
    source: 'readySize',
  },
  femaleFromMonths: {
    name: 'A female breeds from the age of',
    why: 'A fat young female may have the mass and not the years.',
    source: 'readySize',
  },
  maleFromG: {
    name: 'A male breeds from',
    why: 'A lighter male is still growing; many prefer 700–800 g.',
    source: 'readySize',
  },
  maleFromMonths: {
    name: 'A male breeds from the age of',
    why: 'Males mature at 10–18 months.',
    source: 'readySize',
  },
  maleLossWatchShare: {
    name: 'Watch a male that lost',
    why: 'Lost since the season began: weigh him weekly.',
    source: 'maleLoss',
  },
  maleLossStopShare: {
    name: 'Rest a male that lost',
    why: 'Lost since the season began: he rests, and is fed.',
    source: 'maleLoss',
  },
  maleRestDays: {
    name: 'A male rests between visits',
    why: 'Between two visits of a male: to drink, rest and eat.',
    source: 'maleStay',
  },
  maleThinRestDays: {
    name: 'One that lost mass rests between visits',
    why: 'From the mass at which you watch him: he rests longer, and is offered food.',
    source: 'malesShared',
  },
  maleFemales: {
    name: 'A male has in a season at most',
    why: 'A male that is shared by many wears out, and fewer of them take.',
    source: 'malesShared',
  },
  youngMaleFemales: {
    name: 'In his first season at most',
    why: 'A male that never had a female before this season is still growing.',
    source: 'malesShared',
  },
  recoveredShare: {
    name: 'Recovered at',
    why: 'Of her mass before the last season: from here she has recovered.',
    source: 'recovery',
  },
  recoveringDays: {
    name: 'Recovering after eggs for',
    why: 'Without weights, she counts as recovering for this long after laying.',
    source: 'recovery',
  },
  firstScanMonth: {
    name: 'First scan of the season in',
    why: 'The first scan of the season is due from the 25th of this month, to March.',
    source: 'scanCadence',
  },
  scanSmallDays: {
    name: 'Scan small follicles every',
    why: 'Between scans while the largest follicle is small.',
    source: 'scanCadence',
  },
  scanGrowingDays: {
    name: 'Scan growing follicles every',
    why: 'Between scans once follicles are growing.',
    source: 'scanCadence',
  },
  scanLargeDays: {
    name: 'Scan large follicles every',
    why: 'Between scans once the largest follicle is large.',
    source: 'scanCadence',
  },
  pairFromMm: {
    name: 'Pair from a follicle of',
    why: 'Largest follicle from which a male goes in.',
    source: 'pairFrom',
  },
  largeFromMm: {
    name: 'A follicle is large from',
    why: 'From this size a follicle is called large.',
    source: 'largeFollicle',
  },
  preLayFromMm: {
    name: 'A shed may be pre-lay from a follicle of',
    why: 'After a scan this large, a shed may be the pre-lay shed, and a refusal a good sign.',
    source: 'preLayShed',
  },
  dailyLooksFromMm: {
    name: 'Look every day from a follicle of',
    why: 'From here ovulation may come any day, and lasts about one.',
    source: 'ovulationLook',
  },
  pairStopMm: {
    name: 'No more pairing from a follicle of',
    why: 'From here she is about to ovulate or has: no more males.',
    source: 'pairFrom',
  },
  pairAgainDays: {
    name: 'Pair her again after',
    why: 'From one visit to the next while she builds.',
    source: 'pairAgain',
  },
  mealToPairingDays: {
    name: 'From a meal to pairing',
    why: 'Between a meal and a visit, for both: mating may bring the meal up.',
    source: 'pairing',
  },
  signsFreshDays: {
    name: 'A sign counts for',
    why: 'How long a sign of building says something about tonight.',
    source: 'seasonSigns',
  },
};
