import { useEffect, useState } from 'preact/hooks';
import type { PairAsk, PairView } from '../../domain/views/pair-view.ts';
import { useView } from '../model.ts';

/**
 * A pair's view; while the same two are asked of again, with other words or another number of young,
 * the one before stays, so that nothing jumps under the thumb.
 */
export function usePairView(ask: PairAsk, route: string): PairView | undefined {
  const fresh = useView('pair', ask);
  const [kept, setKept] = useState<{ readonly route: string; readonly view: PairView }>();
  useEffect(() => {
    if (fresh) setKept({ route, view: fresh });
  }, [fresh, route]);
  return fresh ?? (kept?.route === route ? kept.view : undefined);
}
