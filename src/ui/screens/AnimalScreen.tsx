import { useState } from 'preact/hooks';
import type { AnimalId } from '../../domain/core/ids.ts';
import type { AnimalView } from '../../domain/views/animal-view.ts';
import type { RecordLine } from '../../domain/views/record-line.ts';
import { AmendButton } from '../capture/AmendButton.tsx';
import { PhotoOf } from '../capture/PhotoOf.tsx';
import { WeightCurve } from '../charts/WeightCurve.tsx';
import { Because } from '../components/Because.tsx';
import { SexMark } from '../components/SexMark.tsx';
import { Sheet } from '../components/Sheet.tsx';
import { SlabLink } from '../components/Slab.tsx';
import { useDraft, useModel, useView } from '../model.ts';
import { dayWords, nightWords } from '../night.ts';
import { SeasonSection } from '../season/SeasonSection.tsx';
import { Page } from './Page.tsx';

const FIRST_LINES = 40;

/** One snake's whole page: what it is, its curve, and every record, struck ones too. */
export function AnimalScreen({ id }: { readonly id: AnimalId }) {
  const view = useView('animal', id);
  const [shownLines, setShownLines] = useState(FIRST_LINES);
  const [striking, setStriking] = useState<RecordLine>();
  if (!view) return <Page title="Snake" back />;
  return (
    <Page title={view.name} beside={view.position ?? view.gone?.how} back>
      <Facts view={view} />
      {view.chores.map((chore) => (
        <div class="note" key={chore.rule}>
          <strong>{chore.asks}</strong>
          {chore.blocked !== undefined && <p class="small">Not tonight: {chore.blocked}</p>}
          <Because chore={chore} />
        </div>
      ))}
      <SlabLink icon="round" kind="main" href={`#/snake/${id}`}>
        Write something down
      </SlabLink>
      <SeasonSection id={id} />
      <WeightCurve masses={view.masses} meals={view.meals} />
      <section class="stack">
        <h2>History</h2>
        {!view.isWhole && <p class="quiet">Older records are still being read…</p>}
        <ol class="history">
          {view.history.slice(0, shownLines).map((line) => (
            <li key={line.id}>
              <HistoryLine line={line} onStrike={() => setStriking(line)} />
            </li>
          ))}
        </ol>
        {view.history.length > shownLines && (
          <button type="button" class="pill" onClick={() => setShownLines(shownLines + 200)}>
            Show older ({view.history.length - shownLines})
          </button>
        )}
      </section>
      {striking && <StrikeSheet line={striking} onClose={() => setStriking(undefined)} />}
    </Page>
  );
}

function Facts({ view }: { readonly view: AnimalView }) {
  const parents = [view.dam, ...view.sires].filter((parent) => parent !== undefined);
  const rows: readonly (readonly [string, string | undefined])[] = [
    ['Sex', view.sexedBy ? `${view.sex}, ${view.sexedBy}` : view.sex],
    ['Genes as stated', view.traits],
    ['Hatched', view.hatchedDay && dayWords(view.hatchedDay)],
    ['Length', view.lengthCm === undefined ? undefined : `${view.lengthCm} cm`],
    ['Condition', view.condition === undefined ? undefined : `${view.condition} of 5`],
    ['Quarantine', view.quarantine && `since ${dayWords(view.quarantine.since)}`],
    ['Kept back', view.heldBack ? 'yes' : undefined],
    ['Gone', view.gone && `${view.gone.how}, ${dayWords(view.gone.night)}`],
  ];
  return (
    <dl class="facts">
      {rows
        .filter(([, value]) => value !== undefined)
        .map(([term, value]) => (
          <div key={term}>
            <dt>{term}</dt>
            <dd>
              {value} {term === 'Sex' && <SexMark sex={view.sex} />}
            </dd>
          </div>
        ))}
      {parents.length > 0 && (
        <div>
          <dt>Parents, stated</dt>
          <dd>
            {parents.map((parent, i) => (
              <span key={parent.id}>
                {i > 0 && ' × '}
                <a href={`#/animal/${parent.id}`}>{parent.name}</a>
              </span>
            ))}
          </dd>
        </div>
      )}
    </dl>
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
    <span class="quiet number small">{dayWords(line.night)}</span>
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
      {line.photo && <PhotoOf photo={line.photo} words={`Picture, ${dayWords(line.night)}`} />}
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
