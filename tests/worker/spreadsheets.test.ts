import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Answers } from '../../src/domain/sheet/asked.ts';
import type { SheetPreview } from '../../src/domain/sheet/preview.ts';
import { runs } from '../arbitrary.ts';
import { makeXlsx } from '../workbook/make-xlsx.ts';
import { aDevice, openTab, settleIn, type Tab } from './make-world.ts';
import { lookAt, sheetFile, takeAllIn } from './sheet-file.ts';

async function aTab(): Promise<Tab> {
  const tab = await openTab(aDevice());
  await settleIn(tab);
  return tab;
}

const HEAD = 'Name,Sex,Tub,Hatched,Genes,Date,Weight (g),Meal,Shed,Notes';

/** Rows as keepers have them, under one heading. */
const table = (...rows: readonly string[]) => sheetFile([HEAD, ...rows].join('\n'));

const animal = (tab: Tab, name: string) => {
  const found = tab.picture.animals().find((each) => each.name === name);
  if (!found) throw new Error(`There is no ${name}.`);
  return found;
};

const counts = ({ fresh, known, newAnimals, openCount, leftOutCount }: SheetPreview) => ({
  fresh,
  known,
  newAnimals,
  openCount,
  leftOutCount,
});

/** All that the records come to, without the records that no longer count. */
const comesTo = (tab: Tab) =>
  structuredClone(
    new Map([...tab.picture.ledger.subjects].toSorted(([a], [b]) => (a < b ? -1 : 1))),
  );

describe('a spreadsheet of snakes and what happened to them', () => {
  const rows = [
    'Sorrel,f,B1-1,14/07/2021,Pastel,01/02/2025,1480,1 small rat,,calm',
    'Nutmeg,m,B2-1,31/12/2022,Clown,01/02/2025,900,refused,,',
    'Nutmeg,,,,,15/02/2025,31.7 oz,ate 2 x pup rats F/T,whole,',
  ];

  test('is looked at without writing anything, then taken in', async () => {
    const tab = await aTab();
    const before = await tab.onDisk();
    const preview = await lookAt(tab, table(...rows));
    expect(counts(preview)).toEqual({
      fresh: 10,
      known: 0,
      newAnimals: 1,
      openCount: 0,
      leftOutCount: 0,
    });
    expect(await tab.onDisk()).toEqual(before);
    await takeAllIn(tab);
    const nutmeg = animal(tab, 'Nutmeg');
    expect(nutmeg).toMatchObject({ sex: 'male', hatchedDay: '2022-12-31', traits: 'Clown' });
    expect(tab.picture.position(nutmeg.tub)).toBe('B2-1');
    // 31.7 oz × 28.3495 g = 898.7 g. NIST SP 811.
    expect(nutmeg.weighings.map(({ massG }) => massG)).toEqual([900, 898.7]);
    expect(nutmeg.offers.map(({ outcome, prey }) => [outcome, prey.count, prey.size])).toEqual([
      ['refused', 1, 'meal'],
      ['ate', 2, 'pup'],
    ]);
    // What was not known of one that was here is filled in.
    expect(animal(tab, 'Sorrel')).toMatchObject({ hatchedDay: '2021-07-14', traits: 'Pastel' });
  });

  test('one event a row, with its own words for what happened', async () => {
    const tab = await aTab();
    const preview = await lookAt(
      tab,
      sheetFile(
        'Date;Snake;Event;Value\n2025-02-01;Sorrel;Weight;1480 g\n2025-02-03;Sorrel;Fed;2 small rats\n2025-02-10;Sorrel;Refused;\n2025-02-12;Sorrel;In blue;\n2025-02-19;Sorrel;Shed;in pieces\n2025-02-20;Sorrel;Danced;',
      ),
    );
    expect(preview.records.map(({ what, count }) => `${count} ${what}`)).toEqual([
      '1 weights',
      '2 meals',
      '1 sheds',
      '1 in blue',
    ]);
    expect(preview.words.map(({ word }) => word)).toEqual(['Danced']);
    await takeAllIn(tab);
    expect(animal(tab, 'Sorrel').sheds[0]?.quality).toBe('pieces');
  });

  test('weights under headings that are days', async () => {
    const tab = await aTab();
    await lookAt(tab, sheetFile('Name,2025-01-15,2025-02-15\nSorrel,1400,1450\nRue,62,71'));
    await takeAllIn(tab);
    expect(animal(tab, 'Rue').weighings.map(({ at, massG }) => [at.slice(0, 10), massG])).toEqual([
      ['2025-01-15', 62],
      ['2025-02-15', 71],
    ]);
  });

  test('merged cells say the same in every row, or only in the first as asked', async () => {
    const tab = await aTab();
    const text = (words: string) => `<c t="inlineStr"><is><t>${words}</t></is></c>`;
    const file = sheetFile(
      makeXlsx({
        sheets: [
          {
            name: 'A',
            data: `<row r="1">${['Name', 'Date', 'Weight (g)'].map(text).join('')}</row><row r="2">${text('Rue')}${text('2025-01-15')}<c><v>62</v></c></row><row r="3"><c/>${text('2025-02-15')}<c><v>71</v></c></row>`,
            after: '<mergeCells count="1"><mergeCell ref="A2:A3"/></mergeCells>',
          },
        ],
      }),
      'merged.xlsx',
    );
    expect(await lookAt(tab, file)).toMatchObject({ merged: 1, fresh: 3, leftOutCount: 0 });
    expect(await lookAt(tab, file, { leaveMerged: true })).toMatchObject({
      fresh: 2,
      leftOutCount: 1,
    });
  });
});

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
      { code: 'ratio', line: 3, instead: 'Take 1,500 g', accept: 'Take it as it is' },
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
        '4 Rue: That has not happened yet. Pick tonight or an earlier night.',
        '5 Name: says no name',
        '6 Rue: 9 g cannot be a ball python: 15 to 6000 g.',
      ],
    );
    expect(preview.records).toEqual([{ what: 'meals', count: 1 }]);
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
    expect(mended.records).toEqual([{ what: 'weights', count: 1 }]);
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

const name = fc.constantFrom('Sorrel', 'Cedar', 'Rue', 'Nutmeg', 'Nutmg', '<b>x</b>', '=1+1');
const anyRow = fc
  .record({
    name,
    sex: fc.constantFrom('', 'f', 'm', '?', 'hembra'),
    tub: fc.constantFrom('', '', 'B1-1', 'B2-1', 'B9-9'),
    hatched: fc.constantFrom('', '14/07/2021', '31/12/2022'),
    date: fc.constantFrom('13/01/2025', '20/01/2025', '03/02/2025', '31/02/2025', '24/11/2026'),
    mass: fc.constantFrom('', '900', '905', '90', '9500', '31.7 oz', 'heavy'),
    meal: fc.constantFrom('', 'ate', 'refused', '1 small rat', 'left', 'regurgitated'),
    shed: fc.constantFrom('', 'whole', 'caps'),
    note: fc.constantFrom('', 'calm'),
  })
  .map((row) =>
    [
      row.name,
      row.sex,
      row.tub,
      row.hatched,
      '',
      row.date,
      row.mass,
      row.meal,
      row.shed,
      row.note,
    ].join(','),
  );
const anyRows = fc.array(anyRow, { minLength: 1, maxLength: 14 });

/** Says something to every question there is, until there is none left open. */
async function answerAll(
  tab: Tab,
  said: readonly ('accept' | 'leave' | 'instead')[],
): Promise<Answers> {
  let answers: Answers = {};
  for (let round = 0; round < 8; round += 1) {
    const { asks } = await lookAt(tab, undefined, { answers });
    const open = asks.filter(({ answer }) => answer === undefined);
    if (open.length === 0) break;
    const next = open.map(({ key, accept, instead }, i) => {
      const wish = said[(i + round) % said.length] ?? 'leave';
      const may = wish === 'accept' ? accept : wish === 'instead' ? instead : 'leave';
      return [key, may === undefined ? 'leave' : wish] as const;
    });
    answers = { ...answers, ...Object.fromEntries(next) };
  }
  return answers;
}

const anySaid = fc.array(fc.constantFrom('accept', 'leave', 'instead'), {
  minLength: 1,
  maxLength: 5,
});
const dayFirst = {
  columns: { 3: { order: 'day first' }, 5: { order: 'day first' }, 6: { unit: 'g' } },
} as const;

describe('whatever a file holds', () => {
  test('the same file twice, with the same answers, adds nothing', async () => {
    await fc.assert(
      fc.asyncProperty(anyRows, anySaid, async (rows, said) => {
        const tab = await aTab();
        await lookAt(tab, table(...rows));
        const answers = await answerAll(tab, said);
        const choices = { ...dayFirst, answers };
        const { fresh } = await lookAt(tab, undefined, choices);
        if (fresh > 0) await takeAllIn(tab);
        const again = await lookAt(tab, table(...rows), choices);
        expect(again.fresh).toBe(0);
      }),
      runs(60),
    );
  });

  test('undo leaves all as it was before', async () => {
    await fc.assert(
      fc.asyncProperty(anyRows, anySaid, async (rows, said) => {
        const tab = await aTab();
        const before = comesTo(tab);
        const tasks = tab.picture.animals().map(({ id }) => tab.picture.tasks(id));
        await lookAt(tab, table(...rows));
        const choices = { ...dayFirst, answers: await answerAll(tab, said) };
        const { fresh } = await lookAt(tab, undefined, choices);
        fc.pre(fresh > 0);
        const mark = await takeAllIn(tab);
        expect(await tab.undoSheet(mark)).toEqual({ ok: true, value: fresh });
        expect(comesTo(tab)).toEqual(before);
        expect(tab.picture.animals().map(({ id }) => tab.picture.tasks(id))).toEqual(tasks);
      }),
      runs(60),
    );
  });
});
