import type { CaptureView, Occupant } from '../../domain/views/capture-view.ts';
import { SexMark } from '../components/SexMark.tsx';

/** Where this is, and who is in it. With two in the tub, the one the buttons write for. */
export function TubHead({
  view,
  occupant,
  onChoose,
}: {
  readonly view: CaptureView;
  readonly occupant: Occupant | undefined;
  readonly onChoose: (id: string) => void;
}) {
  return (
    <header class="tub-head">
      <span class="plate plate-big">{view.position ?? 'No tub'}</span>
      <div class="tub-who">
        <h1>
          {occupant ? (
            <a href={`#/animal/${occupant.id}`}>{occupant.name}</a>
          ) : (
            <>Empty{view.away ? ' for now' : ''}</>
          )}
          {occupant && <SexMark sex={occupant.sex} />}
        </h1>
        {occupant?.traits !== undefined && <p class="quiet small clip">{occupant.traits}</p>}
      </div>
      {view.occupants.length > 1 && (
        <div class="tub-two" role="group" aria-label="Who is it about?">
          {view.occupants.map(({ id, name, sex }) => (
            <button
              type="button"
              key={id}
              class="pill"
              aria-pressed={id === occupant?.id}
              onClick={() => onChoose(id)}
            >
              <SexMark sex={sex} />
              {name}
            </button>
          ))}
        </div>
      )}
    </header>
  );
}
