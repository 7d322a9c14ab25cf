import { openLogbook } from '../demo-data/logbook.ts';
import { chanceFrom } from '../demo-data/random.ts';
import type { Day } from '../src/domain/core/calendar.ts';
import type { AnimalId } from '../src/domain/core/ids.ts';
import type { Draft } from '../src/domain/events/event.ts';
import { backupText } from './backup-text.ts';

// An invented clutch of two: one that eats, and one that has eaten once.

export const YOUNG = 'Thistle';
const SHY = 'Sedge';
const DAY_MS = 86_400_000;

/** As a backup that a fresh collection takes in; its days lie before now. */
export async function saleBackup(): Promise<string> {
  const book = openLogbook(0, chanceFrom(5));
  book.pace(5);
  const now = Date.now();
  const ago = (days: number) => book.wait(now - days * DAY_MS);
  const dayAgo = (days: number) => new Date(now - days * DAY_MS).toISOString().slice(0, 10) as Day;
  const { minter } = book;
  const write = (draft: Draft) => book.write(draft);

  ago(400);
  const dam = minter.animal();
  const sire = minter.animal();
  const clutch = minter.clutch();
  write({ type: 'arrived', animal: dam, name: 'Marrow', sex: 'female', traits: 'Pastel' });
  write({ type: 'arrived', animal: sire, name: 'Flint', sex: 'male', traits: 'het Clown' });
  ago(150);
  write({ type: 'laid', animal: dam, clutch, good: 2 });
  const sires = [{ male: sire, grounds: 'locked' as const }];
  write({ type: 'paternity-stated', animal: dam, clutch, sires });

  const young = (name: string, meals: readonly number[]): AnimalId => {
    const animal = minter.animal();
    ago(92);
    const parents = { dam, sires: [sire] };
    write({ type: 'arrived', animal, name, sex: 'unknown', origin: 'own', hatchedDay: dayAgo(93) });
    write({ type: 'hatched', animal, clutch, defects: [] });
    write({ type: 'parents-stated', animal, ...parents });
    write({ type: 'identified', animal, sex: 'female', sexedBy: 'popped', traits: 'Pastel' });
    write({ type: 'weighed', animal, massG: 64 });
    ago(80);
    write({ type: 'shed', animal, quality: 'whole' });
    const prey = { kind: 'mouse', size: 'hopper', eachG: 10, count: 1, state: 'thawed' } as const;
    for (const days of meals) {
      ago(days);
      write({ type: 'meal-offered', animal, prey, outcome: 'ate' });
    }
    return animal;
  };
  const shy = young(SHY, []);
  const eater = young(YOUNG, [70, 63, 56, 49, 42, 35, 28, 21, 14, 7]);
  ago(6);
  const prey = { kind: 'mouse', size: 'hopper', eachG: 10, count: 1, state: 'thawed' } as const;
  write({ type: 'meal-offered', animal: shy, prey, outcome: 'ate' });
  for (const [days, massG] of [
    [4, 138],
    [2, 141.5],
  ] as const) {
    ago(days);
    write({ type: 'weighed', animal: eater, massG });
  }
  return backupText({
    collection: 'sales-of-the-tests',
    made: new Date(now).toISOString().replace('Z', '+00:00'),
    records: book.events,
  });
}
