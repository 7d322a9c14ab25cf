import type { Day } from '../../domain/core/calendar.ts';
import { dateWords } from '../../domain/core/day-words.ts';
import { Slab } from '../components/Slab.tsx';
import { count } from './count-words.ts';
import type { Earlier } from './use-sheet.ts';

const localDay = (ms: number): Day => {
  const offsetMs = new Date(ms).getTimezoneOffset() * 60_000;
  return new Date(ms - offsetMs).toISOString().slice(0, 10) as Day;
};

/** Spreadsheets that were taken in here, each undone in one tap. */
export function EarlierSheets({
  earlier,
  isBusy,
  onUndo,
}: {
  readonly earlier: Earlier;
  readonly isBusy: boolean;
  readonly onUndo: (mark: string, name: string) => Promise<void>;
}) {
  if (earlier.length === 0) return null;
  return (
    <section class="stack" aria-labelledby="sheet-earlier">
      <h2 id="sheet-earlier">Taken in</h2>
      <ul class="plain-list sheet-list">
        {earlier.map(({ mark, name, atMs, records, since, isWhole }) => (
          <li key={mark} class="stack">
            <p>
              <strong>{name}</strong>, {dateWords(localDay(atMs))}:{' '}
              <span class="number">{count(records, 'record', 'records')}</span>
              {!isWhole && '. It was broken off: take the same file in again to complete it'}.
            </p>
            {since > 0 && (
              <p class="small">
                {count(since, 'record was', 'records were')} written since about snakes that came
                with it. Those stay when it is undone.
              </p>
            )}
            <Slab
              icon="undo"
              disabled={isBusy}
              under="Its records are struck out and stay readable"
              onPress={() => void onUndo(mark, name)}
            >
              Undo {name}
            </Slab>
          </li>
        ))}
      </ul>
    </section>
  );
}
