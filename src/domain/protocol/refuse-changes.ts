import type { Refusal } from '../core/result.ts';
import { aboutValue, fallsAt, known, type ProtocolChanges } from './own-protocol.ts';
import { isInUse, isPossible, limitsOf } from './value-limits.ts';
import { valueOrders } from './value-orders.ts';
import { valueReasons } from './value-reasons.ts';
import { showRange, showValue } from './value-words.ts';
import { defaultProtocol, type ProtocolKey } from './values.ts';

const nameOf = (key: ProtocolKey): string => valueReasons[key].name;

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
