import { useState } from 'preact/hooks';
import type { ColumnChoice } from '../../domain/sheet/columns.ts';
import { meanings } from '../../domain/sheet/meanings.ts';
import type { ColumnPreview } from '../../domain/sheet/preview.ts';
import { Icon } from '../components/Icon.tsx';
import { ColumnSheet } from './ColumnSheet.tsx';

const isOpen = ({ unit, order, meaning }: ColumnPreview): boolean =>
  (unit?.isOpen === true && meaning !== 'warmth') || order?.isOpen === true;

/** What every column was taken for. A tap changes it. */
export function ColumnList({
  columns,
  onPick,
}: {
  readonly columns: readonly ColumnPreview[];
  readonly onPick: (index: number, choice: ColumnChoice) => void;
}) {
  const [chosen, setChosen] = useState<number>();
  const column = columns.find(({ index }) => index === chosen);
  return (
    <section aria-labelledby="sheet-columns">
      <h2 id="sheet-columns">Columns</h2>
      <p class="small quiet">What each was taken for. Tap one to change it.</p>
      <ul class="plain-list sheet-columns">
        {columns.map((each) => (
          <li key={each.index}>
            <button type="button" class="sheet-column" onClick={() => setChosen(each.index)}>
              <span class="sheet-heading">
                <span class="quiet small">{each.letters}</span> {each.heading}
              </span>
              <strong class={each.meaning === 'nothing' ? 'quiet' : undefined}>
                {meanings[each.meaning].name}
                {each.unit && each.meaning !== 'warmth' && `, ${each.unit.unit}`}
              </strong>
              <small class="quiet">{each.samples.join(' · ') || 'empty'}</small>
              {isOpen(each) && (
                <small class="sheet-open">
                  <Icon name="alarm" />{' '}
                  {each.order?.isOpen ? each.order.because : each.unit?.because}
                </small>
              )}
              {!isOpen(each) && (each.order ?? each.unit) && (
                <small>
                  {[readingOf(each), each.order?.because ?? each.unit?.because]
                    .filter((part) => part !== undefined)
                    .join(': ')}
                </small>
              )}
              {each.meaning === 'warmth' && <small>{meanings.warmth.says}</small>}
              {each.notes.map((note) => (
                <small key={note} class="sheet-open">
                  <Icon name="alarm" /> {note}
                </small>
              ))}
            </button>
          </li>
        ))}
      </ul>
      {column && (
        <ColumnSheet
          column={column}
          onPick={(choice) => onPick(column.index, choice)}
          onClose={() => setChosen(undefined)}
        />
      )}
    </section>
  );
}

const readingOf = ({ order, unit }: ColumnPreview): string | undefined =>
  order ? order.order : unit && `in ${unit.unit}`;
