import type { ProtocolView, ValueRow } from '../../domain/views/protocol-view.ts';

/** The numbers under one heading. */
export function ValueGroup({
  group: { title, rows },
  onPick,
}: {
  readonly group: ProtocolView['groups'][number];
  readonly onPick: (row: ValueRow) => void;
}) {
  const changed = rows.filter(({ value, usual }) => value !== usual).length;
  return (
    <details class="value-group">
      <summary>
        <h2>{title}</h2>
        <span class="number">
          {rows.length} numbers{changed > 0 && `, ${changed} changed`}
        </span>
      </summary>
      <ul class="plain-list">
        {rows.map((row) => (
          <ValueLine key={row.key} row={row} onPick={() => onPick(row)} />
        ))}
      </ul>
    </details>
  );
}

const ValueLine = ({ row, onPick }: { readonly row: ValueRow; readonly onPick: () => void }) => (
  <li>
    <button type="button" class="value-line" onClick={onPick}>
      <span class="value-name">{row.name}</span>
      <strong class="number">{row.words}</strong>
      <small class="quiet">
        most keep {row.range}
        {row.value !== row.usual && `, default ${row.usualWords}`}
        {row.set !== undefined && `, ${row.set === 'own' ? 'your own' : row.set.school}`}
        {row.school && `; ${row.school.name} has ${row.school.words}`}
      </small>
    </button>
    <details>
      <summary>
        Why<span class="hidden-words"> {row.name}</span>
      </summary>
      <div class="because">
        <p>{row.why}</p>
        <p>{row.source}</p>
      </div>
    </details>
  </li>
);
