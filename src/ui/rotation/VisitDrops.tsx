import type { Drop, DropsView } from '../../domain/views/drops-view.ts';
import { Icon } from '../components/Icon.tsx';
import { nightWords } from '../night.ts';

/** Where a visit can be put down: an evening with the same female, or another female. */
export type Place =
  | { readonly kind: 'evening'; readonly drop: Drop }
  | { readonly kind: 'female'; readonly drop: DropsView['females'][number] };

export const placeKey = ({ kind, drop }: Place): string =>
  kind === 'evening' ? drop.in : 'female' in drop ? drop.female : '';

export const placesIn = ({ evenings, females }: DropsView): readonly Place[] => [
  ...evenings.map((drop): Place => ({ kind: 'evening', drop })),
  ...females.map((drop): Place => ({ kind: 'female', drop })),
];

/** "Thu 26 Nov, out on Sun 29 Nov: free", or the limit in its way. */
export function placeWords({ kind, drop }: Place): string {
  const who = kind === 'female' ? `${drop.name}: in on` : 'In on';
  const when = `${who} ${nightWords(drop.in)}, out on ${nightWords(drop.out)}`;
  return drop.stop === undefined ? `${when}: nothing stands against it.` : `${when}: ${drop.stop}`;
}

/** Tiles to put a visit down on, with a bar where a limit is in the way; each names itself to a finger. */
export function VisitDrops({
  view,
  over,
  now,
  onPick,
}: {
  readonly view: DropsView;
  /** The tile that is pointed at. */
  readonly over: string | undefined;
  /** The evening it is planned for. */
  readonly now: string;
  readonly onPick: (place: Place) => void;
}) {
  const tile = (place: Place, words: string) => {
    const key = placeKey(place);
    const isStopped = place.drop.stop !== undefined;
    return (
      <button
        type="button"
        class={`drop${isStopped ? ' drop-stopped' : ''}`}
        key={key}
        data-drop={key}
        data-over={key === over ? '' : undefined}
        aria-label={placeWords(place)}
        aria-current={key === now ? 'date' : undefined}
        onClick={() => onPick(place)}
      >
        <Icon name={isStopped ? 'hold' : 'check'} />
        {words}
      </button>
    );
  };
  const all = placesIn(view);
  return (
    <>
      <div class="drops" role="group" aria-label="Another evening">
        {all.map((place) => place.kind === 'evening' && tile(place, nightWords(place.drop.in)))}
      </div>
      {view.females.length > 0 && (
        <div class="drops drops-wide" role="group" aria-label="Another female">
          {all.map(
            (place) =>
              place.kind === 'female' &&
              tile(place, `${place.drop.name}, ${nightWords(place.drop.in)}`),
          )}
        </div>
      )}
    </>
  );
}
