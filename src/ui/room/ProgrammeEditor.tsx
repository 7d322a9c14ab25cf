import { useState } from 'preact/hooks';
import type { Day } from '../../domain/core/calendar.ts';
import type { Programme } from '../../domain/state/room-air.ts';
import type { RoomView } from '../../domain/views/room-view.ts';
import { useModel } from '../model.ts';
import { dateWords } from '../../domain/core/day-words.ts';
import { clockText, minuteOf, stepOf, textOf, type StepText } from './programme-text.ts';
import { StepBoxes } from './StepBoxes.tsx';
import { tempUnit } from './temp-unit.ts';
import { YearLine } from './YearLine.tsx';

/** What the editor begins from: a school's programme or the present one. */
export type Begun = Omit<Programme, 'from'>;

/** Every step of a programme in boxes, the year it makes above them. */
export function ProgrammeEditor({
  view,
  begun,
  onClose,
}: {
  readonly view: RoomView;
  readonly begun: Begun;
  readonly onClose: () => void;
}) {
  const model = useModel();
  // Taken once: what is typed must not turn into another unit on the way.
  const [unit] = useState(tempUnit.value);
  const [from, setFrom] = useState<string>(view.tonight);
  const [name, setName] = useState(begun.name);
  const [dayFrom, setDayFrom] = useState(clockText(begun.dayFromMin));
  const [nightFrom, setNightFrom] = useState(clockText(begun.nightFromMin));
  const [texts, setTexts] = useState<readonly StepText[]>(() =>
    begun.steps.map((step) => textOf(step, unit)),
  );
  const steps = texts.flatMap((text) => stepOf(text, unit) ?? []);
  const [dayFromMin, nightFromMin] = [minuteOf(dayFrom), minuteOf(nightFrom)];
  const isWhole = steps.length === texts.length && texts.length > 0;
  const programme: Programme | undefined =
    isWhole && dayFromMin !== undefined && nightFromMin !== undefined && from !== ''
      ? { from: from as Day, name: name.trim() || 'Own', dayFromMin, nightFromMin, steps }
      : undefined;

  const change = (at: number, changed: Partial<StepText>) =>
    setTexts(texts.map((text, i) => (i === at ? { ...text, ...changed } : text)));
  const add = () => {
    const last = texts.at(-1);
    if (last) setTexts([...texts, { ...last, month: (last.month % 12) + 1 }]);
  };
  const save = () => {
    if (!programme) return;
    void model.write({
      drafts: [{ type: 'room-programme-set', room: view.id, ...programme, steps: [...steps] }],
      words: `${programme.name} from ${dateWords(programme.from)}`,
      after: onClose,
    });
  };

  return (
    <>
      {programme && <YearLine programme={programme} unit={unit} />}
      <div class="room-dates">
        <label>
          <span class="quiet small">Name</span>
          <input
            value={name}
            maxLength={40}
            onInput={({ currentTarget }) => setName(currentTarget.value)}
          />
        </label>
        <label>
          <span class="quiet small">In force from</span>
          <input
            type="date"
            value={from}
            onInput={({ currentTarget }) => setFrom(currentTarget.value)}
          />
        </label>
        <label>
          <span class="quiet small">Day begins</span>
          <input
            type="time"
            value={dayFrom}
            onInput={({ currentTarget }) => setDayFrom(currentTarget.value)}
          />
        </label>
        <label>
          <span class="quiet small">Night begins</span>
          <input
            type="time"
            value={nightFrom}
            onInput={({ currentTarget }) => setNightFrom(currentTarget.value)}
          />
        </label>
      </div>
      <p class="quiet small">
        Between two dates the temperatures change a little each day. The steps come round every
        year. All in {unit}.
      </p>
      <ol class="stack">
        {texts.map((text, i) => (
          <StepBoxes
            // A step has no name but its place.
            key={i}
            number={i + 1}
            text={text}
            isWrong={stepOf(text, unit) === undefined}
            onChange={(changed) => change(i, changed)}
            onRemove={
              texts.length > 1 ? () => setTexts(texts.filter((_, at) => at !== i)) : undefined
            }
          />
        ))}
      </ol>
      <button type="button" class="pill" disabled={texts.length >= 24} onClick={add}>
        Add a step
      </button>
      <button type="button" class="slab slab-main" disabled={!programme} onClick={save}>
        Set this programme
      </button>
    </>
  );
}
