import { describe, expect, test } from 'vitest';
import type { Moment } from '../../../src/domain/core/calendar.ts';
import type { RackEvent } from '../../../src/domain/events/event.ts';
import { readEvent } from '../../../src/domain/events/read-event.ts';
import { weightView } from '../../../src/domain/views/weight-view.ts';
import { readBackup } from '../../../src/store/backup-file.ts';
import { backupText } from '../../backup-text.ts';
import { anEvent, aPicture, day, moment } from '../../make.ts';
import { animalId } from '../../make-ids.ts';
import { textFile } from '../../store/text-file.ts';
import { openRecord } from './open-record.ts';

// The open record of twelve snakes of 2010, as a backup that is read in and folded to a picture. Source: Laarhoven
// B. & Kooijman S.A.L.M. 2010, Add-my-Pet collection, entry Python_regius (see open-record.ts).

const at = (date: string, hour: number): Moment => moment(`${date}T${hour}:00:00+01:00`);
const idOf = (n: number) => animalId(n + 1);

const record: readonly RackEvent[] = openRecord.flatMap((snake, n): RackEvent[] => {
  const animal = idOf(n);
  const { sex, hatched } = snake;
  return [
    anEvent('arrived', {
      animal,
      name: snake.snake,
      sex,
      hatchedDay: day(hatched),
      at: at('2010-03-30', 20),
    }),
    ...snake.masses.map(([date, massG]) => anEvent('weighed', { animal, massG, at: at(date, 20) })),
    ...snake.meals.map(([date, eachG]) =>
      anEvent('meal-offered', {
        animal,
        prey: { kind: 'other', size: 'prey', eachG, count: 1, state: 'thawed' },
        at: at(date, 21),
      }),
    ),
    ...snake.sheds.map((date) => anEvent('shed', { animal, quality: 'whole', at: at(date, 19) })),
    ...(snake.snake === '06'
      ? [anEvent('laid', { animal, clutchMassG: 472, good: 4, slugs: 0, at: at('2010-06-06', 12) })]
      : []),
  ];
});

async function importedRecord(): Promise<readonly RackEvent[]> {
  const records = record.toSorted((a, b) => (a.id < b.id ? -1 : 1));
  const text = backupText({
    collection: record[0]?.id ?? '',
    made: '2010-12-31T20:00:00+01:00',
    records,
  });
  const backup = await readBackup(textFile(text));
  if (!backup.ok) throw new Error('The backup cannot be read.');
  return backup.value.records.map((raw) => {
    const read = readEvent(raw);
    if (!read.ok) throw new Error(read.problem.why);
    return read.value;
  });
}

describe('the record of 2010 through a backup into the picture', async () => {
  const events = await importedRecord();
  const soFar = (night: string) =>
    aPicture(
      events.filter((event) => event.at <= at(night, 22)),
      at(night, 22),
    );
  const weighed = openRecord.flatMap(({ snake, masses }, n) =>
    masses.map(([date]) => ({ snake, date, id: idOf(n) })),
  );

  test('comes in whole', () => {
    expect(events).toHaveLength(record.length);
    expect(aPicture(events, at('2010-12-03', 22)).living()).toHaveLength(12);
  });

  test('every flag on the evening of a weight says what it looked at', () => {
    const flags = weighed.flatMap(({ snake, date, id }) => {
      const picture = soFar(date);
      return picture
        .tasks(id)
        .filter(({ rule }) => rule === 'W2')
        .map((task) => ({ snake, date, task }));
    });
    for (const { task } of flags) {
      const said = task.because.join(' ');
      for (const cause of ['laying', 'gut', 'shed']) expect(said).toContain(cause);
    }
    // Of four falls by a tenth or more, only the hatchling that was never seen to eat is alarmed for.
    expect(flags.map(({ snake, date }) => `${snake} ${date}`)).toEqual(['10 2010-10-01']);
  });

  // The 10 % rule fires for these three too: eggs, a gut that emptied round a shed, a weight that cannot be true.
  test.each([
    ['06', '2010-06-06', /She laid 472\sg of eggs/],
    ['02', '2010-12-03', /food in it/],
    ['12', '2010-11-13', /209\sg on 24 Oct 2010 stands alone/],
  ] as const)('snake %s on %s: silent, and the cause is named', (snake, date, cause) => {
    const n = openRecord.findIndex((each) => each.snake === snake);
    const view = weightView(idOf(n), soFar(date));
    expect(view?.speaks).toBe(false);
    expect(view?.looked.join(' ')).toMatch(cause);
  });

  test('every page of it can be worked out', () => {
    const picture = aPicture(events, at('2010-12-03', 22));
    for (const [n] of openRecord.entries()) {
      const view = weightView(idOf(n), picture);
      expect(view?.trend).toMatch(/\.$/);
      expect(view?.readiness.every(({ says }) => says.endsWith('.'))).toBe(true);
    }
  });
});
