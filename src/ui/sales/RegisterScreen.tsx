import { useState } from 'preact/hooks';
import type { Day } from '../../domain/core/calendar.ts';
import { dateWords } from '../../domain/core/day-words.ts';
import type { RegisterView } from '../../domain/views/register-view.ts';
import { Slab } from '../components/Slab.tsx';
import { useModel, useView } from '../model.ts';
import { saveFile } from '../save-file.ts';
import { Page } from '../screens/Page.tsx';
import './sales.css';

const thisYear = (): number => new Date().getFullYear();

/** Who was here when, and what was sold: on the screen, and as a file for whoever may ask. */
export function RegisterScreen() {
  const [from, setFrom] = useState(`${thisYear()}-01-01`);
  const [to, setTo] = useState(`${thisYear()}-12-31`);
  const isSpan = from !== '' && to !== '' && from <= to;
  return (
    <Page title="Register" back>
      <div class="sale-days">
        <DayField name="From" value={from} onChange={setFrom} />
        <DayField name="To" value={to} onChange={setTo} />
      </div>
      {isSpan ? (
        <Register from={from as Day} to={to as Day} />
      ) : (
        <p class="note note-warn" role="alert">
          Pick two days, the earlier one first.
        </p>
      )}
    </Page>
  );
}

const DayField = ({
  name,
  value,
  onChange,
}: {
  readonly name: string;
  readonly value: string;
  readonly onChange: (day: string) => void;
}) => (
  <label>
    {name}
    <input
      type="date"
      value={value}
      onInput={({ currentTarget }) => onChange(currentTarget.value)}
    />
  </label>
);

function Register({ from, to }: { readonly from: Day; readonly to: Day }) {
  const view = useView('register', { from, to });
  if (!view) return null;
  return (
    <>
      {!view.isWhole && <p class="quiet">Older records are still being read…</p>}
      <section class="stack">
        <h2>Snakes</h2>
        <dl class="facts">
          <div>
            <dt>Kept on any day</dt>
            <dd>{view.kept}</dd>
          </div>
          {view.came.map(([how, count]) => (
            <div key={how}>
              <dt>{how === 'came back' ? 'Came back' : `Came: ${how}`}</dt>
              <dd>{count}</dd>
            </div>
          ))}
          {view.left.map(([how, count]) => (
            <div key={how}>
              <dt>Left: {how}</dt>
              <dd>{count}</dd>
            </div>
          ))}
        </dl>
      </section>
      <Sales view={view} />
      <Files from={from} to={to} />
    </>
  );
}

const Sales = ({ view }: { readonly view: RegisterView }) => (
  <section class="stack">
    <h2>Sales</h2>
    {view.numbers.map((line) => (
      <p key={line}>{line}</p>
    ))}
    <ul class="sale-list">
      {view.sales.map(({ animal, name, on, price, ended }) => (
        <li key={`${animal} ${on}`}>
          <a class="sale-entry" href={`#/papers/${animal}`}>
            <strong>{name}</strong>
            <span class="small quiet">
              {dateWords(on)}
              {price !== undefined && `, ${price}`}
              {ended !== undefined && `; ${ended}`}
            </span>
          </a>
        </li>
      ))}
    </ul>
  </section>
);

const files = [
  ['animals', 'Save the register', 'every snake kept, how it came and left'],
  ['sales', 'Save the sales', 'with prices and days'],
] as const;

/** The same as files that any spreadsheet opens. */
function Files({ from, to }: { readonly from: Day; readonly to: Day }) {
  const { desk, failWith, say } = useModel();
  const [withBuyers, setWithBuyers] = useState(false);
  const save = async (of: 'animals' | 'sales') => {
    const { fileName, text } = await desk.tell('registerFile', {
      span: { from, to },
      of,
      withBuyers,
    });
    if (await saveFile(fileName, text, 'text/csv')) say(`Saved: ${fileName}`);
  };
  return (
    <section class="stack">
      <h2>As files</h2>
      <label class="tick">
        <input
          type="checkbox"
          checked={withBuyers}
          onChange={({ currentTarget }) => setWithBuyers(currentTarget.checked)}
        />
        With buyers’ names and contacts
      </label>
      {withBuyers && (
        <p class="note note-warn small">
          A name in a file cannot be erased from here. Give it only to those who may ask for it, and
          delete it afterwards.
        </p>
      )}
      {files.map(([of, words, under]) => (
        <Slab key={of} icon="safe" under={under} onPress={() => void save(of).catch(failWith)}>
          {words}
        </Slab>
      ))}
      <p class="small quiet">
        CSV, for any spreadsheet. Days are those of the calendar, not the room’s nights. What an
        inspector may ask for, and for how many years, differs from place to place: check local
        rules.
      </p>
    </section>
  );
}
