import type { Day } from '../src/domain/core/calendar.ts';
import type { Casting } from './cast.ts';
import { guessedMassG, hatchMassG } from './growth.ts';
import { freeTub, type Kind, type Rooms } from './room.ts';
import type { Parents, Snake, Tub, World } from './world.ts';

const QUARANTINE_NIGHTS = 90;

/** The animal as it comes through the door, or out of the incubator. */
function comeAlive(casting: Casting, tub: Tub, { book, chance, night }: World): Snake {
  const age = night - casting.hatchedOn;
  const massG = age < 20 ? hatchMassG(chance) : guessedMassG(age, casting.adultG);
  // Long kept in the room: anywhere in its rhythm. Just out of the egg: the first shed comes first.
  const firstShed = age < 20 ? chance.whole(3, 6) : chance.whole(2, 60);
  return {
    id: book.minter.animal(),
    casting,
    arrivedOn: night,
    dailyLoss: chance.between(0.0006, 0.0012),
    tub,
    massG: massG * (age < 1500 ? 1 : chance.between(0.92, 1.06)),
    sexKnown: age > 30,
    away: false,
    mealOn: night - 30,
    nextMealOn: night + (age < 20 ? firstShed + 12 : chance.whole(1, 9)),
    offers: age < 20 ? 0 : 20,
    left: undefined,
    bringsUpOn: -1,
    lastGainG: 0,
    halfMeal: false,
    faecesOn: Infinity,
    opaque: false,
    nextOpaqueOn: night + firstShed,
    shedOn: 0,
    weighOn: night + (age < 20 ? 0 : chance.whole(1, 25)),
    fullCleanOn: night + chance.whole(5, 40),
    visit: undefined,
    restsUntil: 0,
    season: undefined,
    scanOn: 0,
  };
}

function rackKind(casting: Casting, night: number): Kind {
  const age = night - casting.hatchedOn;
  if (casting.origin === 'bought' && night > 0) return 'quarantine';
  if (age < 170) return 'hatchlings';
  return age < 700 ? 'growers' : 'adults';
}

function stateParents(snake: Snake, { dam, sires }: Parents, { book }: World): void {
  const remark = sires.length > 1 && { remark: 'They were all in with her that winter.' };
  const males = sires.map(({ id }) => id);
  book.write({ type: 'parents-stated', animal: snake.id, dam: dam.id, sires: males, ...remark });
}

/** Writes down a newcomer and puts it in the first free tub of its kind, if there is one. */
export function welcome(cast: Casting, rooms: Rooms, world: World): Snake | undefined {
  const { book, night, nights, nursery, snakes } = world;
  const born = cast.origin === 'own' && night > 0 ? nursery.born(cast, world) : undefined;
  const casting = born ? { ...cast, traits: born.traits } : cast;
  const elder = casting.hatchedOn < -7000;
  const tub = elder
    ? rooms.oldTubs[0]
    : (freeTub(rooms, rackKind(casting, night), snakes) ??
      freeTub(rooms, 'hatchlings', snakes) ??
      freeTub(rooms, 'adults', snakes));
  if (!tub) return undefined;
  const snake = comeAlive(casting, tub, world);
  const { id: animal } = snake;
  const { name, traits, origin } = casting;
  const place = tub.place;
  const sex = snake.sexKnown ? casting.sex : 'unknown';
  const hatched = !elder && { hatchedDay: nights.day(casting.hatchedOn) };
  const from = origin !== 'own' && { from: origin === 'gift' ? 'a neighbour' : 'the autumn show' };
  book.write({ type: 'arrived', animal, name, sex, traits, origin, ...hatched, ...from });
  book.write({ type: 'moved', animal, tub: tub.id, place });
  if (tub.rack.name === 'Q') {
    const until: Day = nights.day(night + QUARANTINE_NIGHTS);
    book.write({ type: 'quarantine-started', animal, until, place });
  }
  if (born) {
    nursery.named(animal, born);
    stateParents(snake, born.parents, world);
  }
  return snake;
}

/** The young are sexed a few weeks after hatching, and leave the hatchling rack at about 180 g. */
export function growUp(snake: Snake, rooms: Rooms, world: World): void {
  const { book, night, snakes } = world;
  const { id: animal, casting } = snake;
  if (snake.away) return;
  const age = night - casting.hatchedOn;
  if (!snake.sexKnown && age >= 24) {
    snake.sexKnown = true;
    const { sex } = casting;
    book.write({ type: 'identified', animal, sex, sexedBy: 'popped', place: snake.tub.place });
  }
  const outgrown = snake.tub.rack.name.startsWith('H') && snake.massG > 180;
  if (!outgrown || casting.role === 'hatchling' || snake.opaque || snake.left) return;
  const tub = freeTub(rooms, 'growers', snakes);
  if (!tub) return;
  snake.tub = tub;
  book.write({ type: 'moved', animal, tub: tub.id, why: 'outgrew the tub', place: tub.place });
}
