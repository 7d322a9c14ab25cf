import { useEffect, useState } from 'preact/hooks';
import type { BuyerId } from '../../domain/core/ids.ts';
import type { Buyer } from '../../domain/sale/buyer.ts';
import { useModel } from '../model.ts';

/**
 * The buyers on this device, and how to look again after a change. They are looked up anew where
 * another one is wanted.
 */
export function useBuyers(
  wanted?: BuyerId,
): readonly [readonly Buyer[] | undefined, () => Promise<void>] {
  const { desk, failWith } = useModel();
  const [buyers, setBuyers] = useState<readonly Buyer[]>();
  const look = () => desk.tell('buyers', null).then(setBuyers, failWith);
  useEffect(() => void look(), [wanted]);
  return [buyers, look];
}
