/**
 * A set that fails, out of one that does, such that without any one of its members it would not. What
 * fails must still fail with more added. Takes about 2 k log2(n/k) trials for k of n (QuickXplain:
 * Junker U. 2004, AAAI-04:167–172). Empty where nothing is needed to fail, or where not even all fail.
 */
export function smallestFailing<Item>(
  all: readonly Item[],
  fails: (items: readonly Item[]) => boolean,
): readonly Item[] {
  const among = (
    given: readonly Item[],
    isNew: boolean,
    items: readonly Item[],
  ): readonly Item[] => {
    if (isNew && fails(given)) return [];
    if (items.length === 1) return items;
    const half = Math.ceil(items.length / 2);
    const [first, second] = [items.slice(0, half), items.slice(half)];
    const ofSecond = among([...given, ...first], true, second);
    const ofFirst = among([...given, ...ofSecond], ofSecond.length > 0, first);
    return [...ofFirst, ...ofSecond];
  };
  if (all.length === 0 || fails([]) || !fails(all)) return [];
  return among([], false, all);
}
