import { useView } from '../model.ts';

/** The book of the males: mass, visits, locks, rest and appetite, and when to stop each. */
export function MalesPage() {
  const view = useView('rotation', null);
  if (!view) return <p aria-busy="true">Looking at all males…</p>;
  if (view.males.length === 0) return <p class="note">No grown male is on record.</p>;
  return (
    <ol class="stack" aria-label="Males">
      {view.males.map((male) => (
        <li class={`board-row${male.isStopped ? ' board-row-stop' : ''}`} key={male.id}>
          <p class="board-head">
            <span class="plate">{male.position ?? '–'}</span>
            <a href={`#/animal/${male.id}`}>{male.name}</a>
          </p>
          <p class={male.isStopped ? 'board-stop' : 'small'}>{male.stop}</p>
          <dl class="male-lines small">
            <dt>Mass</dt>
            <dd>{male.mass}</dd>
            <dt>Season</dt>
            <dd>{male.visits}</dd>
            <dt>Rest</dt>
            <dd>{male.rest}</dd>
            <dt>Appetite</dt>
            <dd>{male.appetite}</dd>
          </dl>
        </li>
      ))}
    </ol>
  );
}
