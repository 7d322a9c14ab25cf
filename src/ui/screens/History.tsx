import { useState } from 'preact/hooks';
import type { RecordLine } from '../../domain/views/record-line.ts';
import { AmendButton } from '../capture/AmendButton.tsx';
import { PhotoOf } from '../capture/PhotoOf.tsx';
import { Sheet } from '../components/Sheet.tsx';
import { useDraft, useModel } from '../model.ts';
import { dateWords } from '../../domain/core/day-words.ts';
import { nightWords } from '../night.ts';

const FIRST_LINES = 40;

/** Every record about something, newest first, struck ones too; each can be struck with a reason. */
export function History({
  lines,
  isWhole,
}: {
  readonly lines: readonly RecordLine[];
  readonly isWhole: boolean;
}) {
  const [shownLines, setShownLines] = useState(FIRST_LINES);
  const [striking, setStriking] = useState<RecordLine>();
  return (
    <>
      <section class="stack">
        <h2>History</h2>
        {!isWhole && <p class="quiet">Older records are still being read…</p>}
        <ol class="history">
          {lines.slice(0, shownLines).map((line) => (
            <li key={line.id}>
              <HistoryLine line={line} onStrike={() => setStriking(line)} />
            </li>
          ))}
        </ol>
        {lines.length > shownLines && (
          <button type="button" class="pill" onClick={() => setShownLines(shownLines + 200)}>
            Show older ({lines.length - shownLines})
          </button>
        )}
      </section>
      {striking && <StrikeSheet line={striking} onClose={() => setStriking(undefined)} />}
    </>
  );
}

const HistoryLine = ({
  line,
  onStrike,
}: {
  readonly line: RecordLine;
  readonly onStrike: () => void;
}) => (
  <div class="history-line">
    <span class="quiet number small">{dateWords(line.night)}</span>
    <span>
      {line.struck === undefined ? (
        line.words
      ) : (
        <>
          <s>{line.words}</s> <em class="small">struck: {line.struck}</em>
        </>
      )}
      {line.remark !== undefined && <small class="quiet"> {line.remark}</small>}
      {line.by !== undefined && <small class="quiet"> ({line.by})</small>}
      {line.photo && <PhotoOf photo={line.photo} words={`Picture, ${dateWords(line.night)}`} />}
      {line.amend && <AmendButton amend={line.amend} />}
    </span>
    {line.struck === undefined && line.type !== 'struck' && (
      <button type="button" class="strike" onClick={onStrike}>
        Strike<span class="hidden-words"> {line.words}</span>
      </button>
    )}
  </div>
);

function StrikeSheet({
  line,
  onClose,
}: {
  readonly line: RecordLine;
  readonly onClose: () => void;
}) {
  const model = useModel();
  const [reason, setReason] = useDraft(`strike.${line.id}`);
  return (
    <Sheet title="Strike out a record" onClose={onClose}>
      <p>
        {nightWords(line.night)}: {line.words}
      </p>
      <p class="quiet small">It stays in the history, struck through, with your reason.</p>
      <form
        class="stack"
        onSubmit={(submitted) => {
          submitted.preventDefault();
          if (reason.trim() === '') return;
          void model.strike(line.id, reason.trim()).then(() => {
            setReason('');
            onClose();
          });
        }}
      >
        <label>
          Why
          <input
            value={reason}
            maxLength={200}
            onInput={({ currentTarget }) => setReason(currentTarget.value)}
          />
        </label>
        <button type="submit" class="slab slab-warn" disabled={reason.trim() === ''}>
          Strike it out
        </button>
      </form>
    </Sheet>
  );
}
