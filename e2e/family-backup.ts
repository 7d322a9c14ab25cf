import { openLogbook } from '../demo-data/logbook.ts';
import { chanceFrom } from '../demo-data/random.ts';
import type { AnimalId } from '../src/domain/core/ids.ts';
import { backupText } from './backup-text.ts';

// An invented family over four generations, with half siblings for parents, a clutch by one of two
// males and a ring of parents that was written down by mistake.

const OFFSET_MIN = 60;

const snakes: readonly (readonly [
  name: string,
  sex: 'male' | 'female',
  traits: string,
  massG: number,
])[] = [
  ['Great Alder', 'male', 'Clown', 900],
  ['Great Birch', 'female', 'Pied', 2100],
  ['Great Cedar', 'female', 'Normal', 1900],
  ['Great Elder', 'male', 'Spider', 950],
  ['Hazel', 'male', '', 880],
  ['Juniper', 'female', '', 1950],
  ['Larch', 'male', 'het Clown het Pied', 870],
  ['Maple', 'female', 'Champagne, 66% het Clown', 1800],
  ['Rowan', 'female', '', 1700],
  ['Spindle of the high shelf', 'male', '', 760],
  ['Willow', 'female', '', 900],
  ['Yew', 'male', 'Normal', 800],
];

const parents: readonly (readonly [young: string, dam: string, ...sires: string[]])[] = [
  ['Hazel', 'Great Birch', 'Great Alder'],
  ['Juniper', 'Great Cedar', 'Great Alder'],
  ['Rowan', 'Juniper', 'Hazel'],
  ['Spindle of the high shelf', 'Maple', 'Hazel', 'Larch'],
  ['Willow', 'Rowan', 'Spindle of the high shelf'],
  ['Great Elder', 'Great Cedar', 'Yew'],
  ['Yew', 'Great Cedar', 'Great Elder'],
];

/** As a backup that a fresh collection takes in. */
export async function familyBackup(): Promise<string> {
  const book = openLogbook(OFFSET_MIN, chanceFrom(3));
  book.wait(Date.UTC(2026, 8, 1, 20));
  const ids = new Map<string, AnimalId>();
  for (const [name, sex, words, massG] of snakes) {
    const animal = book.minter.animal();
    ids.set(name, animal);
    const traits = words === '' ? {} : { traits: words };
    book.write({ type: 'arrived', animal, name, sex, ...traits });
    book.write({ type: 'weighed', animal, massG });
  }
  const idOf = (name: string): AnimalId => {
    const id = ids.get(name);
    if (id === undefined) throw new Error(`No snake ${name}.`);
    return id;
  };
  for (const [young, dam, ...sires] of parents) {
    book.write({
      type: 'parents-stated',
      animal: idOf(young),
      dam: idOf(dam),
      sires: sires.map(idOf),
    });
  }
  return backupText({
    collection: 'family-of-the-tests',
    made: '2026-09-01T22:00:00+02:00',
    records: book.events,
  });
}
