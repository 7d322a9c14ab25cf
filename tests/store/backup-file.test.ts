import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { FileLike } from '../../src/domain/file-like.ts';
import { readBackup } from '../../src/store/backup-file.ts';
import { backupPieces } from '../../src/store/backup-pieces.ts';
import { anyLog, runs } from '../arbitrary.ts';
import { backupText } from '../backup-text.ts';
import { anEvent } from '../make.ts';
import { textFile } from './text-file.ts';

const contents = { collection: 'ours', made: '2026-11-24T22:00:00+01:00' };

test('what is written is read again, whatever the records', async () => {
  await fc.assert(
    fc.asyncProperty(
      anyLog,
      fc.array(fc.dictionary(fc.string(), fc.jsonValue())),
      async (log, odd) => {
        const records: unknown[] = [...log, ...(JSON.parse(JSON.stringify(odd)) as unknown[])];
        const read = await readBackup(textFile(backupText({ ...contents, records })));
        const back = read.ok ? read.value : undefined;
        expect(back).toMatchObject(contents);
        expect(back?.records).toHaveLength(records.length);
        expect(back?.records).toEqual(expect.arrayContaining(records));
      },
    ),
    runs(40),
  );
});

test('the same records give the same file, in whatever order they are at hand', async () => {
  const records = [anEvent('weighed'), anEvent('shed'), anEvent('noted')];
  const one = backupText({ ...contents, records });
  expect(backupText({ ...contents, records: records.toReversed() })).toBe(one);
});

test('the check is one that Node agrees to, in whatever script the records are', () => {
  const words = fc.string({ unit: 'grapheme', maxLength: 60 });
  fc.assert(
    fc.property(anyLog, words, (log, text) => {
      const written = backupText({ ...contents, records: [...log, { id: 'note', text }] });
      const body = written.slice(written.indexOf('\n') + 1);
      const check = createHash('sha256').update(body).digest('hex');
      expect(written).toContain(`"check":"sha-256:${check}"`);
      expect(body).toContain(JSON.stringify(text));
    }),
    runs(40),
  );
});

test('a long log comes in several pieces, and the check is of all of them', () => {
  const text = 'x'.repeat(300);
  const records = Array.from({ length: 1_500 }, () => anEvent('noted', { text }));
  const pieces = Array.from(backupPieces({ ...contents, records }), (piece) => Buffer.from(piece));
  expect(pieces.length).toBeGreaterThan(2);
  const [head = '', ...body] = Buffer.concat(pieces)
    .toString()
    .split(/(?<=\n)/);
  expect(body).toHaveLength(records.length);
  const check = createHash('sha256').update(body.join('')).digest('hex');
  expect(head).toContain(`"check":"sha-256:${check}"`);
});

test('it is a text that a person can read, one record a line', async () => {
  const text = backupText({
    ...contents,
    records: [anEvent('noted', { text: 'two\nlines' })],
  });
  const lines = text.trimEnd().split('\n');
  expect(lines).toHaveLength(2);
  expect(JSON.parse(lines[1]!)).toMatchObject({ type: 'noted', text: 'two\nlines' });
});

describe('a bad file is refused with its own message', async () => {
  const records = [anEvent('weighed'), anEvent('shed'), anEvent('noted')];
  const good = backupText({ ...contents, records });
  const [head = '', ...lines] = good.trimEnd().split('\n');
  const resigned = async (...bodies: string[]): Promise<string> => {
    const body = bodies.map((line) => `${line}\n`).join('');
    const hash = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(body));
    const check = `sha-256:${Buffer.from(hash).toString('hex')}`;
    return `${JSON.stringify({ ...JSON.parse(head), records: bodies.length, check })}\n${body}`;
  };
  const withHead = (more: object): string =>
    good.replace(head, JSON.stringify({ ...JSON.parse(head), ...more }));

  test.each([
    { what: 'empty', text: '', code: 'backup-empty' },
    { what: 'cut within a line', text: good.slice(0, -30), code: 'backup-cut' },
    {
      what: 'cut at a line end',
      text: `${[head, ...lines.slice(0, 2)].join('\n')}\n`,
      code: 'backup-cut',
    },
    { what: 'cut after its first line', text: head, code: 'backup-cut' },
    { what: 'changed in one digit', text: good.replace('1500', '1600'), code: 'backup-changed' },
    {
      what: 'with line ends of another system',
      text: good.replaceAll('\n', '\r\n'),
      code: 'backup-changed',
    },
    { what: 'of a newer version', text: withHead({ version: 2 }), code: 'backup-too-new' },
    { what: 'of another program', text: '{"format":"diary"}\n', code: 'backup-foreign' },
    { what: 'a web page', text: '<!doctype html><p>Not found', code: 'backup-foreign' },
    { what: 'without a count', text: withHead({ records: undefined }), code: 'backup-damaged' },
    { what: 'with a count below zero', text: withHead({ records: -1 }), code: 'backup-damaged' },
    { what: 'with a line that is no JSON', text: await resigned('{"id":'), code: 'backup-damaged' },
    {
      what: 'with a line that is no record',
      text: await resigned(lines[0]!, 'null'),
      code: 'backup-damaged',
    },
    { what: 'with a number for a record', text: await resigned('7'), code: 'backup-damaged' },
  ])('$what: $code', async ({ text, code }) => {
    expect(await readBackup(textFile(text))).toEqual({
      ok: false,
      problem: { code, message: expect.stringMatching(/\.$/) },
    });
  });

  test('a cut file says at which line, and a damaged one too', async () => {
    const cut = await readBackup(textFile(good.slice(0, -30)));
    expect(cut).toMatchObject({ problem: { message: expect.stringContaining('line 4 of 4') } });
    const damaged = await readBackup(textFile(await resigned(lines[0]!, '{')));
    expect(damaged).toMatchObject({ problem: { message: expect.stringContaining('Line 3') } });
  });

  test('a file that cannot be read at all says so', async () => {
    const gone: FileLike = {
      size: 10,
      slice: () => gone,
      text: async () => Promise.reject(new Error('gone')),
    };
    expect(await readBackup(gone)).toMatchObject({ problem: { code: 'file-unreadable' } });
  });

  test('of 100 MB of something else, no more than the beginning is read', async () => {
    let read = 0;
    const huge = (from: number, to: number): FileLike => ({
      size: to - from,
      slice: (start, end) => huge(from + start, Math.min(from + end, to)),
      async text() {
        read += to - from;
        return 'x'.repeat(to - from);
      },
    });
    expect(await readBackup(huge(0, 100_000_000))).toMatchObject({
      problem: { code: 'backup-foreign' },
    });
    expect(read).toBeLessThan(10_000);
  });
});
