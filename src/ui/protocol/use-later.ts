import { useEffect, useState } from 'preact/hooks';

const SETTLED_MS = 150;

/** A value once it has stood still: not each of ten quick taps needs an answer. */
export function useLater<Value>(value: Value): Value {
  const [later, setLater] = useState(value);
  useEffect(() => {
    const timer = setTimeout(() => setLater(() => value), SETTLED_MS);
    return () => clearTimeout(timer);
  }, [JSON.stringify(value)]);
  return later;
}
