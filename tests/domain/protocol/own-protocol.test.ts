import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  known,
  protocolWith,
  type ProtocolChanges,
} from '../../../src/domain/protocol/own-protocol.ts';
import { refusalsOf, unusualIn } from '../../../src/domain/protocol/refuse-changes.ts';
import { isPossible, limitsOf } from '../../../src/domain/protocol/value-limits.ts';
import { valueReasons } from '../../../src/domain/protocol/value-reasons.ts';
import { valueOrders } from '../../../src/domain/protocol/value-orders.ts';
import type { ProtocolValue } from '../../../src/domain/protocol/protocol-value.ts';
import {
  defaultProtocol,
  protocolValues,
  type ProtocolKey,
} from '../../../src/domain/protocol/values.ts';
import { runs } from '../../arbitrary.ts';

const keys = Object.keys(protocolValues) as ProtocolKey[];
const about = (key: ProtocolKey): ProtocolValue => protocolValues[key];

/** Any number for any value: possible ones, impossible ones and nonsense. */
const anyNumber = (key: ProtocolKey) => {
  const { least, most, fineness } = limitsOf(about(key));
  const steps = Math.floor((most - least) / fineness);
  return fc.oneof(
    fc.integer({ min: 0, max: steps }).map((n) => Number((least + n * fineness).toFixed(3))),
    fc.double({ noDefaultInfinity: false }),
    fc.constant(null),
  );
};
const anyChange = fc
  .constantFrom(...keys)
  .chain((key) => anyNumber(key).map((value): ProtocolChanges => ({ [key]: value })));
const anyChanges = fc.array(anyChange, { maxLength: 12 }).map((all): ProtocolChanges => {
  const merged: ProtocolChanges = Object.assign({}, ...all);
  return merged;
});

describe('the keeper’s own numbers over the defaults', () => {
  test('without any, and with each set back, are the defaults', () => {
    expect(protocolWith()).toEqual(defaultProtocol);
    fc.assert(
      fc.property(anyChanges, (changes) => {
        const back = Object.fromEntries(Object.keys(changes).map((key) => [key, null]));
        expect(protocolWith(changes, back)).toEqual(defaultProtocol);
      }),
      runs(100),
    );
  });

  test('count one by one, where they can be and nothing falls, and leave the rest alone', () => {
    fc.assert(
      fc.property(anyChange, (change) => {
        const [[key, value]] = known(change) as [[ProtocolKey, number | null]];
        const protocol = protocolWith(change);
        const counts = value !== null && refusalsOf({}, change).length === 0;
        expect(protocol).toEqual({ ...defaultProtocol, ...(counts ? { [key]: value } : {}) });
      }),
      runs(300),
    );
  });

  test('are a protocol that can be worked with, whatever a log holds', () => {
    fc.assert(
      fc.property(anyChanges, (changes) => {
        const protocol = protocolWith({ ...changes, ofALaterVersion: 7, constructor: 1 });
        expect(Object.keys(protocol).toSorted()).toEqual(keys.toSorted());
        for (const key of keys) expect(isPossible(protocol[key], about(key))).toBe(true);
        for (const order of valueOrders) {
          const numbers = order.map((key) => protocol[key]);
          expect(numbers).toEqual(numbers.toSorted((a, b) => a - b));
        }
      }),
      runs(300),
    );
  });

  test('set in turn are the last of each', () => {
    fc.assert(
      fc.property(anyChanges, anyChanges, (first, second) => {
        expect(protocolWith(first, second)).toEqual(protocolWith({ ...first, ...second }));
      }),
      runs(100),
    );
  });
});

describe('a number that is set', () => {
  test.each([
    { changes: { maleStayDays: 3 }, refused: [], why: 'the default' },
    { changes: { maleStayDays: null }, refused: [], why: 'back to the default' },
    { changes: { ofALaterVersion: 1e9 }, refused: [], why: 'of a newer version' },
    { changes: { maleStayDays: 60 }, refused: ['beyond-maleStayDays'], why: 'two months' },
    { changes: { maleStayDays: 0 }, refused: ['beyond-maleStayDays'], why: 'no stay at all' },
    { changes: { maleStayDays: 2.5 }, refused: ['beyond-maleStayDays'], why: 'half a night' },
    { changes: { rolloverHour: 20 }, refused: ['beyond-rolloverHour'], why: 'in the evening' },
    { changes: { adultFromG: -700 }, refused: ['beyond-adultFromG'], why: 'less than nothing' },
    { changes: { maleForgottenDays: 2 }, refused: ['order-maleStayDays'], why: 'before his stay' },
    { changes: { maleStayDays: 5 }, refused: [], why: 'as long as he may be forgotten' },
    {
      changes: { shedToLayEarlyDays: 34 },
      refused: ['order-shedToLayEarlyDays'],
      why: 'later than the likeliest',
    },
    {
      changes: { shedToLayEarlyDays: 34, shedToLayLikelyDays: 35 },
      refused: [],
      why: 'moved together',
    },
  ])('as $changes, $why: refused $refused', ({ changes, refused }) => {
    expect(refusalsOf({}, changes).map(({ code }) => code)).toEqual(refused);
  });

  test('is refused in words that name the value, the number and what would be right', () => {
    expect(refusalsOf({}, { maleStayDays: 60 })[0]?.message).toBe(
      'A male stays: 60 days cannot be. 1–20 days can be written down, whole numbers only.',
    );
    expect(refusalsOf({ maleStayDays: 4 }, { maleForgottenDays: 3 })[0]?.message).toBe(
      'A male stays, 4 days, must not be more than A male is overdue after, 3 days.',
    );
  });

  test.each([
    { changes: { maleStayDays: 5 }, asked: [] },
    { changes: { maleStayDays: 6 }, asked: ['maleStayDays'] },
    { changes: { maleStayDays: null, weighDays: 60 }, asked: ['weighDays'] },
  ])('as $changes is asked about: $asked', ({ changes, asked }) => {
    expect(unusualIn(changes)).toEqual(asked);
  });
});

describe('every value', () => {
  test.each(keys)('%s can be set to all that is in use, and to its default', (key) => {
    const { value, from, to } = about(key);
    for (const each of [value, from, to]) expect(isPossible(each, about(key))).toBe(true);
  });

  test('has a name of its own', () => {
    const names = keys.map((key) => valueReasons[key].name);
    expect(new Set(names).size).toBe(names.length);
  });

  test('is in order by default', () => {
    for (const order of valueOrders) {
      const numbers = order.map((key) => defaultProtocol[key]);
      expect(numbers).toEqual(numbers.toSorted((a, b) => a - b));
    }
  });
});
