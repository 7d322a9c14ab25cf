import { isCoolMonth } from './nights.ts';
import { follicleMm, isGravid, nearsOvulation } from './season.ts';
import { settlesInTime } from './staging.ts';
import type { Snake, Visit, World } from './world.ts';

// Stays of 1 to 3 nights, 4 to 7 nights of rest for him, two to three weeks for her, no pairing
// within 3 nights of a meal [common practice, no source].
const LONGEST_STAY = 3;
const NIGHTS_SINCE_MEAL = 3;
const STOP_MM = 42;

/** November to late March, as nights after the first of September. */
const isPairingTime = (sinceSeptember: number): boolean =>
  sinceSeptember >= 61 && sinceSeptember <= 205;

/** Each female has two males on her list. */
const isOnHisList = (male: Snake, female: Snake, males: number): boolean => {
  const { index } = female.casting;
  return [index % males, (index * 2 + 1) % males].includes(male.casting.index);
};

const isFree = (snake: Snake, { night, toGo }: World): boolean =>
  !snake.visit &&
  !snake.opaque &&
  !snake.left &&
  night >= snake.restsUntil &&
  night >= snake.mealOn + NIGHTS_SINCE_MEAL &&
  snake.bringsUpOn <= night &&
  !snake.halfMeal &&
  settlesInTime(snake.casting.closing, toGo, LONGEST_STAY + 1);

const wantsMale = (female: Snake, world: World): boolean =>
  isFree(female, world) &&
  female.massG >= 1500 &&
  female.season?.paired === true &&
  follicleMm(female.season, world.night) < STOP_MM &&
  !isGravid(female, world.night) &&
  !nearsOvulation(female, world.night);

function putIn(male: Snake, female: Snake, nights: number, world: World): void {
  const { book, chance, night, nursery } = world;
  const place = female.tub.place;
  book.write({ type: 'introduced', male: male.id, female: female.id, tub: female.tub.id, place });
  nursery.met(female, male, night);
  giveReason(male, female, world);
  const visit: Visit = {
    male,
    female,
    since: night,
    until: night + nights,
    locks: chance.happens(0.5),
  };
  male.visit = visit;
  female.visit = visit;
}

/** Two Cinnamons on each other's lists: the super form is known for its face and spine. */
function giveReason(male: Snake, female: Snake, { book, night, nights, nursery }: World): void {
  const both = [male, female].every(({ casting }) => /Cinnamon/.test(casting.traits));
  if (!both || !nursery.isNews(female, male, nights.seasonStart(night))) return;
  book.write({
    type: 'pairing-reasoned',
    male: male.id,
    female: female.id,
    cautions: ['cinnamon-twice'],
    reason: 'To see whether he carries Clown. Supers, if any, are not bred from.',
    place: female.tub.place,
  });
}

function takeOut({ male, female }: Visit, { book, chance, night }: World): void {
  const place = female.tub.place;
  book.write({ type: 'taken-out', male: male.id, female: female.id, place });
  male.visit = undefined;
  female.visit = undefined;
  male.restsUntil = night + chance.whole(4, 7);
  male.nextMealOn = Math.max(male.nextMealOn, night + 2);
  female.restsUntil = night + chance.whole(14, 22);
}

/** What the keeper sees on opening the tub of a pair. */
export function lookAtPair(visit: Visit, world: World): void {
  const { book, chance, night, toGo } = world;
  const { male, female, since, locks } = visit;
  // The forgotten male of the last nights is forgotten because nobody looked.
  if (night - since > LONGEST_STAY || toGo <= (male.casting.closing.since ?? 0) - 2) return;
  const rest = chance.pick(['courting', 'apart', 'apart', 'courting', 'ignoring'] as const);
  const seen = locks && chance.happens(0.65) ? 'locked' : rest;
  book.write({
    type: 'pair-seen',
    male: male.id,
    female: female.id,
    seen,
    place: female.tub.place,
  });
}

/** The male that is still in a female's tub on the last night, if that night is in the season. */
function stagedFemale(male: Snake, females: readonly Snake[], world: World): Snake | undefined {
  const { closing, index } = male.casting;
  if (closing.scene !== 'visit' || closing.since !== world.toGo) return undefined;
  if (!isCoolMonth(world.nights.month(world.nights.total))) return undefined;
  return females.find(
    ({ casting }) =>
      casting.closing === closing && Math.floor(casting.index / 16) === Math.floor(index / 6),
  );
}

/** Once the round is done: males come out, and others go in. */
export function moveMales(world: World): void {
  const { snakes, chance, night, nights } = world;
  const males = snakes.filter(({ casting }) => casting.role === 'male');
  const females = snakes.filter(({ casting }) => casting.role === 'female');
  for (const male of males) {
    if (male.visit && night >= male.visit.until) takeOut(male.visit, world);
  }
  const inSeason = isPairingTime(night - nights.seasonStart(night));
  for (const male of males) {
    const staged = stagedFemale(male, females, world);
    if (staged) putIn(male, staged, 30, world);
    else if (inSeason && chance.happens(0.45) && isFree(male, world)) {
      const next = females.find(
        (female) => isOnHisList(male, female, males.length) && wantsMale(female, world),
      );
      if (next) putIn(male, next, chance.whole(1, LONGEST_STAY), world);
    }
  }
}
