import { useState } from 'preact/hooks';
import { shortMonths } from '../../domain/core/month-names.ts';
import type { AnimalId } from '../../domain/core/ids.ts';
import type { Prey } from '../../domain/events/feeding.ts';
import { exceptionWords } from '../../domain/views/prey-words.ts';
import type { WeightView } from '../../domain/views/weight-view.ts';
import { Sheet } from '../components/Sheet.tsx';
import { Slab } from '../components/Slab.tsx';
import { useModel } from '../model.ts';

type Exception = WeightView['exceptions'][number];

const kinds: readonly Prey['kind'][] = ['rat', 'mouse', 'soft-furred rat', 'gerbil', 'chick'];
const MOST = 4;

const wholeIn = (text: string, least: number, most: number): number | undefined => {
  const value = Number(text);
  return /^\d{1,2}$/.test(text) && value >= least && value <= most ? value : undefined;
};

/** How one snake is fed otherwise than its class: other prey, another size or interval, all year or in some months. */
export function ExceptionForm({
  id,
  name,
  exceptions,
  onClose,
}: {
  readonly id: AnimalId;
  readonly name: string;
  readonly exceptions: readonly Exception[];
  readonly onClose: () => void;
}) {
  const { write } = useModel();
  const [kind, setKind] = useState('');
  const [size, setSize] = useState('');
  const [every, setEvery] = useState('');
  const [from, setFrom] = useState('');
  const [until, setUntil] = useState('');
  const [why, setWhy] = useState('');
  const everyDays = wholeIn(every, 2, 60);
  const [first, last] = [wholeIn(from, 1, 12), wholeIn(until, 1, 12)];
  const made: Exception = {
    ...(first !== undefined && last !== undefined ? { months: [first, last] } : {}),
    ...(everyDays === undefined ? {} : { everyDays }),
    ...(kind === '' ? {} : { kind: kind as Prey['kind'] }),
    ...(size.trim() === '' ? {} : { size: size.trim() }),
    ...(why.trim() === '' ? {} : { why: why.trim() }),
  };
  const saysAny =
    made.everyDays !== undefined || made.kind !== undefined || made.size !== undefined;
  const isOpenEnded = (from === '') !== (until === '');
  const save = (next: readonly Exception[], words: string) =>
    void write({
      drafts: [{ type: 'feeding-excepted', animal: id, exceptions: [...next] }],
      words,
      after: onClose,
    });
  return (
    <Sheet title={`Feed ${name} otherwise`} onClose={onClose}>
      {exceptions.map((each, i) => (
        <p key={exceptionWords(each)} class="note">
          {exceptionWords(each)}{' '}
          <button
            type="button"
            class="pill"
            onClick={() =>
              save(
                exceptions.filter((_, other) => other !== i),
                `${name}: one exception less`,
              )
            }
          >
            No longer
          </button>
        </p>
      ))}
      <label>
        Prey
        <select value={kind} onChange={({ currentTarget }) => setKind(currentTarget.value)}>
          <option value="">as usual</option>
          {kinds.map((each) => (
            <option key={each} value={each}>
              {each}
            </option>
          ))}
        </select>
      </label>
      <label>
        Size, where it is always the same
        <input
          maxLength={20}
          autocomplete="off"
          value={size}
          onInput={({ currentTarget }) => setSize(currentTarget.value)}
        />
      </label>
      <label>
        Every so many days
        <input
          inputMode="numeric"
          autocomplete="off"
          value={every}
          onInput={({ currentTarget }) => setEvery(currentTarget.value.trim())}
        />
      </label>
      <div class="two">
        <MonthPick label="From" value={from} onPick={setFrom} />
        <MonthPick label="To the end of" value={until} onPick={setUntil} />
      </div>
      <label>
        Why
        <input
          maxLength={120}
          autocomplete="off"
          value={why}
          onInput={({ currentTarget }) => setWhy(currentTarget.value)}
        />
      </label>
      <Slab
        icon="check"
        kind="main"
        disabled={!saysAny || isOpenEnded || exceptions.length >= MOST}
        onPress={() => save([made, ...exceptions], `${name}: ${exceptionWords(made)}`)}
      >
        {saysAny ? `Write: ${exceptionWords(made)}` : 'Write'}
      </Slab>
    </Sheet>
  );
}

const MonthPick = ({
  label,
  value,
  onPick,
}: {
  readonly label: string;
  readonly value: string;
  readonly onPick: (value: string) => void;
}) => (
  <label>
    {label}
    <select value={value} onChange={({ currentTarget }) => onPick(currentTarget.value)}>
      <option value="">all year</option>
      {shortMonths.map((month, i) => (
        <option key={month} value={String(i + 1)}>
          {month}
        </option>
      ))}
    </select>
  </label>
);
