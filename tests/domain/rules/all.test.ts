import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { rules } from '../../../src/domain/rules/all.ts';
import { valueReasons } from '../../../src/domain/protocol/value-reasons.ts';
import { protocolValues, type ProtocolKey } from '../../../src/domain/protocol/values.ts';
import { sources } from '../../../src/domain/sources.ts';

const here = new URL('.', import.meta.url);
const tests = readdirSync(here)
  .map((file) => readFileSync(new URL(file, here), 'utf8'))
  .join('\n');

test('no two rules share an id', () => {
  expect(new Set(rules.map(({ id }) => id)).size).toBe(rules.length);
});

test.each(rules)('rule $id has a test that names it, and a source', ({ id, source }) => {
  expect(tests).toMatch(new RegExp(`(test|describe)[^\\n]*'\\[${id}\\] |\\)\\('\\[${id}\\] `));
  expect(sources).toHaveProperty(source);
});

test('every rule file is listed, for one that is not does not run', () => {
  const folder = new URL('../../../src/domain/rules/', import.meta.url);
  const files = readdirSync(folder).filter((file) => file.startsWith('rule-'));
  expect(files.length).toBe(rules.length);
});

test.each(Object.keys(protocolValues) as ProtocolKey[])(
  'protocol value %s lies in the range in use, and says why and whence',
  (key) => {
    const { value, from, to } = protocolValues[key];
    expect(value).toBeGreaterThanOrEqual(from);
    expect(value).toBeLessThanOrEqual(to);
    const { why, source } = valueReasons[key];
    expect(why).toMatch(/\.$/);
    expect(sources).toHaveProperty(source);
  },
);
