import { follicleMm, isGravid, nearsOvulation } from './season.ts';
import type { Season, Snake, World } from './world.ts';

const tenths = (value: number): number => Math.round(value * 10) / 10;

/** What fingers feel of follicles of a size [common practice, no source]. Unit: millimetres. */
function felt(mm: number): 'nothing' | 'small bumps' | 'round lumps' | 'large lumps' {
  if (mm < 9) return 'nothing';
  if (mm < 18) return 'small bumps';
  return mm < 32 ? 'round lumps' : 'large lumps';
}

/** A probe reads an axis to a millimetre or so; below 6 mm it often shows nothing. */
function scan(snake: Snake, season: Season, { book, chance, night }: World): void {
  const mm = follicleMm(season, night);
  const place = snake.tub.place;
  if (!season.paired || chance.happens(0.12)) {
    const found = { method: 'palpation', felt: felt(mm) } as const;
    book.write({ type: 'follicles-scanned', animal: snake.id, found, place });
    return;
  }
  const axis = (): number => tenths(Math.max(2, mm * chance.between(0.96, 1.04)));
  const noneSeen = mm < 6 && chance.happens(0.5);
  const counts = mm > 12 && { left: chance.whole(2, 4), right: chance.whole(3, 5) };
  const size = !noneSeen && { largestMm: [axis(), axis()] as [number, number] };
  const found = { method: 'ultrasound' as const, ...size, ...counts };
  book.write({ type: 'follicles-scanned', animal: snake.id, found, place });
}

/** Scans every three weeks, every other week from 20 mm; never soon after a meal. */
function scanIfDue(snake: Snake, season: Season, world: World): void {
  const { night, chance } = world;
  const since = night - season.start;
  if (since < 30 || since > 225 || night < snake.scanOn) return;
  if (isGravid(snake, night) || night >= season.laysOn) return;
  if (night - snake.mealOn < 5 || snake.opaque || snake.visit) return;
  scan(snake, season, world);
  const interval = follicleMm(season, night) >= 20 ? 13 : 20;
  snake.scanOn = night + (season.paired ? interval : 60) + chance.whole(0, 4);
}

const signs = ['cool side', 'round the bowl', 'inverted', 'glow', 'swelling'] as const;

function lookForSigns(snake: Snake, season: Season, { book, chance, night }: World): void {
  const mm = follicleMm(season, night);
  const { id: animal, tub } = snake;
  const soon = nearsOvulation(snake, night);
  if (mm > 18 && night < season.ovulatesOn && chance.happens(soon ? 0.18 : 0.05)) {
    const sign = soon && chance.happens(0.3) ? 'off food' : chance.pick(signs);
    book.write({ type: 'sign-seen', animal, sign, place: tub.place });
  }
  if (soon && mm >= 35 && chance.happens(0.25)) {
    book.write({ type: 'nothing-yet', animal, lookedFor: 'ovulation', place: tub.place });
  }
}

/** The swelling lasts a day or two: seen at its peak, seen late, or worked out afterwards. */
function lookForOvulation(snake: Snake, season: Season, world: World): void {
  const { book, chance, night, nights } = world;
  if (night !== season.ovulatesOn) return;
  const { id: animal, tub } = snake;
  const place = tub.place;
  const sure = chance.pick(['seen at peak', 'seen late', 'seen late', 'inferred'] as const);
  const between = {
    atMs: nights.ms(night, 9 * 60),
    precision: 'between' as const,
    notBeforeMs: nights.ms(night - 2, 22 * 60),
  };
  book.write(
    { type: 'ovulated', animal, sure, place },
    sure === 'seen at peak' ? undefined : between,
  );
  snake.nextOpaqueOn = night + chance.whole(9, 12);
}

/** What laying takes off a female [common practice, no source]. */
const AFTER_LAYING = 0.76;

const NEST_BOX_BEFORE = 12;
const SLUG_CHANCE = 0.12;
const EGG_G = 88;

function lookForEggs(snake: Snake, season: Season, world: World): void {
  const { book, chance, night } = world;
  const { id: animal, tub } = snake;
  const place = tub.place;
  if (night === season.laysOn - NEST_BOX_BEFORE) {
    book.write({ type: 'nest-box-set', animal, is: 'in', place });
  }
  if (night > season.laysOn - 9 && night < season.laysOn && chance.happens(0.5)) {
    book.write({ type: 'nothing-yet', animal, lookedFor: 'eggs', place });
    if (chance.happens(0.15)) {
      book.write({ type: 'sign-seen', animal, sign: 'looking for a nest', place });
    }
  }
  if (night === season.laysOn) findEggs(snake, world);
  if (night === season.laysOn + 1) book.write({ type: 'nest-box-set', animal, is: 'out', place });
}

/** Laid since the evening before; found on the morning's look. */
function findEggs(snake: Snake, { book, chance, night, nights, nursery }: World): void {
  const { id: animal, tub } = snake;
  const eggs = chance.whole(5, 9);
  const slugs = Array.from({ length: eggs }).filter(() => chance.happens(SLUG_CHANCE)).length;
  const clutchMassG = Math.round(eggs * EGG_G * chance.between(0.9, 1.1));
  const clutch = book.minter.clutch();
  nursery.laid(snake, clutch, eggs - slugs, night);
  snake.massG *= AFTER_LAYING;
  book.write(
    {
      type: 'laid',
      animal,
      clutch,
      good: eggs - slugs,
      slugs,
      unsure: 0,
      clutchMassG,
      damMassG: Math.round(snake.massG),
      care: 'incubator',
      place: tub.place,
    },
    {
      atMs: nights.ms(night, 9 * 60),
      precision: 'between',
      notBeforeMs: nights.ms(night - 1, 22 * 60),
    },
  );
  snake.nextMealOn = Math.max(snake.nextMealOn, night + chance.whole(4, 8));
  snake.weighOn = night + 3;
}

/** Six weeks past the peak, what fades has faded, and the keeper says so. */
function giveUp({ id: animal, tub }: Snake, season: Season, { book, night }: World): void {
  if (season.ovulatesOn < Infinity || season.mmPerNight === 0) return;
  const peaksOn =
    season.growsFrom + Math.round((season.peakMm - season.restingMm) / season.mmPerNight);
  if (night === peaksOn + 42) {
    book.write({ type: 'season-closed', animal, why: 'resorbed', place: tub.place });
  }
}

/** The keeper's eye on a female, through one season. */
export function lookAtFemale(snake: Snake, season: Season, world: World): void {
  scanIfDue(snake, season, world);
  lookForSigns(snake, season, world);
  lookForOvulation(snake, season, world);
  if (season.ovulatesOn <= world.night) lookForEggs(snake, season, world);
  giveUp(snake, season, world);
}
