import { useState } from 'preact/hooks';
import type { Answer, Answers, SheetAsk } from '../../domain/sheet/asked.ts';
import type { SheetPreview } from '../../domain/sheet/preview.ts';
import { count } from './count-words.ts';

/** As many at a time as a thumb scrolls past. */
const SHOWN = 15;

/** Rows that look wrong but may be right, each with its reason; many of a kind with one tap. */
export function AskList({
  preview: { asks, askCount, askKinds },
  onAnswer,
}: {
  readonly preview: SheetPreview;
  readonly onAnswer: (answers: Answers) => void;
}) {
  const [shown, setShown] = useState(SHOWN);
  if (askCount === 0) return null;
  const all = (code: string, answer: Answer) =>
    onAnswer(
      Object.fromEntries(asks.filter((ask) => ask.code === code).map(({ key }) => [key, answer])),
    );
  return (
    <section aria-labelledby="sheet-asks">
      <h2 id="sheet-asks">{count(askCount, 'question', 'questions')}</h2>
      <p class="small quiet">Without an answer a row is left out.</p>
      {askKinds
        .filter((kind) => kind.count > 2)
        .map(({ code, count: n }) => (
          <ManyAtOnce
            key={code}
            asks={asks.filter((ask) => ask.code === code)}
            count={n}
            onAll={(answer) => all(code, answer)}
          />
        ))}
      <ol class="plain-list sheet-list" aria-label="Questions">
        {asks.slice(0, shown).map((ask) => (
          <li key={ask.key} class="stack">
            <Asked ask={ask} onAnswer={(answer) => onAnswer({ [ask.key]: answer })} />
          </li>
        ))}
      </ol>
      {shown < asks.length && (
        <button type="button" class="slab" onClick={() => setShown(shown + SHOWN)}>
          Show {Math.min(SHOWN, asks.length - shown)} more of {asks.length - shown}
        </button>
      )}
    </section>
  );
}

const codeWords: Readonly<Record<string, string>> = {
  'same-row': 'the same row twice',
  'name-slip': 'names one letter apart',
  'named-twice': 'snakes named twice',
  'other-order': 'dates in another order',
  'says-two': 'amounts said in two ways',
  tub: 'tubs',
  ratio: 'weights off by a factor',
  'mass-out-of-range': 'weights that cannot be',
  transposed: 'digits swapped',
  repeated: 'the weight of the row before',
  growth: 'sudden changes of weight',
  age: 'weights unusual for the age',
  'fed-lately': 'meals close together',
  'big-meal': 'large meals',
  'small-meal': 'small meals',
  many: 'many pieces at once',
  blocked: 'meals at a bad time',
  'shed-twice': 'sheds close together',
  'shed-soon': 'sheds close together',
  gone: 'snakes that had left',
};

const ManyAtOnce = ({
  asks,
  count: n,
  onAll,
}: {
  readonly asks: readonly SheetAsk[];
  readonly count: number;
  readonly onAll: (answer: Answer) => void;
}) => {
  const [first] = asks;
  if (!first) return null;
  const words = codeWords[first.code] ?? 'of one kind';
  const able = (has: (ask: SheetAsk) => unknown) => asks.every((ask) => has(ask) !== undefined);
  return (
    <div class="note stack" role="group" aria-label={`All: ${words}`}>
      <p>
        <strong class="number">{n.toLocaleString('en')}</strong> × {words}
      </p>
      <div class="chips">
        {able(({ instead }) => instead) && (
          <button type="button" class="pill" onClick={() => onAll('instead')}>
            Take all as likely meant
          </button>
        )}
        {able(({ accept }) => accept) && (
          <button type="button" class="pill" onClick={() => onAll('accept')}>
            Take all as they are
          </button>
        )}
        <button type="button" class="pill" onClick={() => onAll('leave')}>
          {first.code === 'name-slip' ? 'All are other snakes' : 'Leave all out'}
        </button>
      </div>
    </div>
  );
};

const Asked = ({
  ask: { line, name, text, messages, accept, leave, instead, answer },
  onAnswer,
}: {
  readonly ask: SheetAsk;
  readonly onAnswer: (answer: Answer) => void;
}) => (
  <>
    <p>
      <strong>{name}</strong>{' '}
      <span class="small quiet">
        line {line}
        {text !== name && `, “${text.slice(0, 40)}”`}
      </span>
    </p>
    {messages.map((message) => (
      <p key={message}>{message}</p>
    ))}
    <div class="chips" role="group" aria-label={`Answer for line ${line}`}>
      {(
        [
          ['instead', instead],
          ['accept', accept],
          ['leave', leave],
        ] as const
      ).map(
        ([kind, words]) =>
          words !== undefined && (
            <button
              type="button"
              key={kind}
              class="pill"
              aria-pressed={answer === kind}
              onClick={() => onAnswer(kind)}
            >
              {words}
            </button>
          ),
      )}
    </div>
  </>
);
