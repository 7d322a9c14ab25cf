import { describe, expect, test } from 'vitest';
import { aTab, animal, counts, HEAD, lookAt, sheetFile, table, takeAllIn } from './sheet-file.ts';

describe('what is doubtful', () => {
  test('a weight is held against the snake’s own before it, also of the file', async () => {
    const tab = await aTab();
    const file = table(
      'Rue,f,,,,01/02/2025,1500,,,',
      'Rue,,,,,15/02/2025,150,,,',
      'Rue,,,,,28/02/2025,1520,,,',
    );
    const preview = await lookAt(tab, file);
    expect(preview.asks).toMatchObject([
      { code: 'ratio', line: 3, instead: 'Take 1,500\u00A0g', accept: 'Take it as it is' },
    ]);
    expect(counts(preview)).toMatchObject({ fresh: 3, openCount: 1 });
    const key = preview.asks[0]!.key;
    expect(await lookAt(tab, undefined, { answers: { [key]: 'instead' } })).toMatchObject({
      fresh: 4,
      openCount: 0,
    });
    await takeAllIn(tab);
    expect(animal(tab, 'Rue').weighings.map(({ massG }) => massG)).toEqual([1500, 1500, 1520]);
    // Corrected on the way in, it is found again by its corrected value.
    expect(counts(await lookAt(tab, file))).toMatchObject({ fresh: 0, known: 3, openCount: 0 });
  });

  test('the same row twice, a snake named twice, a name one letter off, a tub that is taken', async () => {
    const tab = await aTab();
    const preview = await lookAt(
      tab,
      table(
        'Nutmeg,m,B1-2,31/12/2022,,01/02/2025,900,,,',
        'Nutmeg,,,,,01/02/2025,900,,,',
        'Nutmeg,f,,,,15/02/2025,905,,,',
        'Nutmg,,,,,28/02/2025,910,,,',
      ),
    );
    expect(preview.asks.map(({ line, code }) => `${line} ${code}`)).toEqual([
      '2 tub',
      '3 same-row',
      '4 named-twice',
      '5 name-slip',
    ]);
    expect(preview.asks[0]?.messages).toEqual(['B1-2 is the tub of Cedar.']);
    // Until they are answered, all four are left out.
    expect(preview.fresh).toBe(2);
  });

  test('what cannot be is left out by line, with its reason, and the rest of its row counts', async () => {
    const tab = await aTab();
    const preview = await lookAt(
      tab,
      table(
        'Rue,hembra,B9-9,2022,,31/12/2024,heavy,1 hopper,,',
        'Rue,,,,,31/02/2025,62,,,',
        'Rue,,,,,01/01/2031,62,,,',
        ',,,,,02/01/2025,62,,,',
        'Rue,,,,,03/01/2025,9,,,',
      ),
    );
    expect(preview.leftOut.map(({ lines, heading, why }) => `${lines} ${heading}: ${why}`)).toEqual(
      [
        '2 Hatched: is no day',
        '2 Weight (g): is no weight',
        '2 Tub: is no tub of yours: Rue stands in no tub yet',
        '3 Date: is no day',
        '4 Date: is still to come',
        '5 Name: says no name',
        '6 Rue: 9\u00A0g cannot be a ball python: 15\u00A0g to 6,000\u00A0g.',
      ],
    );
    expect(preview.records).toEqual([{ what: 'meal', count: 1 }]);
    expect(preview.words).toMatchObject([
      { word: 'hembra', choices: ['female', 'male', 'unknown'] },
    ]);
    await lookAt(tab, undefined, { words: { 'sex:hembra': 'female' } });
    await takeAllIn(tab);
    expect(animal(tab, 'Rue').sex).toBe('female');
  });

  test('what is left out comes back as a file that can be mended and taken in', async () => {
    const tab = await aTab();
    await lookAt(
      tab,
      table('Rue,,,,,01/02/2025,heavy,,,"=HYPERLINK(""x"")"', 'Rue,,,,,13/02/2025,62,,,'),
    );
    await takeAllIn(tab);
    await lookAt(
      tab,
      table('Rue,,,,,01/02/2025,heavy,,,"=HYPERLINK(""x"")"', 'Rue,,,,,13/02/2025,62,,,'),
    );
    const { fileName, text } = await tab.sheetLeftOut(null);
    expect(fileName).toBe('snakes-left-out.csv');
    expect(text.split('\r\n')).toEqual([
      `\uFEFFLine,Left out because,${HEAD}`,
      `2,Weight (g): “heavy” is no weight,Rue,,,,,01/02/2025,heavy,,,"'=HYPERLINK(""x"")"`,
      '',
    ]);
    const mended = await lookAt(
      tab,
      sheetFile(text.replace(',heavy,', ',60,').replace('01/02', '14/02')),
    );
    expect(mended.records).toEqual([{ what: 'weight', count: 1 }]);
  });

  test('°F is named, never taken for °C, and a contradiction is named with its line', async () => {
    const tab = await aTab();
    const preview = await lookAt(
      tab,
      sheetFile(
        'Name,Date,Weight (g),Hot spot\nRue,2025-01-15,62,88\nRue,2025-02-15,70,30 °C (90 °F)',
      ),
    );
    const column = preview.columns.find(({ heading }) => heading === 'Hot spot');
    expect(column).toMatchObject({ meaning: 'warmth', unit: { unit: '°F' } });
    expect(column?.notes).toEqual([
      'One value contradicts itself: 30 °C is 86 °F, not 90, on line 3.',
    ]);
  });

  test('nothing is taken in while it is open how a column is to be read', async () => {
    const tab = await aTab();
    const file = sheetFile('Name,Date,Weight\nRue,1/2/2025,62\nRue,3/4/2025,70');
    expect((await lookAt(tab, file)).mustSay).toEqual([
      'the order of dates in Date',
      'the unit of Weight',
    ]);
    expect(await tab.takeInSheet(null)).toMatchObject({ ok: false });
    const columns = { 1: { order: 'month first' }, 2: { unit: 'g' } } as const;
    expect((await lookAt(tab, undefined, { columns })).mustSay).toEqual([]);
    await takeAllIn(tab);
    expect(animal(tab, 'Rue').weighings.map(({ at }) => at.slice(0, 10))).toEqual([
      '2025-01-02',
      '2025-03-04',
    ]);
  });

  test('a file that is refused changes nothing', async () => {
    const tab = await aTab();
    const before = await tab.onDisk();
    const huge = {
      name: 'x.csv',
      size: 100_000_000,
      arrayBuffer: () => Promise.reject(new Error('read')),
    };
    const looked = await tab.lookIntoSheet({
      file: huge,
      choices: { sheet: 0, leaveMerged: false, columns: {}, words: {}, answers: {} },
    });
    expect(looked).toMatchObject({ ok: false, problem: { code: 'sheet-too-large' } });
    expect(await tab.takeInSheet(null)).toMatchObject({ ok: false });
    expect(await tab.onDisk()).toEqual(before);
  });
});
