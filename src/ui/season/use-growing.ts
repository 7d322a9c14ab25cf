import { useEffect, useState } from 'preact/hooks';

const FIRST = 10;
const STEP = 20;

/** How many of a long list to draw: a few at once, the rest in steps, so that no step keeps a finger waiting. */
export function useGrowing(total: number): number {
  const [shown, setShown] = useState(FIRST);
  useEffect(() => {
    if (shown >= total) return undefined;
    const timer = setTimeout(() => setShown(shown + STEP), 0);
    return () => clearTimeout(timer);
  }, [shown, total]);
  return Math.min(shown, total);
}
