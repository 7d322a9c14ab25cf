import { lookForRegurgitation, offerMeal, settleMeal } from './feeding.ts';
import { lookAtFemale } from './ovaries.ts';
import { lookAtPair } from './pairing.ts';
import { weigh } from './scales.ts';
import { seasonOf } from './season.ts';
import { lookAtSkin } from './skin.ts';
import { lookAfterTub } from './upkeep.ts';
import type { Season, Snake, World } from './world.ts';

/** Evenings before the last night on which the keeper was never away. */
const ALWAYS_THERE = 22;

function lookIn(snake: Snake, world: World): void {
  if (snake.away) return;
  const { visit } = snake;
  // His own tub stands empty, and she is left in peace.
  if (visit) {
    if (visit.female === snake && world.chance.happens(0.85)) lookAtPair(visit, world);
    return;
  }
  lookAtSkin(snake, world);
  if (snake.season) lookAtFemale(snake, snake.season, world);
  weigh(snake, world);
  offerMeal(snake, world);
  lookAfterTub(snake, world);
}

/** Ovulation and eggs are seen whatever else the evening holds. */
const isGreatDay = ({ ovulatesOn, laysOn }: Season, night: number): boolean =>
  night === ovulatesOn || night === laysOn;

/** The round, in walking order; about one evening in eight the keeper only glances in. */
export function doEvening(world: World): void {
  const { snakes, chance, toGo, night, nights } = world;
  // Never three evenings in a row: sheds and sick animals do not wait.
  const works = toGo <= ALWAYS_THERE || night % 3 === 0 || chance.happens(0.82);
  const september = nights.seasonStart(night);
  for (const snake of snakes) {
    const isFemale = snake.casting.role === 'female';
    if (isFemale && snake.season?.start !== september) {
      snake.season = seasonOf(snake, nights, night, chance);
    }
    lookForRegurgitation(snake, world);
    if (works) lookIn(snake, world);
    else if (snake.season && isGreatDay(snake.season, night)) {
      lookAtFemale(snake, snake.season, world);
    }
  }
}

/** Next morning, before work: what was left overnight, who is locked, who is gone. */
export function doMorning(world: World): void {
  const { book, chance, night, nights, snakes } = world;
  book.wait(nights.ms(night + 1, 7 * 60 + chance.whole(5, 60)));
  for (const snake of snakes) {
    settleMeal(snake, world);
    const { visit } = snake;
    if (visit?.female === snake && chance.happens(0.25)) lookAtPair(visit, world);
    const { leaves } = snake.casting;
    if (leaves?.night !== night) continue;
    const remark = leaves.why;
    book.write({ type: 'left', animal: snake.id, how: leaves.how, remark, place: snake.tub.place });
  }
}
