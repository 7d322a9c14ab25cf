import fc from 'fast-check';
import { expect, test } from 'vitest';
import { RackEvent } from '../src/domain/events/event.ts';
import { anyEventOf, eventTypes, runs } from './arbitrary.ts';

test.each(eventTypes)('what is made up as %s is a valid record', (type) => {
  fc.assert(
    fc.property(anyEventOf(type), (event) => {
      expect(RackEvent.safeParse(event).error?.issues).toBeUndefined();
    }),
    runs(50),
  );
});
