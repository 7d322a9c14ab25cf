import type { FeedingLine, FeedingView } from '../../domain/views/feeding-view.ts';
import { Icon } from '../components/Icon.tsx';
import { SlabLink } from '../components/Slab.tsx';
import { Unfolds } from '../components/Unfolds.tsx';
import { OnPaper } from '../labels/OnPaper.tsx';
import { useView } from '../model.ts';
import { nightWords } from '../night.ts';
import { Page } from '../screens/Page.tsx';
import { feedingPages } from './FeedingPages.tsx';
import './feeding.css';
import { LastNight } from './LastNight.tsx';
import { ThawSize } from './ThawSize.tsx';

/** Tonight's feeding: what to thaw, who is due in rack order, and who is not and why. */
export function FeedingScreen() {
  const view = useView('feeding', null);
  if (!view) return <Page title="Feeding" back />;
  const { due, blocked, thaw } = view;
  return (
    <Page title="Feeding" beside={`Night of ${nightWords(view.night)}`} back>
      <LastNight view={view} />
      <section class="stack">
        <h2>Thaw list</h2>
        {thaw.length === 0 && <p class="note">Nothing is to be thawed tonight.</p>}
        {thaw.map((row) => (
          <ThawSize key={`${row.kind} ${row.size}`} row={row} leftHours={view.leftHours} />
        ))}
        <p class="small quiet">
          In the fridge from the day before, or in bags in warm water; 38–42 °C outside when it is
          offered. Wash your hands: rodents carry Salmonella.
        </p>
      </section>
      <section class="stack">
        <h2>
          Due <span class="quiet number">{due.length}</span>
        </h2>
        {due.length === 0 && <p class="quiet">Nobody is due tonight.</p>}
        <Racks lines={due} />
      </section>
      {blocked.length > 0 && (
        <Unfolds kind="waiting" summary={`Not tonight: ${blocked.length}, with the reason`}>
          {() => (
            <ul class="plain-list">
              {blocked.map((line) => (
                <Line key={line.animal} line={line} />
              ))}
            </ul>
          )}
        </Unfolds>
      )}
      <SlabLink icon="shelf" href="#/prey" under="what is in the freezer, and what to order">
        Prey
      </SlabLink>
      <OnPaper pagesOn={(size) => feedingPages(view, size)} />
    </Page>
  );
}

function Racks({ lines }: { readonly lines: FeedingView['due'] }) {
  const racks = new Map<string, FeedingLine[]>();
  for (const line of lines) racks.set(line.rackName, [...(racks.get(line.rackName) ?? []), line]);
  return (
    <>
      {[...racks].map(([name, inRack]) => {
        const rack = inRack[0]?.rack;
        return (
          <section key={name} class="stack">
            <h3>{rack === undefined ? name : `Rack ${name}`}</h3>
            <ul class="plain-list">
              {inRack.map((line) => (
                <Line key={line.animal} line={line} />
              ))}
            </ul>
            {rack !== undefined && (
              <a class="row-link" href={`#/meals/${rack}`}>
                <Icon name="feed" /> Feed rack {name}, row by row
              </a>
            )}
          </section>
        );
      })}
    </>
  );
}

const Line = ({ line }: { readonly line: FeedingLine }) => (
  <li>
    <a class="meal-line" href={`#/snake/${line.animal}`}>
      <span class="plate">{line.position}</span>
      <span class="stop-who">
        <strong>{line.name}</strong>
        <span class="small quiet">
          {line.blocked === undefined ? line.words : `Not tonight: ${line.blocked}`}
        </span>
      </span>
      {line.blocked === undefined && (
        <span class="small quiet number">eats {Math.round(100 * line.chance)} %</span>
      )}
    </a>
  </li>
);
