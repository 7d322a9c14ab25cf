import type { UnknownWord } from '../../domain/sheet/item.ts';
import { count } from './count-words.ts';

/** Words that the app does not know: one tap says what each means, for all its rows. */
export function WordList({
  words,
  onPick,
}: {
  readonly words: readonly UnknownWord[];
  readonly onPick: (key: string, as: string) => void;
}) {
  if (words.length === 0) return null;
  return (
    <section aria-labelledby="sheet-words">
      <h2 id="sheet-words">Words not known here</h2>
      <ul class="plain-list sheet-list">
        {words.map(({ key, word, heading, count: rows, firstLine, choices, as }) => (
          <li key={key} class="stack">
            <label>
              <span>
                <strong>{word}</strong>{' '}
                <span class="small quiet">
                  {heading}, {count(rows, 'row', 'rows')}, first on line {firstLine}
                </span>
              </span>
              <select
                value={as ?? ''}
                onChange={({ currentTarget }) => onPick(key, currentTarget.value)}
              >
                <option value="">leave it out</option>
                {choices.map((choice) => (
                  <option key={choice} value={choice}>
                    {choice === 'unknown' ? 'sex not known' : choice}
                  </option>
                ))}
              </select>
            </label>
          </li>
        ))}
      </ul>
    </section>
  );
}
