/** The list with one more at its end, without those that are too old to matter. */
export function keep<Each>(list: readonly Each[], each: Each, most: number): readonly Each[] {
  return list.length < most ? [...list, each] : [...list.slice(1 - most), each];
}
