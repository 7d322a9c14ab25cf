import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import type { RackEvent } from '../../../src/domain/events/event.ts';
import { newestVersion } from '../../../src/domain/events/newest-versions.ts';
import { readEvent, readStored } from '../../../src/domain/events/read-event.ts';
import { sayWhatIsWrong } from '../../../src/domain/events/say-what-is-wrong.ts';
import { anyEvent, anyEventOf, eventTypes, runs } from '../../arbitrary.ts';
import { anEvent } from '../../make.ts';

beforeAll(sayWhatIsWrong);

const throughJson = (event: RackEvent): unknown => JSON.parse(JSON.stringify(event));

describe.each(eventTypes)('a record of kind %s', (type) => {
  test('is the same after it was written down and read', () => {
    fc.assert(
      fc.property(anyEventOf(type), (event) => {
        expect(readEvent(throughJson(event))).toEqual({ ok: true, value: event });
        expect(readStored(throughJson(event))).toEqual({ ok: true, value: event });
      }),
      runs(20),
    );
  });

  test('of a newer version is kept whole, with the reason', () => {
    const raw = { ...anEvent(type), v: 99, unheardOf: { of: [1] } };
    const read = readEvent(raw);
    expect(read).toEqual({ ok: false, problem: { raw, why: expect.stringMatching(/^v: .*99/) } });
    expect(readStored(raw)).toEqual(read);
  });

  test('with a field it does not have is not read in part', () => {
    const read = readEvent({ ...anEvent(type), surprise: 1 });
    expect(read).toMatchObject({
      ok: false,
      problem: { why: expect.stringContaining('surprise') },
    });
  });
});

const HTML = '<script>alert("hi")</script>&amp;<b>';

/** The event with every free text in it set to another one: texts are those that may be HTML. */
function withTexts(event: RackEvent, text: string): unknown {
  const replaced = Object.entries(throughJson(event) as object).map(([key, value]) => {
    const isText = typeof value === 'string' && readEvent({ ...event, [key]: '<' }).ok;
    return [key, isText ? text.slice(0, key === 'by' ? 8 : 12) : value];
  });
  return Object.fromEntries(replaced);
}

test('HTML in a text is text, and stays so letter for letter', () => {
  fc.assert(
    fc.property(anyEvent, (event) => {
      const raw = withTexts(event, HTML);
      expect(readEvent(raw)).toEqual({ ok: true, value: raw });
    }),
    runs(150),
  );
});

test.each([
  { field: 'massG', value: 'heavy', why: 'a word for a number' },
  { field: 'massG', value: 9_999, why: 'more than any of them weighs' },
  { field: 'massG', value: null, why: 'nothing' },
  { field: 'animal', value: '<b>', why: 'HTML where an id belongs' },
  { field: 'at', value: '2026-11-24T22:00:00', why: 'a moment without its offset' },
  { field: 'at', value: '2026-02-30T22:00:00Z', why: 'a day that is not' },
  { field: 'loggedAt', value: 'yesterday', why: 'no moment at all' },
  { field: 'id', value: '1', why: 'an id of another kind' },
  { field: 'precision', value: 'roughly', why: 'no precision known here' },
  { field: 'remark', value: '', why: 'an empty remark' },
  { field: 'remark', value: 'x'.repeat(501), why: 'a remark without end' },
  { field: 'by', value: ['A'], why: 'a list for a text' },
])('$field: $why is unreadable, and the reason names the field', ({ field, value }) => {
  const raw = { ...anEvent('weighed'), [field]: value };
  const read = readEvent(raw);
  expect(read).toEqual({ ok: false, problem: { raw, why: expect.stringContaining(field) } });
});

test('an unknown kind of record is kept whole, with the reason', () => {
  const raw = { ...anEvent('weighed'), type: 'levitated' };
  const why = expect.stringMatching(/^type: "levitated"/);
  expect(readEvent(raw)).toEqual({ ok: false, problem: { raw, why } });
  expect(readStored(raw)).toEqual({ ok: false, problem: { raw, why } });
});

test('whatever lies in a log or a file, reading it never throws', () => {
  const oddities = fc.constantFrom({ type: '__proto__', v: 1 }, { type: 'constructor' });
  fc.assert(
    fc.property(fc.oneof(fc.jsonValue(), oddities, fc.constant(undefined)), (raw) => {
      expect(readEvent(raw).ok).toBe(false);
      expect(readStored(raw).ok).toBe(false);
    }),
    runs(300),
  );
});

test('there is one version of each kind that is written', () => {
  for (const type of eventTypes) expect(newestVersion(type)).toBeGreaterThan(0);
  expect(newestVersion('levitated')).toBeUndefined();
});
