import { describe, expect, test } from 'vitest';
import { makeXlsx } from '../workbook/make-xlsx.ts';
import { aTab, animal, counts, lookAt, sheetFile, table, takeAllIn } from './sheet-file.ts';

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
      '1 weight',
      '2 meals',
      '1 shed',
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
