import { instantMs, type Moment } from '../core/calendar.ts';
import { momentWords } from '../core/day-words.ts';
import { codeOf } from '../commands/new-labels.ts';
import type { LabelCode } from '../core/code.ts';
import type { AnimalId, ClutchId, IncubatorId, TubId } from '../core/ids.ts';
import { wilsonInterval, type ShareInterval } from '../core/wilson.ts';
import { eggByEgg } from '../clutch/eggs.ts';
import {
  massBalance,
  massesAround,
  relativeMasses,
  type Balance,
  type LayingMasses,
  type RelativeMass,
} from '../clutch/masses.ts';
import { clutchesIn, incubatorsIn } from '../clutch/clutches-in.ts';
import { ownPips } from '../clutch/own-pips.ts';
import type { Picture } from '../picture/picture.ts';
import type { Animal } from '../state/animal.ts';
import type { Clutch } from '../state/clutch.ts';
import type { Incubator } from '../state/incubator.ts';
import { mealsInRow } from '../prey/established.ts';
import { clutchFathers, isSameSet, malesAmong, possibleFathers } from '../rotation/paternity.ts';
import { sireWords } from './clutch-words.ts';
import { fatherOffers, type FatherOffer } from './father-offers.ts';
import { clutchLine, type ClutchLine } from './hatchery-view.ts';
import { recordLine, type RecordLine } from './record-line.ts';

/** So many of so many, and what the share may be in the long run. */
export interface Rate {
  readonly hits: number;
  readonly of: number;
  readonly interval: ShareInterval;
}

export interface Hatchling {
  readonly id: AnimalId;
  readonly name: string;
  readonly sex: Animal['sex'];
  readonly defects: readonly string[];
  /** Unaided meals in a row, and how many make it established. */
  readonly meals: number;
  readonly established: boolean;
  readonly gone?: string | undefined;
}

export interface ClutchView extends ClutchLine {
  readonly damId?: AnimalId | undefined;
  readonly code?: LabelCode | undefined;
  readonly foundAt?: Moment | undefined;
  readonly notBefore?: Moment | undefined;
  /** The last look for pips that found none. */
  readonly lastLook?: Moment | undefined;
  readonly clutchG?: number | undefined;
  readonly beforeG?: number | undefined;
  readonly beforeDays?: number | undefined;
  readonly afterG?: number | undefined;
  readonly relative: readonly RelativeMass[];
  readonly balance?: Balance | undefined;
  readonly goodRate?: Rate | undefined;
  readonly hatchRate?: Rate | undefined;
  /** As they were stated, else as the records point at them; a few words each. */
  readonly fathers: { readonly isStated: boolean; readonly says: readonly string[] };
  /** All whom the records name, to state the fathers from. */
  readonly offers: readonly FatherOffer[];
  /** Young on record that have the clutch’s fathers for theirs, and are to go with them. */
  readonly followers: readonly AnimalId[];
  readonly letters: readonly (readonly [egg: string, is: string])[];
  readonly incubators: readonly { readonly id: IncubatorId; readonly name: string }[];
  readonly powerCuts: readonly string[];
  readonly hatchlings: readonly Hatchling[];
  readonly establishedMeals: number;
  /** The name the next one is offered: "27-003C". */
  readonly nextName: string;
  /** Empty tubs, smallest rack first in walking order. */
  readonly freeTubs: readonly { readonly id: TubId; readonly position: string }[];
  readonly isWhole: boolean;
  readonly history: readonly RecordLine[];
}

const rate = (hits: number, of: number | undefined): Rate | undefined =>
  of === undefined || of === 0 || hits > of
    ? undefined
    : { hits, of, interval: wilsonInterval(hits, of) };

const MOST_FREE_TUBS = 12;

export function clutchView(id: ClutchId, picture: Picture): ClutchView | undefined {
  const clutch = picture.ledger.subjects.get(id) as Clutch | undefined;
  if (!clutch) return undefined;
  const { facts, ledger } = picture;
  const { protocol } = facts;
  const line = clutchLine(clutch, picture, ownPips(picture));
  const dam = clutch.dam && picture.animal(clutch.dam);
  const { laid } = clutch;
  const masses: LayingMasses = laid ? massesAround(laid, dam?.weighings ?? [], facts.nightOf) : {};
  const { counts } = line;
  const fathers = clutchFathers(clutch, picture);
  return {
    ...line,
    damId: clutch.dam,
    code: codeOf(id, picture),
    foundAt: laid?.at,
    notBefore: laid?.notBefore,
    lastLook: clutch.hatching.findLast(({ seen }) => seen === 'nothing yet')?.at,
    clutchG: masses.clutchG,
    beforeG: masses.before?.massG,
    beforeDays: masses.before?.days,
    afterG: masses.afterG,
    relative: relativeMasses(masses),
    balance: massBalance(masses, protocol.clutchBalanceShare),
    goodRate: rate(counts.good ?? 0, counts.laid),
    hatchRate: clutch.closed && rate(counts.out, counts.good),
    fathers: {
      isStated: fathers.isStated,
      says: fathers.sires.map((sire) => sireWords(sire, facts.nameOf)),
    },
    offers: dam ? fatherOffers(possibleFathers(dam, picture, id), picture) : [],
    followers: followersOf(clutch, malesAmong(fathers.sires), picture),
    letters: [...eggByEgg(clutch)],
    incubators: incubatorsIn(picture).flatMap(({ id: each, name, retired }) =>
      retired ? [] : [{ id: each, name }],
    ),
    powerCuts: cutsOf(clutch, picture),
    hatchlings: clutch.hatched.flatMap(({ animal, defects }) => {
      const each = picture.animal(animal);
      return each ? [hatchling(each, defects, protocol.establishedMeals)] : [];
    }),
    establishedMeals: protocol.establishedMeals,
    nextName: nextName(clutch, picture),
    freeTubs: picture
      .walk()
      .filter((tub) => picture.ownersOf(tub.id).length === 0 && picture.inTub(tub.id).length === 0)
      .slice(0, MOST_FREE_TUBS)
      .map((tub) => ({ id: tub.id, position: picture.position(tub.id) ?? '' })),
    isWhole: ledger.hasHistory,
    history: ledger
      .history(id)
      .toReversed()
      .map((event) =>
        recordLine(
          event,
          picture,
          ledger.stands(event.id) ? undefined : (ledger.reasonStruck(event.id) ?? 'replaced'),
        ),
      ),
  };
}

function hatchling(animal: Animal, defects: readonly string[], most: number): Hatchling {
  const meals = mealsInRow(animal);
  return {
    id: animal.id,
    name: animal.name,
    sex: animal.sex,
    defects,
    meals,
    established: meals >= most,
    gone: animal.gone?.how,
  };
}

const followersOf = (
  { hatched, dam }: Clutch,
  males: readonly AnimalId[],
  picture: Picture,
): readonly AnimalId[] =>
  hatched.flatMap(({ animal }) => {
    const young = picture.animal(animal);
    return young && young.dam === dam && isSameSet(young.sires, males) ? [animal] : [];
  });

/** Times without heat while the box stood in that incubator. */
function cutsOf(clutch: Clutch, { ledger }: Picture): string[] {
  return clutch.stands.flatMap(({ incubator: id, at }, n) => {
    const incubator = ledger.subjects.get(id) as Incubator | undefined;
    const until = clutch.stands[n + 1]?.at;
    return (incubator?.failures ?? [])
      .filter(
        (failure) =>
          instantMs(failure.from) >= instantMs(at) &&
          (until === undefined || instantMs(failure.from) < instantMs(until)),
      )
      .map(({ from, until: end, lowestC }) => {
        const low = lowestC === undefined ? '' : `, ${lowestC} °C at the lowest`;
        const back = end ? ` to ${momentWords(end)}` : ', not back yet';
        return `No heat from ${momentWords(from)}${back}${low}`;
      });
  });
}

const LETTERS = 'ABCDEFGHIJKLMNOPQRST';

/** Year and place of the clutch in it, with the next letter: "27-003C". */
export function nextName(clutch: Clutch, picture: Picture): string {
  const year = (clutch.laid?.at ?? picture.facts.night).slice(0, 4);
  const ofYear = clutchesIn(picture)
    .flatMap(({ id, laid }) => (laid?.at.startsWith(year) ? [{ id, ms: instantMs(laid.at) }] : []))
    .toSorted((a, b) => a.ms - b.ms);
  const number = ofYear.findIndex(({ id }) => id === clutch.id) + 1;
  return `${year.slice(2)}-${String(number).padStart(3, '0')}${LETTERS.charAt(clutch.hatched.length)}`;
}
