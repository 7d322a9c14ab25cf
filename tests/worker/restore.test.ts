import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { EventId } from '../../src/domain/core/ids.ts';
import type { RackEvent } from '../../src/domain/events/event.ts';
import { readBackup } from '../../src/store/backup-file.ts';
import { anyLog, runs } from '../arbitrary.ts';
import { backupText } from '../backup-text.ts';
import { anEvent } from '../make.ts';
import { textFile } from '../store/text-file.ts';
import { aDevice, openTab, settleIn, type Tab } from './make-world.ts';

const OURS = '0M2B6WV3R000TAB01';
const backupOf = async (records: readonly unknown[], collection = OURS) =>
  textFile(backupText({ collection, made: '2026-11-24T22:00:00+01:00', records }));

/** A backup, and what the person did about it: looked, then took it in. */
async function takeIn(tab: Tab, records: readonly unknown[], collection = OURS) {
  const looked = await tab.lookInto(await backupOf(records, collection));
  return { looked, taken: await tab.takeIn(null) };
}

const backedUp = async (tab: Tab): Promise<string> => (await tab.backUp(null)).file.text();

const ids = async (tab: Tab): Promise<readonly string[]> =>
  (await tab.onDisk()).map((each) => (each as { id: string }).id).toSorted();

describe('taking in a backup', () => {
  test('is a union: what either had is there once, and the picture is that of all', async () => {
    const two = anyLog.chain((log) => fc.tuple(fc.subarray(log), fc.subarray(log)));
    await fc.assert(
      fc.asyncProperty(two, async ([mine, theirs]) => {
        const [tab, other] = [await openTab(aDevice()), await openTab(aDevice())];
        await takeIn(tab, mine);
        await takeIn(tab, theirs);
        await takeIn(other, theirs);
        await takeIn(other, mine);
        const all = [...new Set([...mine, ...theirs].map(({ id }) => id))].toSorted();
        expect(await ids(tab)).toEqual(all);
        expect(await ids(other)).toEqual(all);
        expect(tab.picture.ledger.subjects).toEqual(other.picture.ledger.subjects);
      }),
      runs(40),
    );
  });

  test('twice adds nothing, and says so before', async () => {
    const tab = await openTab(aDevice());
    const records = [anEvent('arrived'), anEvent('weighed')];
    const first = await takeIn(tab, records);
    expect(first.looked).toMatchObject({ value: { records: 2, fresh: 2, known: 0, animals: 1 } });
    const again = await takeIn(tab, records);
    expect(again).toMatchObject({ looked: { value: { fresh: 0, known: 2 } }, taken: { value: 0 } });
    expect(await tab.onDisk()).toEqual(records);
  });

  test('of one’s own changes nothing', async () => {
    const tab = await openTab(aDevice());
    await settleIn(tab);
    const before = await tab.onDisk();
    const text = await backedUp(tab);
    const looked = await tab.lookInto(textFile(text));
    expect(looked).toMatchObject({ value: { fresh: 0, unreadable: 0 } });
    expect(await tab.takeIn(null)).toEqual({ ok: true, value: 0 });
    expect(await tab.onDisk()).toEqual(before);
  });

  test('with HTML in it keeps every letter, as text', async () => {
    const tab = await openTab(aDevice());
    const html = '<img src=x onerror=alert(1)>';
    await takeIn(tab, [
      anEvent('arrived', { name: html, traits: html }),
      anEvent('noted', { text: html }),
    ]);
    const text = await backedUp(tab);
    const back = await readBackup(textFile(text));
    expect(back.ok && back.value.records).toEqual(await tab.onDisk());
    expect(tab.picture.animals()[0]).toMatchObject({ name: html, traits: html });
  });

  test('looking alone changes nothing, and nothing can be taken in without a look', async () => {
    const tab = await openTab(aDevice());
    await tab.lookInto(await backupOf([anEvent('arrived')]));
    expect(await tab.onDisk()).toEqual([]);
    const other = await openTab(aDevice());
    expect(await other.takeIn(null)).toMatchObject({ problem: { code: 'nothing-looked-into' } });
  });
});

describe('records of a newer version', () => {
  const newer = [
    { ...anEvent('weighed'), v: 9, unheardOf: true },
    { ...anEvent('noted'), type: 'levitated' },
  ];

  test('are kept as they are, counted, explained and handed on', async () => {
    const device = aDevice();
    const tab = await openTab(device);
    const { looked } = await takeIn(tab, [anEvent('arrived'), ...newer]);
    expect(looked).toMatchObject({
      value: {
        fresh: 1,
        unreadable: 2,
        reasons: [expect.stringMatching(/^Line \d: /), expect.any(String)],
      },
    });
    for (const each of [tab, await openTab(device)]) {
      expect(each.keeper.status().unreadable).toBe(2);
      const back = await readBackup((await each.backUp(null)).file);
      expect(back.ok && back.value.records).toEqual(expect.arrayContaining(newer));
    }
  });

  test('are not kept twice', async () => {
    const tab = await openTab(aDevice());
    await takeIn(tab, newer);
    await takeIn(tab, newer);
    expect(await tab.onDisk()).toHaveLength(2);
  });
});

test('a record that claims a version it does not fit is refused, with line and field', async () => {
  const tab = await openTab(aDevice());
  const wrong = { ...anEvent('weighed'), massG: 'heavy' };
  const looked = await tab.lookInto(await backupOf([anEvent('arrived'), wrong]));
  expect(looked).toMatchObject({ ok: false, problem: { code: 'backup-damaged' } });
  expect(!looked.ok && looked.problem.message).toMatch(/^Line \d is damaged.*massG/);
  expect(await tab.takeIn(null)).toMatchObject({ ok: false });
  expect(await tab.onDisk()).toEqual([]);
});

describe('which collection a backup is of', () => {
  test('another one is not mixed in', async () => {
    const tab = await openTab(aDevice());
    await settleIn(tab);
    const before = await tab.onDisk();
    const { looked, taken } = await takeIn(tab, [anEvent('arrived')], 'SOMEONE ELSE');
    expect(looked).toMatchObject({ problem: { code: 'another-collection' } });
    expect(taken).toMatchObject({ ok: false });
    expect(await tab.onDisk()).toEqual(before);
  });

  test('an empty device takes on the one it takes in, though it was backed up empty', async () => {
    const tab = await openTab(aDevice());
    await tab.backUp(null);
    await takeIn(tab, [anEvent('arrived')]);
    const { looked } = await takeIn(tab, [anEvent('arrived', { name: 'Tansy' })]);
    expect(looked).toMatchObject({ ok: true, value: { fresh: 1 } });
  });
});

test('a record from a phone whose clock is ahead can be corrected at once', async () => {
  const device = aDevice();
  const tab = await openTab(device);
  const ahead = aDevice();
  ahead.clock = { ...ahead.clock, ms: ahead.clock.ms + 3_600_000 };
  const other = await openTab(ahead, 'TAB02');
  const { sorrel } = await settleIn(other);
  const theirs = await other.onDisk();
  await takeIn(tab, theirs, (await ahead.notes.load()).collection);
  const weighed = theirs.find((each) => (each as RackEvent).type === 'weighed') as { id: EventId };
  await tab.record({
    drafts: [
      {
        type: 'weighed',
        animal: sorrel,
        massG: 1_530,
        replaces: { id: weighed.id, reason: 'mistyped' },
      },
    ],
  });
  expect(tab.picture.animal(sorrel)?.weighings.map(({ massG }) => massG)).toEqual([1_530]);
});
