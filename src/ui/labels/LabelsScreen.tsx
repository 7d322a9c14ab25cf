import { useSignal } from '@preact/signals';
import type { LabelCode } from '../../domain/core/code.ts';
import { nextStart, paginate, startOn } from '../../domain/labels/pages.ts';
import type { LabelSubject } from '../../domain/labels/subject.ts';
import { CalibrationSheet } from './CalibrationSheet.tsx';
import { Choice } from './Choice.tsx';
import { formatOf, recallChoices, rememberChoices, type Choices } from './choices.ts';
import { CodeHolds } from './CodeHolds.tsx';
import './labels.css';
import { LabelSheet } from './LabelSheet.tsx';
import { PaperChoice } from './PaperChoice.tsx';
import { Preview } from './Preview.tsx';
import './print.css';
import { PrintBar } from './PrintBar.tsx';
import { PrintedQuestion } from './PrintedQuestion.tsx';
import { PrinterOffset } from './PrinterOffset.tsx';
import { PrintPages } from './PrintPages.tsx';
import { StartPicker } from './StartPicker.tsx';
import { SubjectPicker } from './SubjectPicker.tsx';

export interface LabelsScreenProps {
  /** All that may get a label, in the order in which the labels shall lie on the sheet. */
  readonly subjects: readonly LabelSubject[];
  /** Where the app is served, for codes that hold a link: `#/` and the code are added. */
  readonly linkBase: string;
  /** Called when the keeper has said that these labels came out well. */
  readonly onPrinted: (codes: readonly LabelCode[], formatName: string) => void;
  /** Where the way back leads. */
  readonly back: string;
  /** How many snakes have no card yet. */
  readonly cardless: number;
  /** Gives each of them one. */
  readonly onMakeCards: () => void;
  /** How many rooms have no label yet. */
  readonly unlabelledRooms: number;
  readonly onLabelRooms: () => void;
  /** How many egg boxes and incubators have none. */
  readonly unlabelledEggs: number;
  readonly onLabelEggs: () => void;
}

interface Job {
  readonly what: 'nothing' | 'labels' | 'test';
  readonly count: number;
}

const NO_JOB: Job = { what: 'nothing', count: 0 };
const NONE: ReadonlySet<LabelCode> = new Set();

/** Choose labels, choose paper, look at the page, print. */
export function LabelsScreen({
  subjects,
  linkBase,
  onPrinted,
  back,
  cardless,
  onMakeCards,
  unlabelledRooms,
  onLabelRooms,
  unlabelledEggs,
  onLabelEggs,
}: LabelsScreenProps) {
  const choices = useSignal(recallChoices());
  const skipped = useSignal(NONE);
  const job = useSignal<Job>(NO_JOB);

  const choose = (changed: Partial<Choices>) => {
    choices.value = { ...choices.value, ...changed };
    job.value = NO_JOB;
    rememberChoices(choices.value);
  };
  // Counted, so that a second print of the same pages opens the print window again.
  const print = (what: Job['what']) => {
    job.value = { what, count: job.value.count + 1 };
  };

  const { offset, holdsLink, kind } = choices.value;
  const format = formatOf(choices.value);
  const startAt = startOn(format, choices.value.startAt);
  const ofKind = subjects.filter((subject) => subject.kind === kind);
  const picked = ofKind.filter(({ code }) => !skipped.value.has(code));
  const sheets = paginate(picked, format, startAt).map((cells, i) => () => (
    <LabelSheet
      format={format}
      cells={cells}
      linkBase={holdsLink ? linkBase : undefined}
      offset={offset}
      name={`Page ${i + 1}: ${cells.length} labels`}
    />
  ));
  const done = () => {
    onPrinted(
      picked.map(({ code }) => code),
      format.name,
    );
    choose({ startAt: nextStart(format, startAt, picked.length) });
  };

  return (
    <main class="labels-screen">
      <header class="labels-head">
        <a href={back}>Back</a>
        <h1>Print labels</h1>
      </header>
      <Choice
        legend="What for"
        name="labels-kind"
        options={[
          { value: 'tub', label: 'Tub labels' },
          { value: 'animal', label: 'Animal cards' },
          { value: 'room', label: 'Room labels' },
          { value: 'clutch', label: 'Egg boxes' },
          { value: 'incubator', label: 'Incubators' },
        ]}
        chosen={kind}
        onChoose={(chosen) => choose({ kind: chosen })}
      />
      {kind === 'animal' && cardless > 0 && (
        <button type="button" onClick={onMakeCards}>
          Make cards for {cardless} {cardless === 1 ? 'snake' : 'snakes'}
        </button>
      )}
      {kind === 'room' && unlabelledRooms > 0 && (
        <button type="button" onClick={onLabelRooms}>
          Make labels for {unlabelledRooms} {unlabelledRooms === 1 ? 'room' : 'rooms'}
        </button>
      )}
      {(kind === 'clutch' || kind === 'incubator') && unlabelledEggs > 0 && (
        <button type="button" onClick={onLabelEggs}>
          Make labels for {unlabelledEggs} egg boxes and incubators
        </button>
      )}
      <SubjectPicker
        subjects={ofKind}
        skipped={skipped.value}
        onSkip={(codes) => {
          skipped.value = codes;
          job.value = NO_JOB;
        }}
      />
      <PaperChoice format={format} onChoose={(formatId) => choose({ formatId, startAt: 1 })} />
      {format.paper !== 'roll' && (
        <StartPicker
          format={format}
          startAt={startAt}
          count={picked.length}
          onStart={(place) => choose({ startAt: place })}
        />
      )}
      <CodeHolds
        holdsLink={holdsLink}
        linkBase={linkBase}
        format={format}
        example={picked[0]}
        onChoose={(link) => choose({ holdsLink: link })}
      />
      <PrinterOffset
        offset={offset}
        onChange={(moved) => choose({ offset: moved })}
        onTest={() => print('test')}
      />
      {picked.length === 0 ? (
        <p class="labels-hint">Nothing is picked yet.</p>
      ) : (
        <Preview pages={sheets} />
      )}
      {job.value.what === 'labels' && (
        <PrintedQuestion
          count={picked.length}
          onYes={done}
          onNo={() => {
            job.value = NO_JOB;
          }}
        />
      )}
      <PrintBar
        count={picked.length}
        pages={sheets.length}
        roll={format.paper === 'roll'}
        onPrint={() => print('labels')}
      />
      {job.value.what === 'labels' && (
        <PrintPages
          key={job.value.count}
          size={format.page}
          pages={sheets.map((sheet) => sheet())}
        />
      )}
      {job.value.what === 'test' && (
        <PrintPages
          key={job.value.count}
          size={format.page}
          pages={[<CalibrationSheet key="test" format={format} offset={offset} />]}
        />
      )}
    </main>
  );
}
