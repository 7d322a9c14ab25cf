/** Every animal after its parents, or a ring in which each has the next for a parent, the last the first. */
export type AgeOrder =
  | { readonly ok: true; readonly order: readonly string[] }
  | { readonly ok: false; readonly ring: readonly string[] };

/** Sorts by descent. An order that was right already stays as it is. */
export function oldestFirst(
  ids: readonly string[],
  parentsOf: (id: string) => readonly string[],
): AgeOrder {
  const placed = new Set<string>();
  for (const id of ids) {
    const path = [id];
    for (let at = path.at(-1); at !== undefined; at = path.at(-1)) {
      const parent = parentsOf(at).find((each) => !placed.has(each));
      if (parent === undefined) {
        placed.add(at);
        path.pop();
      } else if (path.includes(parent)) {
        return { ok: false, ring: path.slice(path.indexOf(parent)) };
      } else {
        path.push(parent);
      }
    }
  }
  return { ok: true, order: [...placed] };
}
