import type { DeskStatus, Views } from '../domain/desk.ts';
import type { Picture } from '../domain/picture/picture.ts';
import { firstShowers, type NightKind } from './first-views.ts';

/** A view that the page watches. */
export interface Watch {
  readonly kind: keyof Views;
  readonly ask: never;
}

const ofNight: ReadonlySet<keyof Views> = new Set<NightKind>(['tonight', 'moveCounts']);

let night: typeof import('./whole-night.ts') | undefined;
let showAny: (typeof import('./show.ts'))['show'] | undefined;

/** The screen of tonight, by all rules. Errors: rejects where the device does not give it. */
export async function loadNight(): Promise<(picture: Picture) => void> {
  night ??= await import('./whole-night.ts');
  return night.askByAllRules;
}

/** All other views, and what works them out. Errors: rejects where the device does not give it. */
export async function loadMoreViews(): Promise<void> {
  ({ show: showAny } = await import('./show.ts'));
}

/** What shows this view. Errors: rejects where the device does not give it. */
export const loadFor = ({ kind }: Watch): Promise<unknown> =>
  ofNight.has(kind) ? loadNight() : loadMoreViews();

/**
 * What a start is most likely to wait for can come while the records are being read. Errors: rejects
 * where the device does not give it.
 */
export const loadAhead = async ({ kind }: Watch): Promise<void> => {
  if (ofNight.has(kind)) await loadNight();
};

/** Undefined until the part of the desk that shows it is loaded. */
export function showView(
  { kind, ask }: Watch,
  picture: Picture,
  status: DeskStatus,
): { readonly shown: unknown } | undefined {
  const loaded: Partial<Record<keyof Views, (...given: never) => unknown>> = {
    ...firstShowers,
    ...night?.nightShowers,
  };
  const shower = loaded[kind] as
    ((ask: never, picture: Picture, status: DeskStatus) => unknown) | undefined;
  if (shower) return { shown: shower(ask, picture, status) };
  return showAny && { shown: showAny(kind, ask, picture, status) };
}
