import type { RecordLine } from '../../domain/views/record-line.ts';
import { useModel } from '../model.ts';
import { dateWords } from '../../domain/core/day-words.ts';

/** What was changed, and when. Any of it can be struck out again. */
export function ProtocolHistory({ lines }: { readonly lines: readonly RecordLine[] }) {
  const model = useModel();
  if (lines.length === 0) return null;
  return (
    <section>
      <h2>Changes</h2>
      {lines.map((line) => (
        <div class="history-line" key={line.id}>
          <span class="quiet number small">{dateWords(line.night)}</span>
          <span>
            {line.struck === undefined ? line.words : <s>{line.words}</s>}
            {line.remark !== undefined && <small class="quiet"> {line.remark}</small>}
            {line.by !== undefined && <small class="quiet"> ({line.by})</small>}
            {line.struck !== undefined && <em class="small"> struck: {line.struck}</em>}
          </span>
          {line.struck === undefined && (
            <button
              type="button"
              class="strike"
              onClick={() => void model.strike(line.id, 'Taken back on the protocol screen')}
            >
              Take back<span class="hidden-words"> {line.words}</span>
            </button>
          )}
        </div>
      ))}
    </section>
  );
}
