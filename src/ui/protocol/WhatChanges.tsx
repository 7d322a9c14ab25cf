import type { ProtocolChanges } from '../../domain/protocol/own-protocol.ts';
import type {
  ProtocolPreview,
  TaskChange,
  WindowChange,
} from '../../domain/views/protocol-preview.ts';
import { useView } from '../model.ts';
import { useLater } from './use-later.ts';

/** So many lines are read at a glance; more of them open at a tap. */
const AT_A_GLANCE = 4;

/** What changes would do to tonight's list, before they are written. */
export function WhatChanges({
  changes,
  withValues = false,
}: {
  readonly changes: ProtocolChanges;
  readonly withValues?: boolean;
}) {
  const preview = useView('protocolPreview', useLater(changes));
  return (
    <section class="what-changes" aria-label="What it would change" aria-busy={!preview}>
      {preview ? (
        <Told preview={preview} withValues={withValues} />
      ) : (
        <p class="quiet">Working out tonight…</p>
      )}
    </section>
  );
}

function Told({
  preview,
  withValues,
}: {
  readonly preview: ProtocolPreview;
  readonly withValues: boolean;
}) {
  const { refusals, values, comes, goes, changes, windows, notes } = preview;
  if (refusals.length > 0) {
    return (
      <div class="note note-warn" role="alert">
        {refusals.map((refusal) => (
          <p key={refusal}>{refusal}</p>
        ))}
      </div>
    );
  }
  const isSame = comes.length + goes.length + changes.length === 0;
  return (
    <>
      {withValues && <Values values={values} />}
      {notes.map((note) => (
        <p class="note" key={note}>
          {note}
        </p>
      ))}
      <h3>{isSame ? 'Tonight’s list stays as it is.' : summary(preview)}</h3>
      <Lines title="Comes" lines={comes} />
      <Lines title="Goes" lines={goes} />
      <Lines title="Reads otherwise" lines={changes} />
      <Windows lines={windows} />
    </>
  );
}

function summary({ comes, goes, changes }: ProtocolPreview): string {
  const counted = [
    [comes.length, 'more'],
    [goes.length, 'fewer'],
    [changes.length, 'otherwise'],
  ] as const;
  const told = counted.filter(([count]) => count > 0).map(([count, word]) => `${count} ${word}`);
  return `Tonight: ${told.join(', ')}`;
}

const Values = ({ values }: { readonly values: ProtocolPreview['values'] }) => (
  <ul class="plain-list">
    {values.map(({ key, name, before, after }) => (
      <li key={key} class="value-change">
        <span>{name}</span>
        <span class="number">
          {before} → <strong>{after}</strong>
        </span>
      </li>
    ))}
  </ul>
);

function Lines({
  title,
  lines,
}: {
  readonly title: string;
  readonly lines: readonly TaskChange[];
}) {
  if (lines.length === 0) return null;
  return (
    <details open={lines.length <= AT_A_GLANCE}>
      <summary>
        {title}: {lines.length}
      </summary>
      <ul class="plain-list">
        {lines.map((line, i) => (
          <li key={`${line.animal} ${i}`} class="task-change">
            <span class="plate">{line.position}</span>
            <span>
              <strong>{line.name}</strong> <Words line={line} />
            </span>
          </li>
        ))}
      </ul>
    </details>
  );
}

const Windows = ({ lines }: { readonly lines: readonly WindowChange[] }) =>
  lines.length === 0 ? null : (
    <details open={lines.length <= AT_A_GLANCE}>
      <summary>Windows that move: {lines.length}</summary>
      <ul class="plain-list">
        {lines.map((line) => (
          <li key={`${line.animal} ${line.event}`} class="value-change">
            <span>
              <strong>{line.name}</strong>, {line.event}
            </span>
            <span class="number">
              {line.before ?? 'none'} → <strong>{line.after ?? 'none'}</strong>
            </span>
          </li>
        ))}
      </ul>
    </details>
  );

const Words = ({ line: { before, after } }: { readonly line: TaskChange }) =>
  before !== undefined && after !== undefined ? (
    <>
      <s>{before}</s> {after}
    </>
  ) : (
    <>{before ?? after}</>
  );
