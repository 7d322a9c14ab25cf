interface Sighting {
  readonly lastMs: number;
  /** Pictures since then without it. */
  readonly missed: number;
}

/** The texts that are before the camera, or were a moment ago. */
export type InView = ReadonlyMap<string, Sighting>;

/** How long a text must be gone before it counts as coming again. */
export const OUT_OF_VIEW_MS = 1500;

/** A slow phone looks seldom, and a hidden page not at all: time alone does not say "gone". */
const PICTURES_WITHOUT = 3;

const isGone = ({ lastMs, missed }: Sighting, nowMs: number): boolean =>
  nowMs - lastMs >= OUT_OF_VIEW_MS && missed >= PICTURES_WITHOUT;

/**
 * Takes in what one picture showed, nothing included, and says which of it has just come into view.
 *
 * A text stays in view through single pictures in which it could not be read, so that a label held
 * before the camera is told of once, however long.
 *
 * Unit: milliseconds of any clock that does not run backwards.
 */
export function look(
  before: InView,
  texts: readonly string[],
  nowMs: number,
): { readonly inView: InView; readonly fresh: readonly string[] } {
  const inView = new Map<string, Sighting>();
  for (const [text, { lastMs, missed }] of before) {
    const sighting = { lastMs, missed: missed + 1 };
    if (!isGone(sighting, nowMs)) inView.set(text, sighting);
  }
  const fresh = [...new Set(texts)].filter((text) => !inView.has(text));
  for (const text of texts) inView.set(text, { lastMs: nowMs, missed: 0 });
  return { inView, fresh };
}
