import { fileURLToPath } from 'node:url';
import { openLogbook } from '../../demo-data/logbook.ts';
import { chanceFrom } from '../../demo-data/random.ts';
import { readGoal, type Goal } from '../../src/domain/choosing/goal.ts';
import { rankPairs } from '../../src/domain/choosing/rank-pairs.ts';
import type { AnimalId } from '../../src/domain/core/ids.ts';
import type { RackEvent } from '../../src/domain/events/event.ts';
import { genesBook } from '../../src/domain/genes-book/genes-book.ts';
import { createPicture, type Picture } from '../../src/domain/picture/picture.ts';
import { rules } from '../../src/domain/rules/all.ts';
import { createLedger } from '../../src/domain/state/ledger.ts';
import { atMost, median, print, rounded, type Tell } from './figure.ts';

// How long ranking takes in a large collection: 60 males and 200 females, a third of them bred here,
// each with genes that all vary. The first time counts what the records say of the genes as well.

const MALES = 60;
const FEMALES = 200;
const FOUNDERS = 2 / 3;
const RUNS = 5;
const SEED = 7;
const OFFSET_MIN = 60;
const clock = { ms: Date.UTC(2026, 10, 24, 21), offsetMin: OFFSET_MIN };

const TRAITS = [
  'Pastel het Clown',
  '66% het Pied, Enchi',
  'Clown, 50% het Pied',
  'het Clown het Pied',
  '66% het Clown 66% het Pied Pastel',
  'Pied, Lesser',
  'Spider 33% het Clown',
  'Mojave 50% het Clown het Ghost',
  'Normal',
  'Super Pastel, 25% het Pied',
];

function collection(): readonly RackEvent[] {
  const book = openLogbook(OFFSET_MIN, chanceFrom(SEED));
  book.wait(clock.ms - 900 * 86_400_000);
  const arrive = (sex: 'male' | 'female', n: number): AnimalId => {
    const animal = book.minter.animal();
    const traits = TRAITS[(n * 7 + (sex === 'male' ? 0 : 3)) % TRAITS.length] ?? 'Normal';
    book.write({ type: 'arrived', animal, name: `${sex} ${n}`, sex, traits });
    return animal;
  };
  const males = Array.from({ length: MALES }, (_, n) => arrive('male', n));
  const females = Array.from({ length: FEMALES }, (_, n) => arrive('female', n));
  const bred = (all: readonly AnimalId[]) => all.slice(Math.floor(all.length * FOUNDERS));
  [...bred(males), ...bred(females)].forEach((animal, n) => {
    const dam = females[(n * 13) % Math.floor(FEMALES * FOUNDERS)];
    const sire = males[(n * 5) % Math.floor(MALES * FOUNDERS)];
    if (dam && sire) book.write({ type: 'parents-stated', animal, dam, sires: [sire] });
  });
  return book.events;
}

function freshPicture(events: readonly RackEvent[]): Picture {
  const ledger = createLedger();
  ledger.add(events);
  return createPicture(ledger, clock, rules);
}

function goalOf(text: string, picture: Picture): Goal {
  const { catalogue } = genesBook(picture);
  const read = readGoal(text, { catalogue, animals: [], mayCarry: () => [] });
  if (!read.ok) throw new Error(read.problem);
  return read.goal;
}

export function choosingFigures(tell: Tell): void {
  const events = collection();
  for (const text of ['visual clown pied', 'female pastel clown het pied']) {
    const first: number[] = [];
    const again: number[] = [];
    for (let run = 0; run < RUNS; run += 1) {
      const picture = freshPicture(events);
      const goal = goalOf(text, picture);
      for (const times of [first, again]) {
        const from = performance.now();
        const { pairs } = rankPairs(goal, picture, { young: 6 });
        times.push(performance.now() - from);
        if (pairs.length === 0) throw new Error('No pair was found.');
      }
    }
    const name = `choosing: “${text}”, ${MALES} males × ${FEMALES} females`;
    for (const [what, times] of [
      ['genes read anew', first],
      ['again', again],
    ] as const) {
      const value = rounded(median(times));
      tell({ name: `${name}, ${what}, median`, value, unit: 'ms', ...atMost(1_000, value) });
    }
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) choosingFigures(print);
