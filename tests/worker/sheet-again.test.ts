import { describe, expect, test } from 'vitest';
import { aDevice, openTab, settleIn, type Tab } from './make-world.ts';
import { aTab, animal, counts, lookAt, table, takeAllIn } from './sheet-file.ts';

describe('a file that comes again', () => {
  const many = (n: number) =>
    Array.from({ length: n }, (_, i) => {
      const date = new Date(Date.UTC(2024, 0, 1 + 7 * Math.floor(i / 4)))
        .toISOString()
        .slice(0, 10);
      return `Snake ${i % 4},,,,,${date},${100 + i},1 hopper,,`;
    });

  test('adds only what is new in it', async () => {
    const tab = await aTab();
    await lookAt(tab, table(...many(40)));
    await takeAllIn(tab);
    expect(counts(await lookAt(tab, table(...many(40))))).toMatchObject({ fresh: 0, known: 80 });
    expect(counts(await lookAt(tab, table(...many(44))))).toMatchObject({ fresh: 8, known: 80 });
  });

  test('broken off midway, it is completed, as one import', async () => {
    const device = aDevice();
    const tab = await openTab(device);
    await settleIn(tab);
    const whole = await openTab(aDevice());
    await settleIn(whole);
    await lookAt(whole, table(...many(400)));
    await takeAllIn(whole);

    await lookAt(tab, table(...many(400)));
    expect(await tab.takeInSheet(null)).toMatchObject({ value: { written: 250, total: 804 } });
    const after = await openTab(device, 'TAB02');
    expect(await after.sheetsTaken(null)).toMatchObject([{ records: 250, isWhole: false }]);
    expect((await lookAt(after, table(...many(400)))).fresh).toBe(804 - 250);
    const mark = await takeAllIn(after);
    expect(await after.sheetsTaken(null)).toMatchObject([{ mark, records: 804, isWhole: true }]);
    const story = (each: Tab) =>
      each.picture
        .animals()
        .map(({ name, weighings, offers }) => [
          name,
          weighings.map(({ massG, at }) => [massG, at]),
          offers.length,
        ]);
    expect(story(after)).toEqual(story(whole));
  });

  test('a record struck by hand is not brought back', async () => {
    const tab = await aTab();
    await lookAt(tab, table(...many(4)));
    await takeAllIn(tab);
    const { weighings } = animal(tab, 'Snake 1');
    await tab.strike({ ids: [weighings[0]!.id], reason: 'Wrong snake' });
    expect((await lookAt(tab, table(...many(4)))).fresh).toBe(0);
  });

  test('undone and taken in again, it is all there again', async () => {
    const tab = await aTab();
    await lookAt(tab, table(...many(8)));
    const first = await takeAllIn(tab);
    expect(await tab.undoSheet(first)).toEqual({ ok: true, value: 20 });
    expect(await tab.sheetsTaken(null)).toEqual([]);
    expect((await lookAt(tab, table(...many(8)))).fresh).toBe(20);
    await takeAllIn(tab);
    expect(animal(tab, 'Snake 1').weighings).toHaveLength(2);
  });
});
