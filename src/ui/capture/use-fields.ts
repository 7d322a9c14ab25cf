import { useCallback, useEffect, useState } from 'preact/hooks';
import { remember, remembered } from '../remember.ts';

export type Fields = Readonly<Partial<Record<string, string>>>;

/**
 * The fields of a longer form, kept like any half-filled form. Two quick taps can come before the
 * next drawing: a change is made of what is there, not of what is shown.
 */
export function useFields(
  key: string,
): readonly [
  fields: Fields,
  change: (name: string, next: (before: string | undefined) => string | undefined) => void,
  forget: () => void,
] {
  const place = `draft.${key}`;
  const [fields, setFields] = useState<Fields>(() => read(place));
  useEffect(() => setFields(read(place)), [place]);
  const change = useCallback(
    (name: string, next: (before: string | undefined) => string | undefined) => {
      const now = read(place);
      const { [name]: before, ...others } = now;
      const value = next(before);
      const all: Fields = value === undefined ? others : { ...others, [name]: value };
      remember(place, Object.keys(all).length === 0 ? undefined : JSON.stringify(all));
      setFields(all);
    },
    [place],
  );
  const forget = useCallback(() => {
    remember(place, undefined);
    setFields({});
  }, [place]);
  return [fields, change, forget];
}

/** What this page wrote there itself; anything else is no draft. */
function read(place: string): Fields {
  try {
    const kept: unknown = JSON.parse(remembered(place) ?? '{}');
    return typeof kept === 'object' && kept !== null ? (kept as Fields) : {};
  } catch {
    return {};
  }
}
