import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Answers } from '../../src/domain/sheet/asked.ts';
import { runs } from '../arbitrary.ts';
import type { Tab } from './make-world.ts';
import { aTab, lookAt, table, takeAllIn } from './sheet-file.ts';

/** All that the records come to, without the records that no longer count. */
const comesTo = (tab: Tab) =>
  structuredClone(
    new Map([...tab.picture.ledger.subjects].toSorted(([a], [b]) => (a < b ? -1 : 1))),
  );

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
