/**
 * The shortest ring of ancestors that a link closes: the young, its parent, a parent of that, and so
 * on, the last being a young’s parent again. Undefined where the link closes none.
 */
export function ringThrough<Id>(
  young: Id,
  parent: Id,
  ups: (id: Id) => readonly Id[],
): readonly Id[] | undefined {
  const cameFrom = new Map<Id, Id | undefined>([[parent, undefined]]);
  const queue = [parent];
  for (const at of queue) {
    if (at === young) return pathBack(at, cameFrom);
    for (const up of ups(at)) {
      if (cameFrom.has(up)) continue;
      cameFrom.set(up, at);
      queue.push(up);
    }
  }
  return undefined;
}

/** From the young, by its parent, to the one whose parent it is. */
function pathBack<Id>(young: Id, cameFrom: ReadonlyMap<Id, Id | undefined>): readonly Id[] {
  const path: Id[] = [];
  for (let at = cameFrom.get(young); at !== undefined; at = cameFrom.get(at)) path.push(at);
  return [young, ...path.toReversed()];
}
