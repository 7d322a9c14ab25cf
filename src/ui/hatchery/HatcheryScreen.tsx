import { useState } from 'preact/hooks';
import { agoWords, showC } from '../../domain/room/words.ts';
import type { ClutchLine, IncubatorLine } from '../../domain/views/hatchery-view.ts';
import { Icon } from '../components/Icon.tsx';
import { Slab } from '../components/Slab.tsx';
import { useView } from '../model.ts';
import { dateWords, dayAndMonthWords } from '../../domain/core/day-words.ts';
import { Page } from '../screens/Page.tsx';
import { ChoreNotes } from './ChoreNotes.tsx';
import { NewIncubator } from './NewIncubator.tsx';
import './hatchery.css';

/** Incubators and clutches at a glance. */
export function HatcheryScreen() {
  const view = useView('hatchery', null);
  const [isMaking, setIsMaking] = useState(false);
  if (!view) return <Page title="Eggs" back />;
  return (
    <Page title="Eggs" back>
      <h2>Incubators</h2>
      {view.incubators.length === 0 && (
        <p class="quiet">None yet. Give yours a name and a label, and read it in two taps.</p>
      )}
      <ul class="hatchery-list">
        {view.incubators.map((each) => (
          <li key={each.id}>
            <IncubatorEntry line={each} />
          </li>
        ))}
      </ul>
      <Slab icon="add" onPress={() => setIsMaking(true)}>
        Add an incubator
      </Slab>
      <h2>Clutches</h2>
      {view.open.length === 0 && (
        <p class="quiet">No eggs now. A clutch begins when you write down that she has laid.</p>
      )}
      <ul class="hatchery-list">
        {view.open.map((each) => (
          <li key={each.id}>
            <ClutchEntry line={each} />
          </li>
        ))}
      </ul>
      {view.closed.length > 0 && (
        <>
          <h2>Earlier</h2>
          <ul class="hatchery-list">
            {view.closed.map((each) => (
              <li key={each.id}>
                <ClutchEntry line={each} />
              </li>
            ))}
          </ul>
        </>
      )}
      {isMaking && <NewIncubator onClose={() => setIsMaking(false)} />}
    </Page>
  );
}

const IncubatorEntry = ({ line }: { readonly line: IncubatorLine }) => (
  <>
    <a class="row-link" href={`#/incubator/${line.id}`}>
      <Icon name="heat" />
      <span>
        <strong>{line.name}</strong>
        <span class="quiet small">
          {line.tempC === undefined || line.ageMin === undefined
            ? ' not read yet'
            : ` ${showC(line.tempC)}, ${agoWords(line.ageMin)}`}
          {` · ${line.clutches === 1 ? '1 clutch' : `${line.clutches} clutches`}`}
        </span>
      </span>
    </a>
    <ChoreNotes chores={line.chores} />
  </>
);

const ClutchEntry = ({ line }: { readonly line: ClutchLine }) => (
  <>
    <a class="row-link" href={`#/clutch/${line.id}`}>
      <Icon name="eggs" />
      <span>
        <strong>{line.dam}</strong>
        <span class="quiet small">
          {line.laid &&
            ` laid ${line.closed === undefined ? dayAndMonthWords(line.laid) : dateWords(line.laid)}`}
          {line.counts.laid !== undefined && ` · ${line.counts.laid} eggs`}
          {line.window &&
            ` · pips ${dayAndMonthWords(line.window.from)} to ${dayAndMonthWords(line.window.to)}`}
          {line.counts.out > 0 && ` · ${line.counts.out} out`}
          {line.closed !== undefined && ` · ${line.closed}`}
        </span>
      </span>
    </a>
    <ChoreNotes chores={line.chores} />
  </>
);
