import { useState } from 'preact/hooks';
import type { StockLine, StockNote } from '../../domain/views/prey-view.ts';
import { piecesWords, sizeName } from '../../domain/views/prey-words.ts';
import { Because } from '../components/Because.tsx';
import { Icon } from '../components/Icon.tsx';
import { Slab } from '../components/Slab.tsx';
import { useModel, useView } from '../model.ts';
import { dateWords } from '../../domain/core/day-words.ts';
import { Page } from '../screens/Page.tsx';
import './feeding.css';
import { OrderTable } from './OrderTable.tsx';
import { SizeTable } from './SizeTable.tsx';
import { StockForm, type StockWork } from './StockForm.tsx';

const WEEKS = [2, 4, 6, 8, 12] as const;

/** The freezer: what is in it, what to order, and what one piece of each size weighs. */
export function PreyScreen() {
  const [weeks, setWeeks] = useState<number>(4);
  const view = useView('prey', weeks);
  const [work, setWork] = useState<StockWork>();
  return (
    <Page title="Prey" back>
      {view?.notes.map((note) => (
        <Note key={`${note.rule} ${note.kind} ${note.size}`} note={note} onCount={setWork} />
      ))}
      <Slab icon="add" kind="main" onPress={() => setWork({ kind: 'in' })}>
        Prey came in
      </Slab>
      <section class="stack">
        <h2>Freezer</h2>
        {view?.stock.length === 0 && (
          <p class="note">
            Nothing is written down yet. Count what is there, or write down what comes in.
          </p>
        )}
        <ul class="plain-list stack">
          {view?.stock.map((line) => (
            <Drawer key={sizeName(line)} line={line} onWork={setWork} />
          ))}
        </ul>
      </section>
      <section class="stack">
        <h2>Order</h2>
        <div class="chips" role="group" aria-label="For how many weeks">
          {WEEKS.map((each) => (
            <button
              type="button"
              key={each}
              class="pill"
              aria-pressed={weeks === each}
              onClick={() => setWeeks(each)}
            >
              {each} weeks
            </button>
          ))}
        </div>
        {view && <OrderTable order={view.order} weeks={view.weeks} />}
      </section>
      {view && <SizeTable sizes={view.sizes} />}
      <a class="row-link" href="#/feeding">
        <Icon name="feed" /> Tonight’s feeding
      </a>
      {work && view && <StockForm work={work} view={view} onClose={() => setWork(undefined)} />}
    </Page>
  );
}

function Note({
  note,
  onCount,
}: {
  readonly note: StockNote;
  readonly onCount: (work: StockWork) => void;
}) {
  const { write } = useModel();
  const { kind, size, pieces, rule } = note;
  const words = piecesWords({ kind, size, pieces });
  return (
    <div class="note note-warn stack">
      <strong>{note.asks}</strong>
      <Because chore={note} />
      {rule === 'K1' && (
        <button
          type="button"
          class="pill"
          onClick={() => onCount({ kind: 'count', of: { kind, size } })}
        >
          Count them
        </button>
      )}
      {rule === 'K4' && (
        <button
          type="button"
          class="pill"
          onClick={() =>
            void write({
              drafts: [{ type: 'prey-thawed', kind, size, pieces }],
              words: `${words} taken off the stock`,
            })
          }
        >
          Take {words} off
        </button>
      )}
      {rule === 'K3' && (
        <button
          type="button"
          class="pill"
          onClick={() =>
            void write({
              drafts: [
                {
                  type: 'prey-thrown-out',
                  kind,
                  size,
                  pieces,
                  from: 'freezer',
                  why: 'past its date',
                },
              ],
              words: `${words} thrown out`,
            })
          }
        >
          Thrown out: {words}
        </button>
      )}
    </div>
  );
}

function Drawer({
  line,
  onWork,
}: {
  readonly line: StockLine;
  readonly onWork: (work: StockWork) => void;
}) {
  const of = { kind: line.kind, size: line.size };
  const dated = line.batches.filter(({ useBy }) => useBy !== undefined);
  return (
    <li class="drawer">
      <p class="drawer-head">
        <strong>{sizeName(of)}</strong>
        <span class="number">{line.pieces}</span>
      </p>
      <p class="small quiet number">
        About {line.perWeek.toFixed(1)} eaten a week
        {line.lastsUntil !== undefined && `, lasts until ${dateWords(line.lastsUntil)}`}
        {line.countedOn !== undefined && `, counted ${dateWords(line.countedOn)}`}.
      </p>
      {dated.map(({ id, pieces, useBy, lot }) => (
        <p key={id} class="small quiet number">
          {pieces} use by {useBy !== undefined && dateWords(useBy)}
          {lot !== undefined && `, ${lot}`}
        </p>
      ))}
      <div class="chips" role="group" aria-label={sizeName(of)}>
        <button type="button" class="pill" onClick={() => onWork({ kind: 'in', of })}>
          Came in
        </button>
        <button type="button" class="pill" onClick={() => onWork({ kind: 'count', of })}>
          Count
        </button>
        <button type="button" class="pill" onClick={() => onWork({ kind: 'out', of })}>
          Throw out
        </button>
      </div>
    </li>
  );
}
