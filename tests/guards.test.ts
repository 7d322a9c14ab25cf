import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

const root = new URL('../', import.meta.url);
const read = (path: string): string => readFileSync(new URL(path, root), 'utf8');

const filesIn = (folder: string, ends: RegExp): string[] =>
  readdirSync(new URL(folder, root), { recursive: true, encoding: 'utf8' })
    .filter((file) => ends.test(file))
    .map((file) => `${folder}${file}`);

const withoutComments = (text: string): string => text.replaceAll(/(^|\s)(\/\/|\*|\/\*).*$/gm, '');

const sources = filesIn('src/', /\.tsx?$/);
const tests = filesIn('tests/', /\.test\.tsx?$/);

test('the guards see the files they guard', () => {
  expect(sources.length).toBeGreaterThan(100);
  expect(tests.length).toBeGreaterThan(20);
});

test('no test is left out, and none runs alone', () => {
  const leftOut = /\b(?:test|it|describe)\.(?:only|skip|todo|fails)\b/;
  expect(tests.filter((file) => leftOut.test(read(file)))).toEqual([]);
});

test('no test sleeps for luck', () => {
  const guards = 'tests/guards.test.ts';
  const sleeps = tests.filter((file) => file !== guards && /\bsetTimeout\(/.test(read(file)));
  expect(sleeps).toEqual([]);
});

test('no file of the program is longer than 250 lines', () => {
  const long = sources.filter((file) => read(file).split('\n').length > 251);
  expect(long).toEqual([]);
});

test('letters are of two weights', () => {
  const styles = filesIn('src/', /\.css$/);
  expect(styles.length).toBeGreaterThan(10);
  const weights = styles.flatMap((file) =>
    Array.from(read(file).matchAll(/font-weight: (\w+)/g), ([, weight]) => weight),
  );
  expect(new Set(weights)).toEqual(new Set(['400', '700']));
});

test('what is installed comes from whatever registry the machine uses', () => {
  expect(read('package-lock.json')).not.toContain('"resolved"');
});

describe('what is fetched', () => {
  test('is nothing from another host: no program file names one', () => {
    const hosts = sources.flatMap((file) =>
      Array.from(
        withoutComments(read(file)).matchAll(/\bhttps?:\/\/[\w.-]+/g),
        ([host]) => `${file} ${host}`,
      ),
    );
    // Names of XML vocabularies are not fetched.
    const fetched = hosts.filter((each) => !/www\.w3\.org|\/\/example\./.test(each));
    expect(fetched).toEqual([]);
  });
});
