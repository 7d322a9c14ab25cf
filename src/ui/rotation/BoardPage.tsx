import { useState } from 'preact/hooks';
import type { AnimalId } from '../../domain/core/ids.ts';
import type { BoardRow, BoardWant } from '../../domain/views/rotation-view.ts';
import { SlabLink } from '../components/Slab.tsx';
import { Unfolds } from '../components/Unfolds.tsx';
import { useDraft, useView } from '../model.ts';
import { MatesSheet } from './MatesSheet.tsx';

/** The board: each female with the males she is to have. */
export function BoardPage() {
  const view = useView('rotation', null);
  const [goal, setGoal] = useDraft('choose');
  const [open, setOpen] = useState<AnimalId>();
  if (!view) return <p aria-busy="true">Looking at all females…</p>;
  const shown = view.females.filter(({ isReady, wants }) => isReady || wants.length > 0);
  const rest = view.females.filter(({ isReady, wants }) => !isReady && wants.length === 0);
  const female = view.females.find(({ id }) => id === open);
  return (
    <>
      <label>
        What do you want of them? The odds are shown beside each male.
        <input
          value={goal}
          maxLength={200}
          autocomplete="off"
          autocapitalize="off"
          placeholder="visual clown pied"
          onInput={({ currentTarget }) => setGoal(currentTarget.value)}
        />
      </label>
      {shown.length === 0 && (
        <p class="note">
          No female is in her window. It opens with a scan that finds growing follicles, or with two
          kinds of signs.
        </p>
      )}
      <Rows rows={shown} onOpen={setOpen} />
      {rest.length > 0 && (
        <Unfolds summary={`Not ready: ${rest.length}, with the reason`}>
          {() => <Rows rows={rest} onOpen={setOpen} />}
        </Unfolds>
      )}
      <SlabLink icon="check" kind="main" href="#/rotation/plan" under="the next 14 nights">
        Make the plan
      </SlabLink>
      {female && <MatesSheet female={female} goal={goal} onClose={() => setOpen(undefined)} />}
    </>
  );
}

const Rows = ({
  rows,
  onOpen,
}: {
  readonly rows: readonly BoardRow[];
  readonly onOpen: (id: AnimalId) => void;
}) => (
  <ol class="stack" aria-label="Females">
    {rows.map((row) => (
      <li class="board-row" key={row.id}>
        <p class="board-head">
          <span class="plate">{row.position ?? '–'}</span>
          <a href={`#/animal/${row.id}`}>{row.name}</a>
          {row.mass !== undefined && <span class="quiet number">{row.mass}</span>}
        </p>
        <p class="small">{row.readiness}</p>
        {row.wants.length > 0 && (
          <ol class="board-wants" aria-label={`Males for ${row.name}`}>
            {row.wants.map((want) => (
              <Want key={want.male} want={want} female={row.id} />
            ))}
          </ol>
        )}
        <button type="button" class="pill" onClick={() => onOpen(row.id)}>
          Males for {row.name}
        </button>
        {row.fathers.length > 0 && (
          <Unfolds summary="Who may be the father">
            {() => (
              <ul class="small">
                {row.fathers.map((father) => (
                  <li key={father}>{father}</li>
                ))}
              </ul>
            )}
          </Unfolds>
        )}
      </li>
    ))}
  </ol>
);

const Want = ({ want, female }: { readonly want: BoardWant; readonly female: AnimalId }) => (
  <li>
    <strong>{want.name}</strong> {want.choice === 'first' ? 'first choice' : 'reserve'}
    {want.isApart && <span class="board-stop">kept apart by you</span>}
    {want.unreasoned.length > 0 && (
      <span class="board-stop">
        {want.unreasoned.join(' ')} Not planned without{' '}
        <a href={`#/pair/${female}/${want.male}`}>your reason</a>.
      </span>
    )}
  </li>
);
