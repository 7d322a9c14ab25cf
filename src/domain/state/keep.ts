/** The list with one more at its end, without those that are too old to matter. */
export function keep<Each>(list: readonly Each[], each: Each, most: number): readonly Each[] {
  const next = list.slice(Math.max(0, list.length + 1 - most));
  next.push(each);
  return next;
}
