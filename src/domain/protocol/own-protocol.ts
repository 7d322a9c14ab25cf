import type { Refusal } from '../core/result.ts';
import { isInUse, isPossible, limitsOf } from './value-limits.ts';
import { valueOrders } from './value-orders.ts';
import { showRange, showValue } from './value-words.ts';
import type { ProtocolValue } from './protocol-value.ts';
import { defaultProtocol, protocolValues, type Protocol, type ProtocolKey } from './values.ts';

/** Numbers set instead of defaults, in the units of their values; null goes back to the default. */
export type ProtocolChanges = Readonly<Record<string, number | null>>;

export const isProtocolKey = (key: string): key is ProtocolKey =>
  Object.hasOwn(protocolValues, key);

export const aboutValue = (key: ProtocolKey): ProtocolValue => protocolValues[key];

/**
 * The numbers that rules read: the keeper's own over the defaults.
 *
 * A log may hold anything, also what two phones set against each other. A number that cannot be does
 * not count, and of numbers that must not fall, none counts where together they do.
 */
export function protocolWith(...sets: readonly ProtocolChanges[]): Protocol {
  const protocol: Record<ProtocolKey, number> = { ...defaultProtocol };
  for (const set of sets) {
    for (const [key, value] of Object.entries(set)) {
      if (!isProtocolKey(key)) continue;
      const counts = value !== null && isPossible(value, aboutValue(key));
      protocol[key] = counts ? value : defaultProtocol[key];
    }
  }
  for (const order of valueOrders) {
    if (fallsAt(order, protocol) === undefined) continue;
    for (const key of order) protocol[key] = defaultProtocol[key];
  }
  return protocol;
}

/** The first value of an order that is more than the next. */
const fallsAt = (order: readonly ProtocolKey[], protocol: Protocol): number | undefined => {
  const at = order.findIndex((key, i) => {
    const next = order[i + 1];
    return next !== undefined && protocol[key] > protocol[next];
  });
  return at < 0 ? undefined : at;
};

const nameOf = (key: ProtocolKey): string => aboutValue(key).name;

/** Why changes cannot be written down over what is set already; empty where they can. */
export function refusalsOf(own: ProtocolChanges, changes: ProtocolChanges): readonly Refusal[] {
  const impossible = known(changes).flatMap(([key, value]) => {
    const about = aboutValue(key);
    if (value === null || isPossible(value, about)) return [];
    const { least, most, fineness } = limitsOf(about);
    const range = showRange(least, most, about.unit);
    const whole = fineness === 1 ? ', whole numbers only' : '';
    return [
      {
        code: `beyond-${key}`,
        message: `${nameOf(key)}: ${showValue(value, about.unit)} cannot be. ${range} can be written down${whole}.`,
      },
    ];
  });
  return impossible.length > 0 ? impossible : disordered(own, changes);
}

function disordered(own: ProtocolChanges, changes: ProtocolChanges): readonly Refusal[] {
  // Read one by one, not through `protocolWith`, which would put the order right by itself.
  const numbers: Record<ProtocolKey, number> = { ...defaultProtocol };
  for (const [key, value] of [...known(own), ...known(changes)]) {
    const counts = value !== null && isPossible(value, aboutValue(key));
    numbers[key] = counts ? value : defaultProtocol[key];
  }
  return valueOrders.flatMap((order) => {
    if (!order.some((key) => Object.hasOwn(changes, key))) return [];
    const at = fallsAt(order, numbers);
    const [low, high] = at === undefined ? [] : order.slice(at, at + 2);
    if (low === undefined || high === undefined) return [];
    const [less, more] = [low, high].map((key) => showValue(numbers[key], aboutValue(key).unit));
    return [
      {
        code: `order-${low}`,
        message: `${nameOf(low)}, ${less}, must not be more than ${nameOf(high)}, ${more}.`,
      },
    ];
  });
}

/** Values outside what is in use, which may be right. */
export const unusualIn = (changes: ProtocolChanges): readonly ProtocolKey[] =>
  known(changes).flatMap(([key, value]) =>
    value === null || isInUse(value, aboutValue(key)) ? [] : [key],
  );

/** What of the changes this version knows. */
export const known = (changes: ProtocolChanges) =>
  Object.entries(changes).flatMap(([key, value]) =>
    isProtocolKey(key) ? [[key, value] as const] : [],
  );
