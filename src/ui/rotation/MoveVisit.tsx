import { useEffect, useState } from 'preact/hooks';
import type { Draft } from '../../domain/events/event.ts';
import type { DropsView } from '../../domain/views/drops-view.ts';
import type { PlannedVisit } from '../../domain/views/plan-view.ts';
import { Icon } from '../components/Icon.tsx';
import { Sheet } from '../components/Sheet.tsx';
import { useModel } from '../model.ts';
import { useVisitDrag } from './use-visit-drag.ts';
import { placeKey, placesIn, placeWords, VisitDrops, type Place } from './VisitDrops.tsx';

/** The handle of a visit: dragged onto an evening or a female, or tapped for the same to choose from. */
export function MoveVisit({ visit }: { readonly visit: PlannedVisit }) {
  const { write, fail } = useModel();
  const [isOpen, setIsOpen] = useState(false);
  const [said, setSaid] = useState<string>();
  const { maleName, femaleName } = visit;
  const drag = useVisitDrag(
    (key) => {
      const place = places.find((each) => placeKey(each) === key);
      if (place) put(place);
    },
    () => setIsOpen(true),
  );
  const { view, places } = useDrops(isOpen || drag.isDragging, visit);
  const put = (place: Place) => {
    const words = placeWords(place);
    if (place.drop.stop !== undefined) {
      if (isOpen) setSaid(words);
      else fail(`Not moved. ${words}`, 'Choose another evening, or another female.');
      return;
    }
    void write({
      drafts: pinDrafts(visit, place),
      words: `${maleName} ${place.kind === 'female' ? `to ${place.drop.name}` : `with ${femaleName}`}: moved`,
      after: () => setIsOpen(false),
    });
  };
  const pointed = places.find((each) => placeKey(each) === drag.over);
  const tiles = view ? (
    <VisitDrops view={view} over={drag.over} now={visit.in} onPick={put} />
  ) : (
    <p aria-busy="true">Looking for evenings…</p>
  );
  const title = `Move ${maleName} and ${femaleName}`;
  return (
    <>
      <button type="button" class="pill drag-handle" aria-label={title} {...drag.handlers}>
        <Icon name="away" /> Move
      </button>
      {drag.isDragging && (
        <div class={`drop-tray${drag.isLow ? ' drop-tray-low' : ''}`}>
          <p class={pointed?.drop.stop === undefined ? undefined : 'board-stop'} role="status">
            {pointed ? placeWords(pointed) : `${maleName} to ${femaleName}: drag to an evening.`}
          </p>
          {tiles}
        </div>
      )}
      {isOpen && (
        <Sheet title={title} onClose={() => setIsOpen(false)}>
          <p class={said === undefined ? 'small' : 'board-stop'} role="status">
            {said ?? 'A bar marks what a limit forbids: tap it to read which.'}
          </p>
          {tiles}
        </Sheet>
      )}
    </>
  );
}

/** Asked for when a finger takes hold, and let go with it. */
function useDrops(
  isShown: boolean,
  { male, female, in: evening }: PlannedVisit,
): { readonly view: DropsView | undefined; readonly places: readonly Place[] } {
  const { desk } = useModel();
  const [view, setView] = useState<DropsView>();
  useEffect(
    () => (isShown ? desk.watch('drops', { male, female, in: evening }, setView) : undefined),
    [isShown, male, female, evening],
  );
  return { view, places: view ? placesIn(view) : [] };
}

/** The pin that holds him there; one on the female he leaves is lifted. */
function pinDrafts(
  { male, female, isPinned }: PlannedVisit,
  { kind, drop }: Place,
): readonly Draft[] {
  const pinned = { kind: 'pinned' as const, in: drop.in, out: drop.out };
  if (kind === 'evening') return [{ type: 'visit-ruled', male, female, rule: pinned }];
  return [
    ...(isPinned
      ? [{ type: 'visit-ruled' as const, male, female, rule: { kind: 'free' as const } }]
      : []),
    { type: 'visit-ruled', male, female: drop.female, rule: pinned },
  ];
}
