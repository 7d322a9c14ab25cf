import { Icon } from '../components/Icon.tsx';
import { Slab } from '../components/Slab.tsx';
import { Page } from '../screens/Page.tsx';
import { AskList } from './AskList.tsx';
import { ColumnList } from './ColumnList.tsx';
import { ComesTo } from './ComesTo.tsx';
import { EarlierSheets } from './EarlierSheets.tsx';
import { FileFacts } from './FileFacts.tsx';
import { LeftOutList } from './LeftOutList.tsx';
import { useSheet, type SheetDesk } from './use-sheet.ts';
import { WordList } from './WordList.tsx';
import './sheet.css';

/** Brings years of rows from a spreadsheet: look at them first, answer what is open, take them in. */
export function SheetScreen() {
  const sheet = useSheet();
  const { preview, refusal, isBusy, progress, earlier } = sheet;
  return (
    <Page title="Bring a spreadsheet" back>
      <p class="quiet">
        Snakes, weights, meals and sheds, as XLSX or CSV. It is looked at first; nothing is written
        before you say so, and all of it can be undone at once.
      </p>
      <label>
        File
        <input
          type="file"
          accept=".xlsx,.csv,.tsv,.txt,text/csv,text/tab-separated-values,application/vnd.openxmlformats-officedocument.spreadsheetml.sheet"
          disabled={progress !== undefined}
          onClick={({ currentTarget }) => {
            // The same file, mended, can be picked again.
            currentTarget.value = '';
          }}
          onChange={({ currentTarget }) => {
            const file = currentTarget.files?.[0];
            if (file) void sheet.pick(file);
          }}
        />
      </label>
      <div role="status">{isBusy && !progress && 'Reading…'}</div>
      {refusal !== undefined && (
        <div class="note note-warn" role="alert">
          <Icon name="alarm" /> {refusal} Nothing was changed.
        </div>
      )}
      {preview && <Looked sheet={sheet} preview={preview} />}
      {progress && <Progress {...progress} />}
      {!preview && <EarlierSheets earlier={earlier} isBusy={isBusy} onUndo={sheet.undo} />}
    </Page>
  );
}

function Looked({
  sheet,
  preview,
}: {
  readonly sheet: SheetDesk;
  readonly preview: NonNullable<SheetDesk['preview']>;
}) {
  const { choices, change, isBusy, progress } = sheet;
  return (
    <>
      <FileFacts
        name={sheet.fileName ?? ''}
        preview={preview}
        leaveMerged={choices.leaveMerged}
        onSheet={(index) => void change({ sheet: index, columns: {}, words: {}, answers: {} })}
        onMerged={(leaveMerged) => void change({ leaveMerged })}
      />
      <ColumnList
        columns={preview.columns}
        onPick={(index, choice) =>
          void change({
            columns: { ...choices.columns, [index]: { ...choices.columns[index], ...choice } },
          })
        }
      />
      <WordList
        words={preview.words}
        onPick={(key, as) => void change({ words: { ...choices.words, [key]: as } })}
      />
      <ComesTo preview={preview} />
      <AskList
        preview={preview}
        onAnswer={(said) => void change({ answers: { ...choices.answers, ...said } })}
      />
      <LeftOutList preview={preview} />
      {preview.mustSay.length > 0 && (
        <p class="note note-warn">
          <Icon name="alarm" /> First say {preview.mustSay.join(', and ')}.
        </p>
      )}
      <Slab
        kind="main"
        disabled={
          isBusy || progress !== undefined || preview.fresh === 0 || preview.mustSay.length > 0
        }
        under={
          preview.openCount > 0 && preview.fresh > 0
            ? `${preview.openCount.toLocaleString('en')} open questions are left out`
            : undefined
        }
        onPress={() => void sheet.takeIn()}
      >
        {preview.fresh === 0
          ? 'Nothing new in it'
          : `Take in ${preview.fresh.toLocaleString('en')} records`}
      </Slab>
    </>
  );
}

const Progress = ({ written, total }: { readonly written: number; readonly total: number }) => (
  <div class="note stack" role="status">
    <p class="number">
      {written.toLocaleString('en')} of {total.toLocaleString('en')} records are safe.
    </p>
    <progress class="sheet-progress" max={total} value={written} aria-label="Taken in" />
    <p class="small quiet">
      If it is broken off, take the same file in again: it goes on from there.
    </p>
  </div>
);
