import Papa from 'papaparse';
import { expect, test } from 'vitest';
import { keptTable, salesTable } from '../../../src/domain/register/tables.ts';
import { writeCsv } from '../../../src/domain/register/write-csv.ts';
import { anEvent, aPicture, day } from '../../make.ts';
import { animalId, buyerId } from '../../make-ids.ts';

const [young, adult, dead] = [animalId(1), animalId(2), animalId(3)];
const on = (text: string): string => `${text}T12:00:00+02:00`;
const picture = aPicture([
  anEvent('arrived', {
    animal: young,
    name: '=26-001A',
    sex: 'female',
    origin: 'own',
    hatchedDay: day('2026-07-01'),
    at: on('2026-07-03'),
  }),
  anEvent('arrived', { animal: adult, name: 'Flint', origin: 'bought', at: on('2026-02-01') }),
  anEvent('arrived', { animal: dead, name: 'Quill', origin: 'gift', at: on('2025-02-01') }),
  anEvent('left', { animal: dead, how: 'died', at: on('2025-12-30') }),
  anEvent('source-stated', { animal: young, code: 'C', at: on('2026-08-01') }),
  anEvent('treated', { animal: adult, at: on('2026-03-04') }),
  anEvent('sold', { animal: young, at: on('2026-10-01') }),
  anEvent('handed-over', { animal: young, how: 'collected', at: on('2026-10-04') }),
  anEvent('left', { animal: young, how: 'sold', at: on('2026-10-04') }),
]);
const year = { from: day('2026-01-01'), to: day('2026-12-31') };
const buyers = [{ id: buyerId(1), name: 'Ada Rook', contact: '+44 1632 960221', since: year.from }];

const read = (table: readonly (readonly string[])[]) =>
  Papa.parse<Record<string, string>>(writeCsv(table), { header: true, skipEmptyLines: true }).data;

test('the register holds every animal kept in the span, with how it came and left', () => {
  const rows = read(keptTable(year, picture, undefined));
  expect(rows).toHaveLength(2);
  expect(rows[0]).toMatchObject({
    Name: 'Flint',
    Came: 'bought',
    'Came on': '2026-02-01',
    'Treated on': '2026-03-04',
    'Left on': '',
  });
  expect(rows[1]).toMatchObject({
    Name: "'=26-001A",
    Species: 'Python regius',
    Hatched: '2026-07-01',
    Came: 'hatched here',
    'Came on': '2026-07-01',
    'CITES source as stated': 'C',
    Left: 'sold',
    'Left on': '2026-10-04',
  });
  expect(read(keptTable({ ...year, from: day('2025-12-30') }, picture, undefined))).toHaveLength(3);
});

test('the sales say price, days from hatching and how it went', () => {
  expect(read(salesTable(year, picture, undefined))).toEqual([
    expect.objectContaining({
      'Sold on': '2026-10-01',
      Price: '450.00',
      Currency: 'EUR',
      // 31 days of July, 31 of August, 30 of September.
      'Days from hatching': '92',
      'Handed over on': '2026-10-04',
      'Handed over': 'collected',
      Ended: '',
    }),
  ]);
});

test('buyers stand in them by choice alone, and an erased one leaves an empty cell', () => {
  for (const table of [keptTable, salesTable]) {
    expect(Object.keys(read(table(year, picture, undefined))[0] ?? {})).not.toContain('Buyer');
    const named = read(table(year, picture, buyers)).find(({ Buyer }) => Buyer !== '');
    // A telephone number begins as a formula does.
    expect(named).toMatchObject({ Buyer: 'Ada Rook', 'Buyer’s contact': "'+44 1632 960221" });
    expect(read(table(year, picture, [])).every(({ Buyer }) => Buyer === '')).toBe(true);
  }
});
