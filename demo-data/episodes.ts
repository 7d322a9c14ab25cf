import type { RackId } from '../src/domain/core/ids.ts';
import { scaleReadingG } from './growth.ts';
import { preyFor } from './menu.ts';
import { standAt, type Rooms } from './room.ts';
import type { Role } from './staging.ts';
import type { Snake, World } from './world.ts';

/** What happened once, for which there are records but no rhythm. */
type Episode = (world: World, rooms: Rooms) => void;

const find = (world: World, role: Role, index: number): Snake | undefined =>
  world.snakes.find(
    ({ casting, away }) => casting.role === role && casting.index === index && !away,
  );

/** An episode around one animal, which passes by if that animal is not there. */
const about =
  (role: Role, index: number, tell: (snake: Snake, world: World, rooms: Rooms) => void): Episode =>
  (world, rooms) => {
    const snake = find(world, role, index);
    if (snake) tell(snake, world, rooms);
  };

const judgeAdults: Episode = ({ snakes, book, chance }) => {
  for (const { id: animal, casting, tub } of snakes) {
    if (casting.role !== 'female' && casting.role !== 'male') continue;
    const score = chance.pick([3, 3, 3, 4, 2] as const);
    book.write({ type: 'condition-judged', animal, score, place: tub.place });
  }
};

const measureGrowers: Episode = ({ snakes, book, chance }) => {
  for (const { id: animal, casting, massG, tub } of snakes) {
    if (casting.role !== 'grower') continue;
    // A body is about as long as the cube root of its mass says: 44 cm at 66 g.
    const lengthCm = Math.round(10.9 * Math.cbrt(massG) + chance.between(-2, 2));
    book.write({ type: 'measured', animal, lengthCm, place: tub.place });
  }
};

/** A meal tapped at the wrong tub, noticed before the next one. */
const mistap = about('grower', 2, (snake, world) => {
  const { book, chance, night, month } = world;
  const prey = preyFor(snake, night, month, chance);
  const place = snake.tub.place;
  const offer = { type: 'meal-offered', animal: snake.id, prey, outcome: 'ate', place } as const;
  const target = book.write({ ...offer, how: 'tongs' });
  book.write({ type: 'struck', target, reason: 'tapped at the wrong tub' });
});

/** Two digits swapped on the pad, put right a minute later. */
const swappedDigits = about('female', 7, (snake, { book, chance }) => {
  const rightG = Math.floor(scaleReadingG(snake.massG, chance) / 100) * 100 + 27;
  const [thousands = '1', hundreds = '9'] = String(rightG);
  const wrongG = Number(`${thousands}2${hundreds}7`);
  const { id: animal, tub } = snake;
  const place = tub.place;
  const id = book.write({ type: 'weighed', animal, massG: wrongG, place });
  const replaces = { id, reason: 'two digits swapped' };
  book.write({ type: 'weighed', animal, massG: rightG, scale: 'shelf scale', place, replaces });
});

/** The old two-tub rack goes: one tub takes the place of a cracked one, the other is thrown out. */
const giveUpOldRack: Episode = ({ book, snakes }, rooms) => {
  const { adults } = rooms.tubs;
  const cracked = adults.at(-1);
  const [kept, spare] = rooms.oldTubs;
  if (!cracked || !kept || !spare || snakes.some(({ tub }) => tub.id === cracked.id)) return;
  book.write({ type: 'tub-removed', tub: cracked.id });
  const { rack, row, column } = cracked;
  const moved = standAt({ id: kept.id, code: kept.code, rack, row, column });
  book.write({ type: 'tub-moved', tub: kept.id, rack: rack.id, row, column, place: moved.place });
  adults[adults.length - 1] = moved;
  for (const snake of snakes) if (snake.tub.id === kept.id) snake.tub = moved;
  book.write({ type: 'tub-removed', tub: spare.id });
  const old: RackId = rooms.oldRack.id;
  book.write({ type: 'rack-removed', rack: old });
};

const newLabel = about('female', 4, (snake, { book }, rooms) => {
  const code = rooms.freshCode();
  const card = rooms.freshCode();
  book.write({ type: 'label-printed', codes: [code, card], format: 'tub 50 x 25 mm' });
  book.write({ type: 'label-assigned', code, to: { kind: 'tub', tub: snake.tub.id } });
  book.write({ type: 'label-assigned', code: card, to: { kind: 'animal', animal: snake.id } });
});

const eyeTrouble = about('grower', 1, ({ id: animal, tub }, { book, nights, night }) => {
  const place = tub.place;
  const remark = 'Right eye cap did not come off with the shed.';
  book.write({ type: 'health-noted', animal, system: 'eyes', severity: 1, remark, place });
  book.write({
    type: 'treated',
    animal,
    prescribedBy: 'the reptile vet',
    asOnLabel:
      'Damp box each evening as shown. Do not touch the eye. Come back after the next shed.',
    until: nights.day(night + 30),
    place,
  });
});

const escapes = about('grower', 6, (snake, { book, night }) => {
  if (snake.left || snake.bringsUpOn > night) return;
  const remark = 'Tub not pushed home.';
  book.write({ type: 'left', animal: snake.id, how: 'escaped', remark, place: snake.tub.place });
  snake.away = true;
});

const isFound: Episode = ({ snakes, book }) => {
  for (const snake of snakes) {
    if (!snake.away) continue;
    const { id: animal, tub } = snake;
    snake.away = false;
    book.write({ type: 'came-back', animal, remark: 'Behind the warm end of rack C, unhurt.' });
    book.write({ type: 'moved', animal, tub: tub.id, place: tub.place });
  }
};

const staysHere = about('grower', 11, ({ id: animal, tub }, { book }) => {
  book.write({ type: 'held-back', animal, why: 'best of her clutch', place: tub.place });
});

const takesAfter = about('grower', 5, ({ id: animal, casting, tub }, { book }) => {
  const traits = `${casting.traits}, paler than the rest`;
  book.write({ type: 'identified', animal, traits, place: tub.place });
});

const weighedInPounds = about('quarantined', 1, ({ id: animal, massG, tub }, { book }) => {
  const value = Math.round((massG / 453.59237) * 100) / 100;
  const entered = { value, unit: 'lb' } as const;
  const rightG = Math.round(value * 453.59237);
  const doubt = 'Restless, between two lines of the dial.';
  const scale = 'luggage scale';
  const place = tub.place;
  const weight = { type: 'weighed', animal, massG: rightG, entered, scale, tareG: 180 } as const;
  book.write({ ...weight, doubt, place });
});

const passedOver = about('female', 0, ({ id: animal, tub }, { book }) => {
  const reason = 'Just settled after the move of the rack. On Sunday.';
  book.write({ type: 'passed-over', animal, rule: 'W1', reason, place: tub.place });
});

/** A cast skin is enough for the laboratory. */
const testedForClown = about('female', 2, (snake, { book, nursery }) => {
  const carries = (nursery.genesOf(snake).get('clown') ?? 0) > 0;
  book.write({
    type: 'gene-tested',
    animal: snake.id,
    locus: 'clown',
    allele: 'clown',
    result: carries ? 'found' : 'not found',
    sensitivity: 0.99,
    specificity: 0.99,
    lab: 'by post, from a cast skin',
    place: snake.tub.place,
  });
});

const ownGene: Episode = ({ book }) => {
  book.write({
    type: 'gene-made',
    locus: 'own-paper',
    allele: 'own-paper',
    name: 'Paper',
    aliases: [],
    mode: 'recessive',
    remark: 'Paler than the rest of two clutches. Not proven: no young of two such yet.',
  });
};

const note = (role: Role, index: number, text: string): Episode =>
  about(role, index, ({ id: animal, tub }, { book }) => {
    book.write({ type: 'noted', animal, text, place: tub.place });
  });

/** The number is one of those that are never given to anyone. Source: Ofcom, numbers for drama; from memory. */
const vetStated: Episode = ({ book }) => {
  book.write({ type: 'vet-stated', name: 'The reptile clinic', phone: '01632 960017' });
};

const backsUpOften: Episode = ({ book }) => {
  const remark = 'The phone fell into a water bowl.';
  book.write({ type: 'protocol-set', values: { backupDays: 3 }, remark });
};

/** By nights before the last one. */
const episodes: Readonly<Record<number, Episode>> = {
  700: judgeAdults,
  640: vetStated,
  612: note('male', 2, 'Waits at the front of the tub from ten on. Use the long tongs.'),
  505: giveUpOldRack,
  432: backsUpOften,
  410: newLabel,
  335: judgeAdults,
  300: mistap,
  215: escapes,
  214: isFound,
  180: measureGrowers,
  150: eyeTrouble,
  128: takesAfter,
  127: ownGene,
  110: testedForClown,
  96: staysHere,
  77: swappedDigits,
  61: note('female', 2, 'Takes only when the lamp is off.'),
  40: passedOver,
  24: weighedInPounds,
  12: note('hatchling', 7, 'Strikes and lets go. Tried the smaller box with more paper.'),
};

export function tellEpisode(world: World, rooms: Rooms): void {
  episodes[world.toGo]?.(world, rooms);
}
