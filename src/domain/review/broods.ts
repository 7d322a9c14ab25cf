import { DAY_MS, instantMs } from '../core/calendar.ts';
import type { AnimalId, ClutchId, IncubatorId } from '../core/ids.ts';
import { eggCounts, type EggCounts } from '../clutch/eggs.ts';
import { relativeMasses, type LayingMasses } from '../clutch/masses.ts';
import { firstPip } from '../clutch/first-pip.ts';
import type { Picture } from '../picture/picture.ts';
import { seasonYears } from '../season/season-years.ts';
import { spanOf } from '../season/span.ts';
import type { Animal } from '../state/animal.ts';
import type { Clutch } from '../state/clutch.ts';
import { ownInterval, type OwnInterval } from '../windows/own-interval.ts';
import type { AnimalPart } from './animal-part.ts';
import type { Cycle } from './cycles.ts';

/** Young that can be followed are counted once they are this old. Source: reviewCounts. */
export const FOLLOWED_DAYS = 56;
/** A weight longer before the eggs is of another female, so to speak. Source: reviewCounts. */
export const WEIGHED_BEFORE_DAYS = 30;

/** One that came out and was given a name. */
export interface Youngster {
  readonly sex: Animal['sex'];
  /** It hatched long enough ago to be judged. */
  readonly isOld: boolean;
  /** Undefined where it left before it was old enough. */
  readonly lived?: boolean | undefined;
  readonly established: boolean;
}

/** One clutch, as far as a look back counts it. */
export interface Brood {
  readonly clutch: ClutchId;
  readonly dam: AnimalId;
  readonly season: string;
  /** The only male that may be its father. */
  readonly father?: AnimalId | undefined;
  /** The last it stood in; undefined where she kept them warm, or nobody wrote it down. */
  readonly incubator?: IncubatorId | undefined;
  readonly counts: EggCounts;
  /** The end is on record: all out, none left, or the young were counted. */
  readonly isTold: boolean;
  readonly beforeShare?: number | undefined;
  readonly afterShare?: number | undefined;
  /** What she lost at laying, of her weight before. */
  readonly lostShare?: number | undefined;
  readonly pip?: OwnInterval | undefined;
  readonly young: readonly Youngster[];
}

export function broodOf(
  clutch: Clutch,
  cycle: Cycle | undefined,
  parts: ReadonlyMap<AnimalId, AnimalPart>,
  picture: Picture,
): Brood | undefined {
  const { laid, dam } = clutch;
  if (!laid || !dam) return undefined;
  const { nightOf } = picture.facts;
  const span = spanOf(laid, nightOf);
  const pip = firstPip(clutch);
  return {
    clutch: clutch.id,
    dam,
    season: seasonYears(span.last),
    father: fatherOf(clutch, cycle),
    incubator: clutch.stands.at(-1)?.incubator,
    counts: eggCounts(clutch),
    isTold: isTold(clutch),
    ...sharesOf(parts.get(dam)?.masses.get(clutch.id) ?? {}),
    pip: pip && ownInterval(dam, span, spanOf(pip, nightOf)),
    young: clutch.hatched.flatMap(({ animal, at }) => {
      const each = picture.animal(animal);
      const isEstablished = parts.get(animal)?.established === true;
      return each ? [youngster(each, instantMs(at), isEstablished, picture)] : [];
    }),
  };
}

const isTold = ({ closed, counted }: Clutch): boolean =>
  counted !== undefined || closed?.why === 'all out' || closed?.why === 'none left alive';

function sharesOf({ before, afterG, clutchG }: LayingMasses) {
  const near = before && before.days <= WEIGHED_BEFORE_DAYS ? before : undefined;
  const relative = relativeMasses({ before: near, afterG, clutchG });
  return {
    beforeShare: relative.find(({ of }) => of === 'her weight before laying')?.share,
    afterShare: relative.find(({ of }) => of === 'her weight after laying')?.share,
    lostShare: near && afterG !== undefined ? (near.massG - afterG) / near.massG : undefined,
  };
}

/** As stated, else as who was in with her; of several nobody is told apart. */
function fatherOf({ paternity }: Clutch, cycle: Cycle | undefined): AnimalId | undefined {
  const males = paternity
    ? paternity.sires.map(({ male }) => male)
    : (cycle?.visits ?? []).map(({ male }) => male);
  const [only, other] = new Set(males);
  if (other !== undefined || only === 'unknown' || only === 'none') return undefined;
  return only;
}

function youngster(
  { sex, gone }: Animal,
  hatchedMs: number,
  established: boolean,
  { facts }: Picture,
): Youngster {
  const days = (ms: number) => (ms - hatchedMs) / DAY_MS;
  const isOld = days(facts.nowMs) >= FOLLOWED_DAYS;
  const leftEarly = gone && days(instantMs(gone.at)) < FOLLOWED_DAYS;
  const lived = leftEarly ? (gone.how === 'died' ? false : undefined) : true;
  return { sex, isOld, lived: isOld ? lived : undefined, established };
}
