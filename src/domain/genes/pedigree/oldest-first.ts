/** Every animal after its parents, or a ring in which each has the next for a parent, the last the first. */
export type AgeOrder =
  | { readonly ok: true; readonly order: readonly string[] }
  | { readonly ok: false; readonly ring: readonly string[] };

/** Sorts by descent. Who is not held back by a parent keeps the place it was given. */
export function oldestFirst(
  ids: readonly string[],
  parentsOf: (id: string) => readonly string[],
): AgeOrder {
  const waitsFor = new Map<string, number>();
  const young = new Map<string, string[]>();
  for (const id of ids) {
    const parents = parentsOf(id);
    waitsFor.set(id, parents.length);
    for (const parent of parents) {
      const known = young.get(parent);
      if (known) known.push(id);
      else young.set(parent, [id]);
    }
  }
  const order = ids.filter((id) => waitsFor.get(id) === 0);
  // The list grows while it is walked.
  for (const id of order) {
    for (const child of young.get(id) ?? []) {
      const left = (waitsFor.get(child) ?? 0) - 1;
      waitsFor.set(child, left);
      if (left === 0) order.push(child);
    }
  }
  if (order.length === ids.length) return { ok: true, order };
  return { ok: false, ring: ringAmong(ids, parentsOf, new Set(order)) };
}

/** Whoever could not be placed has a parent that could not: going up among these must come round. */
function ringAmong(
  ids: readonly string[],
  parentsOf: (id: string) => readonly string[],
  placed: ReadonlySet<string>,
): readonly string[] {
  const path: string[] = [];
  let at = ids.find((id) => !placed.has(id));
  while (at !== undefined && !path.includes(at)) {
    path.push(at);
    at = parentsOf(at).find((parent) => !placed.has(parent));
  }
  return at === undefined ? path : path.slice(path.indexOf(at));
}
