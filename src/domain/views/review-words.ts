import type { Lag } from '../review/cycles.ts';
import type { ShareName } from '../review/tally.ts';
import type { SourceId } from '../sources.ts';

/** What a figure is, what it is a share of, and how it is counted. */
export interface FigureWords {
  readonly name: string;
  /** Of what: "of 12 paired females". */
  readonly of: string;
  readonly how: string;
  readonly source: SourceId;
}

export const shareWords: Readonly<Record<ShareName, FigureWords>> = {
  ovulatedOfPaired: {
    name: 'Ovulated',
    of: 'paired seasons',
    how: 'Seasons with an ovulation on record, or with a pre-lay shed or eggs that show it, by all seasons in which she had a male with her or was seen locked. Each female counts once a season; seasons still under way do not count.',
    source: 'reviewCounts',
  },
  laidOfPaired: {
    name: 'Laid',
    of: 'paired seasons',
    how: 'Seasons with eggs, by all seasons in which she had a male with her or was seen locked. Seasons still under way do not count.',
    source: 'reviewCounts',
  },
  laidOfOvulated: {
    name: 'Laid after ovulation',
    of: 'seasons with an ovulation',
    how: 'Seasons with eggs, by all seasons with an ovulation on record or shown by a shed or eggs, paired or not. Under nine in ten, follicles went back or an ovulation was taken for one.',
    source: 'reviewCounts',
  },
  lockedOfVisits: {
    name: 'Visits with a lock',
    of: 'visits',
    how: 'Visits of a male during which a lock was seen, by all visits. A lock nobody saw does not count.',
    source: 'reviewCounts',
  },
  goodOfEggs: {
    name: 'Good eggs',
    of: 'eggs laid',
    how: 'G / E: eggs that were good when laid, by all that were laid: good, slugs and unsure. Clutches nobody counted are left out.',
    source: 'reviewCounts',
  },
  slugsOfEggs: {
    name: 'Slugs',
    of: 'eggs laid',
    how: 'Slugs found at laying and at later looks, by all eggs laid. An egg can be unsure when laid, so good and slugs need not make up the whole.',
    source: 'reviewCounts',
  },
  hatchedOfGood: {
    name: 'Hatched',
    of: 'good eggs',
    how: 'H / G: young that came out alive, by eggs good when laid, of clutches whose end is on record. Eggs given away, or whose end nobody wrote down, are left out.',
    source: 'reviewCounts',
  },
  hatchedOfEggs: {
    name: 'Hatched, of all laid',
    of: 'eggs laid',
    how: 'H / E: young that came out alive, by all eggs laid, of clutches whose end is on record.',
    source: 'reviewCounts',
  },
  deadOfGood: {
    name: 'Died in the shell',
    of: 'good eggs',
    how: 'Eggs found dead at a look, by eggs good when laid, of clutches whose end is on record.',
    source: 'reviewCounts',
  },
  livedOfYoung: {
    name: 'Alive at 8 weeks',
    of: 'named young followed',
    how: 'Young with a name of their own that were alive eight weeks after hatching, by those that are that old and did not leave before.',
    source: 'reviewCounts',
  },
  establishedOfYoung: {
    name: 'Established',
    of: 'named young 8 weeks old',
    how: 'Young that once took as many meals in a row without help as your protocol asks for, by all with a name that hatched at least eight weeks ago. One that left sooner counts as not established.',
    source: 'established',
  },
  malesOfYoung: {
    name: 'Males',
    of: 'sexed young',
    how: 'Males by all named young that were sexed. Half is to be expected.',
    source: 'reviewCounts',
  },
  refusedOfOffers: {
    name: 'Refused',
    of: 'offers answered',
    how: 'Meals refused, by all offers with a known end. A meal left and not settled, and one given with help, do not count; eaten in part counts as eaten.',
    source: 'reviewCounts',
  },
};

export const lagWords: Readonly<Record<Lag, Omit<FigureWords, 'of'>>> = {
  'ovulation to shed': {
    name: 'Ovulation to pre-lay shed',
    how: 'Whole days between the two. An ovulation worked out afterwards says nothing of it.',
    source: 'seasonLinks',
  },
  'shed to lay': {
    name: 'Pre-lay shed to eggs',
    how: 'Whole days between the two.',
    source: 'seasonLinks',
  },
  'ovulation to lay': {
    name: 'Ovulation to eggs',
    how: 'Whole days between the two. The protocol has no number of its own for both steps together.',
    source: 'seasonLinks',
  },
  'lay to pip': {
    name: 'Eggs to first pip',
    how: 'Whole days as they were. The usual and your own window are of an incubator at 31.5 °C: warmth of each night is allowed for.',
    source: 'incubationModel',
  },
};

/** Measures of clutches. */
export type SpreadName = 'eggs' | 'good' | 'visits' | 'beforeShare' | 'afterShare' | 'lostShare';

export const spreadWords: Readonly<Record<SpreadName, FigureWords & { readonly unit: string }>> = {
  eggs: {
    name: 'Clutch size',
    of: 'clutches counted',
    unit: 'eggs',
    how: 'E / clutches: all eggs laid, good, slugs and unsure.',
    source: 'reviewCounts',
  },
  good: {
    name: 'Good eggs in a clutch',
    of: 'clutches counted',
    unit: 'eggs',
    how: 'G / clutches: eggs good when laid.',
    source: 'reviewCounts',
  },
  visits: {
    name: 'Visits before eggs',
    of: 'paired seasons with eggs',
    unit: 'visits',
    how: 'Visits of males in a season that ended with eggs. Those without a visit on record are left out.',
    source: 'reviewCounts',
  },
  beforeShare: {
    name: 'Relative clutch mass, of her weight before',
    of: 'clutches weighed',
    unit: '%',
    how: 'Mass of the clutch by her last weight before laying, not older than 30 days. The same clutch is a larger share of her weight after it.',
    source: 'relativeClutchMass',
  },
  afterShare: {
    name: 'Relative clutch mass, of her weight after',
    of: 'clutches weighed',
    unit: '%',
    how: 'Mass of the clutch by her weight after laying, of the same or the next night.',
    source: 'relativeClutchMass',
  },
  lostShare: {
    name: 'Lost at laying, of her weight before',
    of: 'females weighed before and after',
    unit: '%',
    how: 'Her last weight before laying, not older than 30 days, less her weight after it, by the weight before.',
    source: 'relativeClutchMass',
  },
};
