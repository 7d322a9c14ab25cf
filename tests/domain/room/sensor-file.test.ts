import { describe, expect, test } from 'vitest';
import { openFile, previewOf } from '../../../src/domain/room/csv/look-into.ts';
import type { ColumnMap } from '../../../src/domain/room/csv/columns.ts';
import { lineWords } from '../../../src/domain/csv/line-words.ts';
import { readReadings } from '../../../src/domain/room/csv/read-readings.ts';
import { celsiusOf, fahrenheitOf } from '../../../src/domain/core/units.ts';
import { minuteOf } from './make-air.ts';

const NOW = Date.parse('2026-11-24T22:00:00+01:00');
/** Central European Time with the summer time of 2026 (Directive 2000/84/EC). */
const summer = [Date.UTC(2026, 2, 29, 1), Date.UTC(2026, 9, 25, 1)] as const;
const berlin = (ms: number): number => (ms >= summer[0] && ms < summer[1] ? 120 : 60);

function look(text: string, changed: Partial<ColumnMap> = {}) {
  const opened = openFile(text);
  if (!opened.ok) return { problem: opened.problem };
  const map = { ...opened.value.guess.map, ...changed };
  const read = readReadings(opened.value.rows, map, berlin, NOW);
  return { map, read, preview: previewOf(opened.value, map, read, [], 120) };
}

const temps = (looked: ReturnType<typeof look>) => looked.read?.readings.map(({ tempC }) => tempC);
const minutes = (looked: ReturnType<typeof look>) =>
  looked.read?.readings.map(({ minute }) => minute);

// Invented files, each built as a kind of logger builds them.
describe('files of loggers', () => {
  test('commas, quoted header, seconds, °C', () => {
    const looked = look(
      '"Timestamp","Temperature(°C)","Relative_Humidity(%)"\n' +
        '"2026-11-24 10:00:12","21.5","58.2"\n"2026-11-24 10:05:12","21.7","58.0"\n',
    );
    expect(looked.map).toMatchObject({ date: 0, temp: 1, humidity: 2, unit: '°C' });
    expect(looked.preview?.unsure).toEqual([]);
    expect(looked.read?.readings).toMatchObject([
      { minute: minuteOf('2026-11-24T10:00:00+01:00'), tempC: 21.5, humidityPercent: 58.2 },
      { minute: minuteOf('2026-11-24T10:05:00+01:00'), tempC: 21.7, humidityPercent: 58 },
    ]);
  });

  test('semicolons, decimal comma, day first, a number for each row', () => {
    const looked = look(
      'Nr.;Datum;Temperatur [°C];Feuchte [%rF]\n' +
        '1;24.11.2026 10:00;21,5;58,2\n2;24.11.2026 10:05;21,7;58,0\n3;24.11.2026 10:10;21,9;57,7',
    );
    expect(looked.map).toMatchObject({ date: 1, temp: 2, humidity: 3, order: 'day first' });
    expect(temps(looked)).toEqual([21.5, 21.7, 21.9]);
  });

  test('tabs, °F, month first, twelve hours, lines before the header', () => {
    const looked = look(
      'Logger 0042\nExported by someone\n' +
        'Date\tTime\tTemp (°F)\n11/23/2026\t9:05:00 PM\t78.8\n11/23/2026\t9:10:00 PM\t86\n',
    );
    expect(looked.map).toMatchObject({ date: 0, time: 1, temp: 2, unit: '°F' });
    expect(looked.map?.order).toBe('month first');
    // NIST SP 811 (2008), Appendix B.8: t/°C = (t/°F − 32)/1.8.
    expect(temps(looked)).toEqual([26, 30]);
    expect(minutes(looked)?.[0]).toBe(minuteOf('2026-11-23T21:05:00+01:00'));
  });

  test('a mark for UTF-8, line ends of Windows, units beside the numbers', () => {
    const looked = look('\uFEFFtime,probe\r\n2026-11-24T09:00:00Z,25.1 °C\r\n');
    expect(looked.map).toMatchObject({ unit: '°C' });
    expect(temps(looked)).toEqual([25.1]);
    expect(looked.read?.usesZone).toBe(false);
  });

  test('the dew point is not taken for the temperature, nor the humidity', () => {
    const looked = look(
      'time,RH %,Dew point °C,Temperature °C\n2026-11-24 10:00,58,13.1,21.5\n2026-11-24 10:05,58,13.2,21.6',
    );
    expect(looked.map).toMatchObject({ temp: 3, humidity: 1 });
  });

  test('newest first comes out oldest first', () => {
    const looked = look('time,temp\n2026-11-24 10:05,21.7\n2026-11-24 10:00,21.5');
    expect(temps(looked)).toEqual([21.5, 21.7]);
  });

  test('no header at all', () => {
    const looked = look('2026-11-24 10:00,21.5\n2026-11-24 10:05,21.7');
    expect(looked.preview).toMatchObject({ names: ['Column 1', 'Column 2'], readings: 2 });
  });
});

describe('what is unsure is said', () => {
  test('a unit told by the numbers alone', () => {
    expect(look('time,temp\n2026-11-24 10:00,79.3').preview).toMatchObject({
      unsure: ['unit'],
      map: { unit: '°F' },
    });
    expect(look('time,temp\n2026-11-24 10:00,26.3').preview).toMatchObject({
      unsure: ['unit'],
      map: { unit: '°C' },
    });
  });

  test('an order of dates that could be either is the one in which time goes on evenly', () => {
    const rows = (dates: readonly string[]) =>
      `time,temp °C\n${dates.map((date) => `${date} 10:00,21.5`).join('\n')}`;
    const dayFirst = look(rows(['1/3/2026', '2/3/2026', '3/3/2026']));
    expect(dayFirst.preview).toMatchObject({ unsure: ['order'], map: { order: 'day first' } });
    const monthFirst = look(rows(['3/1/2026', '3/2/2026', '3/3/2026']));
    expect(monthFirst.preview).toMatchObject({ unsure: ['order'], map: { order: 'month first' } });
  });
});

describe('lines left out', () => {
  test('each is named, with its reason', () => {
    const looked = look(
      [
        'time,temp °C',
        '2026-11-24 10:00,21.5',
        '2026-11-24 10:05,ERR',
        '2026-11-24 10:10,',
        'yesterday,21.5',
        '2026-11-24 10:20,850',
        '2026-11-24 10:20,21.9',
        '2026-11-24 10:20:30,22',
        '2026-11-24 23:00,22',
        '2026-11-24 10:25,-127',
        '2026-11-24 10:30,ERR',
      ].join('\n'),
    );
    expect(temps(looked)).toEqual([21.5, 21.9]);
    expect(looked.read?.rejected).toEqual([
      { reason: 'temperature is no number', count: 2, lines: '3, 11', example: 'ERR' },
      { reason: 'no temperature', count: 1, lines: '4', example: '' },
      { reason: 'time not understood', count: 1, lines: '5', example: 'yesterday' },
      { reason: 'under -30 °C or over 70 °C', count: 2, lines: '6, 10', example: '850' },
      {
        reason: 'a second reading in the same minute',
        count: 1,
        lines: '8',
        example: '2026-11-24 10:20:30',
      },
      {
        reason: 'not yet: that time is still to come',
        count: 1,
        lines: '9',
        example: '2026-11-24 23:00',
      },
    ]);
  });

  test('lines in a row are named as one stretch', () => {
    expect(lineWords([7, 3, 4, 5, 9, 10])).toBe('3–5, 7, 9–10');
  });

  test('a humidity that is none is left out, and its temperature counts', () => {
    const looked = look(
      'time,temp °C,humidity\n2026-11-24 10:00,21.5,999\n2026-11-24 10:05,21.5,58',
    );
    expect(looked.read?.readings.map(({ humidityPercent }) => humidityPercent)).toEqual([
      undefined,
      58,
    ]);
  });
});

describe('clocks that change', () => {
  test('the hour that comes twice is told apart by the order of the lines', () => {
    const looked = look(
      'time,temp °C\n2026-10-25 01:30,24\n2026-10-25 02:00,23\n2026-10-25 02:30,22\n' +
        '2026-10-25 02:00,21\n2026-10-25 02:30,20\n2026-10-25 03:00,19',
    );
    const first = minuteOf('2026-10-25T01:30:00+02:00');
    expect(minutes(looked)).toEqual([0, 30, 60, 90, 120, 150].map((since) => first + since));
    expect(looked.read?.readings.map(({ offsetMin }) => offsetMin)).toEqual([
      120, 120, 120, 60, 60, 60,
    ]);
    expect(looked.read).toMatchObject({ inRepeatedHour: 4, rejected: [] });
  });

  test('also where the file is newest first', () => {
    const looked = look(
      'time,temp °C\n2026-10-25 03:00,19\n2026-10-25 02:30,20\n2026-10-25 02:30,22\n2026-10-25 01:30,24',
    );
    const first = minuteOf('2026-10-25T01:30:00+02:00');
    expect(minutes(looked)).toEqual([0, 60, 120, 150].map((since) => first + since));
    expect(temps(looked)).toEqual([24, 22, 20, 19]);
  });

  test('the hour that never was holds no reading, and the line is named', () => {
    const looked = look(
      'time,temp °C\n2026-03-29 01:55,24\n2026-03-29 02:30,23\n2026-03-29 03:00,22',
    );
    expect(temps(looked)).toEqual([24, 22]);
    expect(looked.read?.rejected).toEqual([
      {
        reason: 'clocks went forward: that hour never was',
        count: 1,
        lines: '3',
        example: '2026-03-29 02:30',
      },
    ]);
    const [before = 0, after = 0] = minutes(looked) ?? [];
    expect(after - before).toBe(5);
  });

  test('a file that names its offset needs no zone', () => {
    const looked = look('time,temp °C\n2026-03-29T02:30:00+01:00,23');
    expect(minutes(looked)).toEqual([minuteOf('2026-03-29T03:30:00+02:00')]);
    expect(looked.read?.usesZone).toBe(false);
  });
});

describe('a wrong file', () => {
  test.each([
    { what: 'nothing', text: ' \n ', code: 'csv-empty' },
    { what: 'a picture', text: 'PNG\r\n\u001a\n\0\0\0\rIHDR', code: 'csv-not-text' },
    { what: 'UTF-16', text: 't\0i\0m\0e\0', code: 'csv-not-text' },
    { what: 'a letter', text: 'Dear keeper\nhow are you', code: 'csv-no-table' },
    { what: 'another table', text: 'name,sex\nSorrel,female\nCedar,male', code: 'csv-no-readings' },
    { what: 'days alone', text: 'day,temp\n2026-11-24,21\n2026-11-25,22', code: 'csv-no-readings' },
    { what: 'half a file', text: 'time,temp\n2026-11-24 10:00,"21.5', code: 'csv-open-quote' },
  ])('$what is refused, and it says why', ({ text, code }) => {
    expect(look(text)).toMatchObject({ problem: { code, message: expect.stringMatching(/\.$/) } });
  });
});

// NIST SP 811 (2008), Appendix B.8, and the trap of the trade: 30 °C is 86 °F, not 90.
test.each([
  { tempF: 32, tempC: 0 },
  { tempF: 70, tempC: 21.111_111 },
  { tempF: 78, tempC: 25.555_556 },
  { tempF: 86, tempC: 30 },
  { tempF: 90, tempC: 32.222_222 },
  { tempF: 212, tempC: 100 },
  { tempF: -40, tempC: -40 },
])('$tempF °F is $tempC °C', ({ tempF, tempC }) => {
  expect(celsiusOf(tempF)).toBeCloseTo(tempC, 6);
  expect(fahrenheitOf(celsiusOf(tempF))).toBeCloseTo(tempF, 10);
});

test('a tenth of °F can be had back from what is kept', () => {
  for (let tenths = 320; tenths < 1_200; tenths += 1) {
    const tempF = tenths / 10;
    const kept = look(`time,temp °F\n2026-11-24 10:00,${tempF}`).read?.readings[0]?.tempC ?? 0;
    expect(Math.round(fahrenheitOf(kept) * 10) / 10).toBe(tempF);
  }
});
