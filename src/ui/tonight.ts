import { useEffect } from 'preact/hooks';
import type { TonightView } from '../domain/views/tonight-view.ts';
import { inMassUnit } from './mass-unit.ts';
import { useModel, useView } from './model.ts';

/**
 * Asks for tonight's list while the desk opens and there is no screen to draw yet: the desk then goes
 * on to it at once, and the screen has it as soon as it stands.
 */
export function useTonightAhead(isOpening: boolean, isAtTonight: boolean): void {
  const { desk, tonightAhead } = useModel();
  useEffect(() => {
    if (!isOpening || !isAtTonight) return undefined;
    const stop = desk.watch('tonight', null, (view) => {
      stop();
      tonightAhead.value = view;
    });
    return () => {
      stop();
      tonightAhead.value = undefined; // At another look it would be an old one.
    };
  }, [isAtTonight]);
}

/** Tonight's list; until the desk has it, its first lines as they were last seen. */
export function useTonight(): {
  readonly view: TonightView | undefined;
  readonly isLastSeen: boolean;
} {
  const { lastSeen, tonightAhead } = useModel();
  const asked = useView('tonight', null);
  const fresh = asked ?? inMassUnit(tonightAhead.value);
  const [hasCome, hasAnswered] = [fresh !== undefined, asked !== undefined];
  useEffect(() => {
    // Another look at this screen must not bring them back.
    if (hasCome) lastSeen.value = undefined;
    if (hasAnswered) tonightAhead.value = undefined;
  }, [hasCome, hasAnswered]);
  const view = fresh ?? inMassUnit(lastSeen.value?.tonight);
  return { view, isLastSeen: view !== undefined && !hasCome };
}
