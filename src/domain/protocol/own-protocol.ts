import { isPossible } from './value-limits.ts';
import { valueOrders } from './value-orders.ts';
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
export const fallsAt = (order: readonly ProtocolKey[], protocol: Protocol): number | undefined => {
  const at = order.findIndex((key, i) => {
    const next = order[i + 1];
    return next !== undefined && protocol[key] > protocol[next];
  });
  return at < 0 ? undefined : at;
};

/** What of the changes this version knows. */
export const known = (changes: ProtocolChanges) =>
  Object.entries(changes).flatMap(([key, value]) =>
    isProtocolKey(key) ? [[key, value] as const] : [],
  );
