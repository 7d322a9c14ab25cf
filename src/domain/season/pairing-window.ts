import type { Standing } from './standing.ts';

/** Why no male goes to her as she stands, in a few words; undefined while she is in her window. */
export function againstWindow(
  standing: Standing | undefined,
  pairStopMm: number,
): string | undefined {
  if (standing?.stage !== 'building') return `${standing?.stage ?? 'not building'} now`;
  const mm = standing.now?.scan?.mm;
  return mm !== undefined && mm >= pairStopMm ? `largest follicle ${mm} mm` : undefined;
}
