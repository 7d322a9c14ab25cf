import type { AnimalId } from '../src/domain/core/ids.ts';
import type {
  PlanFemale,
  PlanMale,
  PlanProblem,
  Visit,
  WantedPair,
} from '../src/domain/rotation/plan-problem.ts';
import { chanceFrom } from './random.ts';

// An invented season of males and females, as it really is: what they eat, when they are in blue, what
// the males lose, when the females are ready and when they ovulate. Chance is drawn for each snake and
// night by itself, so that two ways of planning meet the same world. The numbers are invented within
// common practice, no source.

const STAY = 3;
const REST = 4;
const THIN_REST = 7;
const MEAL_GAP = 3;
const PAUSE = 9;
const HORIZON = 14;
const WATCH = 0.08;
const STOP = 0.12;
const BLUE_NIGHTS = 10;
/** Nights ahead that the keeper knows his evenings. */
export const SURE_AHEAD = HORIZON + STAY;

interface Snake {
  readonly id: AnimalId;
  ate: number;
  mealOn: number;
  blueUntil: number;
}

interface Male extends Snake {
  readonly mostFemales: number;
  lost: number;
  cameHome: number;
  readonly had: Set<AnimalId>;
  readonly begun: number[];
}

interface Female extends Snake {
  readonly readyFrom: number;
  readonly ovulatesOn: number;
  ended: number;
}

export interface RotationWorld {
  readonly nights: number;
  /** Nobody is there, known before. */
  isAway(night: number): boolean;
  /** Nobody came after all: nothing is done that evening. */
  isMissed(night: number): boolean;
  isReady(female: AnimalId, night: number): boolean;
  readonly females: readonly AnimalId[];
  /** Meals and sheds of an evening, for those that are at home. */
  live(night: number, out: ReadonlySet<AnimalId>, isHome: boolean): void;
  begin(visit: Visit): void;
  end(visit: Visit, night: number): void;
  /** The facts as the keeper knows them; nights in it are counted from that one. */
  problem(night: number, stays: readonly Visit[], kept: readonly Visit[]): PlanProblem;
}

const idOf = (kind: string, n: number): AnimalId =>
  `a-TR1A${kind}${String(n).padStart(7, '0')}DEM01` as AnimalId;

const find = <Each extends Snake>(list: readonly Each[], id: AnimalId): Each => {
  const found = list.find((each) => each.id === id);
  if (!found) throw new Error(`No ${id} in this world.`);
  return found;
};

export function openRotationWorld(
  seed: number,
  {
    males: maleCount,
    females: femaleCount,
    nights,
  }: Readonly<Record<'males' | 'females' | 'nights', number>>,
): RotationWorld {
  const cast = chanceFrom(seed);
  const at = (who: number, night: number) => chanceFrom(seed * 7_919 + who * 1_009 + night * 31);
  const males = Array.from({ length: maleCount }, (_, i): Male => ({
    id: idOf('M', i),
    mostFemales: i % 6 === 5 ? 2 : 6,
    ate: -cast.whole(1, 12),
    mealOn: cast.whole(0, 13),
    blueUntil: 0,
    lost: cast.between(0, 0.05),
    cameHome: -20,
    had: new Set(),
    begun: [],
  }));
  const females = Array.from({ length: femaleCount }, (_, i): Female => {
    const readyFrom = cast.whole(-20, 30);
    return {
      id: idOf('F', i),
      ate: -cast.whole(1, 7),
      mealOn: cast.whole(0, 7),
      blueUntil: 0,
      readyFrom,
      ovulatesOn: readyFrom + cast.whole(30, 60),
      ended: -40,
    };
  });
  const wanted = females.flatMap((female, i): readonly WantedPair[] => {
    const first = cast.whole(0, maleCount - 1);
    return Array.from({ length: 1 + (i % 3) }, (_, choice) => ({
      male: males[(first + choice * 5) % maleCount]?.id ?? idOf('M', 0),
      female: female.id,
      choice,
      unreasoned: cast.happens(0.03) ? ['Close kin.'] : [],
      barred: false,
    }));
  });
  const evenings = Array.from({ length: nights + SURE_AHEAD }, () => ({
    away: cast.happens(0.12),
    missed: cast.happens(0.08),
  }));
  const all = [...males, ...females];

  return {
    nights,
    females: females.map(({ id }) => id),
    isAway: (night) => evenings[night]?.away === true,
    isMissed: (night) => evenings[night]?.missed === true,
    isReady(id, night) {
      const { readyFrom, ovulatesOn } = find(females, id);
      return night >= readyFrom && night < ovulatesOn;
    },
    live(night, out, isHome) {
      for (const [i, snake] of all.entries()) {
        const chance = at(i, night);
        const isMale = i < maleCount;
        if (night >= snake.blueUntil && chance.happens(1 / 70))
          snake.blueUntil = night + BLUE_NIGHTS;
        const isDue = night >= snake.mealOn && night >= snake.blueUntil && !out.has(snake.id);
        const male = isMale ? males[i] : undefined;
        if (male) male.lost += 0.0008;
        if (!isHome || !isDue) continue;
        snake.mealOn = night + (isMale ? 14 : 8);
        if (!chance.happens(isMale ? 0.45 : 0.7)) continue;
        snake.ate = night;
        if (male) male.lost = Math.max(0, male.lost - 0.02);
      }
    },
    begin({ male, female, in: night }) {
      const he = find(males, male);
      he.had.add(female);
      he.begun.push(night);
      he.lost += 0.006;
    },
    end({ male, female }, night) {
      find(males, male).cameHome = night;
      find(females, female).ended = night;
    },
    problem: (night, stays, kept) => {
      const from = (each: Visit): Visit => ({
        ...each,
        in: each.in - night,
        out: each.out - night,
      });
      const facts = (snake: Snake) => ({
        id: snake.id,
        ate: snake.ate - night,
        mealDue: Math.max(0, snake.mealOn - night),
        clearFrom: snake.blueUntil > night ? snake.blueUntil - night : undefined,
      });
      return {
        limits: {
          nights: HORIZON,
          stayNights: STAY,
          mealToPairingNights: MEAL_GAP,
          betweenVisitsNights: PAUSE,
        },
        males: males.map((male): PlanMale => ({
          ...facts(male),
          cameHome: male.cameHome - night,
          restNights: male.lost >= WATCH ? THIN_REST : REST,
          stopped: male.lost >= STOP ? 'He lost too much.' : undefined,
          lossOfStop: Math.min(1, male.lost / STOP),
          lateVisits: male.begun.filter((begun) => begun > night - 28).length,
          had: [...male.had],
          mostFemales: male.mostFemales,
        })),
        females: females.map((female): PlanFemale => {
          const isOpen = night >= female.readyFrom && night < female.ovulatesOn;
          const left = female.ovulatesOn - night;
          return {
            ...facts(female),
            window: isOpen ? { from: 0, before: Infinity } : undefined,
            visitEnded: female.ended - night,
            overdueNights: Math.max(0, night - Math.max(female.readyFrom, female.ended + PAUSE)),
            haste: left < 10 ? 3 : left < 25 ? 2 : 1,
          };
        }),
        wanted,
        underWay: stays.map(from),
        pins: [],
        away: evenings.flatMap(({ away }, each) => (away && each >= night ? [each - night] : [])),
        kept: kept.map(from),
      };
    },
  };
}
