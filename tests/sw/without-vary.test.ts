import { expect, test } from 'vitest';
import { withoutVary } from '../../src/sw/without-vary.ts';

// Service Workers, W3C, "request matches cached item": a kept answer with `Vary: Origin` is not found
// by a request whose `Origin` differs from that of the request it was kept for.
test('an answer is kept whole, but for what it varies by', async () => {
  const headers = { 'content-type': 'text/javascript', vary: 'Origin', etag: '"7"' };
  const kept = withoutVary(new Response('export {};', { status: 200, headers }));
  expect(kept?.status).toBe(200);
  expect(Object.fromEntries(kept?.headers ?? [])).toEqual({
    'content-type': 'text/javascript',
    etag: '"7"',
  });
  expect(await kept?.text()).toBe('export {};');
});

test.each([404, 500])('an error, %i, is not kept', (status) => {
  expect(withoutVary(new Response('no', { status }))).toBeNull();
});
