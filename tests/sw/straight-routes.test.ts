import { expect, test } from 'vitest';
import {
  changingFiles,
  frontName,
  isOldFront,
  straightRoutes,
} from '../../src/sw/straight-routes.ts';

const files = [
  { url: 'index.html', revision: '0123456789abcdef0123456789abcdef' },
  { url: 'assets/worker-abc123.js', revision: null },
  { url: 'icon.svg', revision: 'fedcba9876543210fedcba9876543210' },
];
const caches = { front: 'front', hashed: 'hashed' };
const laid = (scope: string) =>
  straightRoutes(scope, files, caches).map(({ condition: { urlPattern }, source }) => [
    urlPattern.pathname,
    urlPattern.search,
    source.cacheName,
  ]);

test('what keeps its name has its own address, and all that is named by its hash has one', () => {
  expect(laid('https://example.org/herd/')).toEqual([
    ['/herd/', '', 'front'],
    ['/herd/index.html', '', 'front'],
    ['/herd/icon.svg', '', 'front'],
    ['/herd/assets/*', '', 'hashed'],
  ]);
});

// WHATWG URL Pattern, "escape a pattern string": + * ? : { } ( ) and the backslash.
test('a folder whose name has a sign with a meaning in patterns is taken by its name', () => {
  expect(laid('https://example.org/a(b)*:c+/')[0]).toEqual([
    String.raw`/a\(b\)\*\:c\+/`,
    '',
    'front',
  ]);
});

test('a version has a front of its own: any changed file gives another', () => {
  expect(changingFiles(files)).toEqual(['index.html', 'icon.svg']);
  const before = frontName(files);
  const after = frontName(
    files.map((file) =>
      file.url === 'icon.svg' ? { ...file, revision: '00000000000000000000000000000000' } : file,
    ),
  );
  expect(frontName([...files])).toBe(before);
  expect(after).not.toBe(before);
  expect(isOldFront(before, after)).toBe(true);
  expect(isOldFront(after, after)).toBe(false);
  expect(isOldFront('workbox-precache-v2-https://example.org/', after)).toBe(false);
});
