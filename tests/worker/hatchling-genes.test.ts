import { expect, test } from 'vitest';
import type { AnimalId } from '../../src/domain/core/ids.ts';
import type { Draft } from '../../src/domain/events/event.ts';
import { genesView } from '../../src/domain/views/genes-view.ts';
import { clutchId } from '../make-ids.ts';
import { aDevice, openTab } from './make-world.ts';

// Taken in beside the egg box, a hatchling is young of its parents and a sibling of the others at once.

test('each hatchling moves what its parents and its siblings carry', async () => {
  const tab = await openTab(aDevice());
  const added = await tab.addAnimals([
    { name: 'Sorrel', sex: 'female', traits: '66% het Clown' },
    { name: 'Cedar', sex: 'male', traits: '100% het Clown' },
  ]);
  if (!added.ok) throw new Error(added.problem.message);
  const [dam, male] = added.value as [AnimalId, AnimalId];
  const clutch = clutchId(1);
  const drafts: readonly Draft[] = [
    { type: 'laid', animal: dam, clutch, good: 3 },
    { type: 'paternity-stated', animal: dam, clutch, sires: [{ male, grounds: 'locked' }] },
  ];
  // No season came before it in this collection: it is asked about, and written on the keeper's word.
  const asked = await tab.record({ drafts });
  const accepted = asked.kind === 'asked' ? asked.doubts.map(({ code }) => code) : [];
  expect((await tab.record({ drafts, accepted })).kind).toBe('done');
  const takeIn = async (name: string, traits: string): Promise<AnimalId> => {
    const taken = await tab.takeInHatchling({ clutch, name, sex: 'unknown', traits, defects: [] });
    if (!taken.ok) throw new Error(taken.problem.message);
    return taken.value.animal;
  };
  const clown = (animal: AnimalId) =>
    genesView(animal, tab.picture)?.lines.find(({ name }) => name === 'Clown')?.now;

  expect(clown(dam)).toBe('67 %');
  // Of a normal young: 2/3 × 3/4 against 1/3 × 1, so 3 in 5. It carries in 2/3 × 1/2 + 1/3 × 1/2 of 5/6.
  const first = await takeIn('A', 'Normal');
  expect([clown(dam), clown(first)]).toEqual(['60 %', '60 %']);
  // A visual one has a copy from each: the dam is proven, and of the normal ones two in three carry.
  await takeIn('B', 'Clown');
  expect([clown(dam), clown(first)]).toEqual(['one copy, hidden', '67 %']);
});
