import type { Standing } from './standing.ts';

/** What keeps males from her as she stands: her stage, or a follicle that has grown too large. */
export type ShutWindow =
  | { readonly by: 'stage'; readonly stage: Standing['stage'] | undefined }
  | { readonly by: 'size'; readonly mm: number };

/** Undefined while she is in her window. */
export function shutWindow(
  standing: Standing | undefined,
  pairStopMm: number,
): ShutWindow | undefined {
  if (standing?.stage !== 'building') return { by: 'stage', stage: standing?.stage };
  const mm = standing.now?.scan?.mm;
  return mm !== undefined && mm >= pairStopMm ? { by: 'size', mm } : undefined;
}
