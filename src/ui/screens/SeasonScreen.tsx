import { useState } from 'preact/hooks';
import type { LanesView, QuietFemale } from '../../domain/views/lanes-view.ts';
import type { Stage } from '../../domain/season/standing.ts';
import { Icon } from '../components/Icon.tsx';
import { Unfolds } from '../components/Unfolds.tsx';
import { OnPaper } from '../labels/OnPaper.tsx';
import { useView } from '../model.ts';
import { remember, remembered } from '../remember.ts';
import { LanesTable } from '../season/LanesTable.tsx';
import { seasonPages } from '../season/SeasonPages.tsx';
import '../season/season.css';
import { StripKey } from '../season/StripKey.tsx';
import { WallStrip } from '../season/WallStrip.tsx';
import { Page } from './Page.tsx';

const ORDER = 'season-order';

/** The season at a glance: every female whose season is under way, on one time axis. */
export function SeasonScreen() {
  const view = useView('lanes', null);
  const [inRackOrder, setInRackOrder] = useState(remembered(ORDER) === 'rack');
  if (!view) return <Page title="Season" back />;
  const lanes = inRackOrder ? view.lanes.toSorted((a, b) => a.walk - b.walk) : view.lanes;
  const order = (byRack: boolean) => {
    remember(ORDER, byRack ? 'rack' : undefined);
    setInRackOrder(byRack);
  };
  return (
    <Page title="Season" back>
      {lanes.length === 0 ? (
        <p class="note">
          No female’s season is under way. It begins with a scan of growing follicles, or with two
          kinds of signs.
        </p>
      ) : (
        <>
          <div class="chips" role="group" aria-label="Order">
            <button
              type="button"
              class="pill"
              aria-pressed={!inRackOrder}
              onClick={() => order(false)}
            >
              Nearest first
            </button>
            <button
              type="button"
              class="pill"
              aria-pressed={inRackOrder}
              onClick={() => order(true)}
            >
              Rack order
            </button>
          </div>
          <StripKey />
          <WallStrip view={view} lanes={lanes} />
          <LanesTable lanes={lanes} />
        </>
      )}
      <Quiet quiet={view.quiet} />
      <Signs view={view} />
      <a class="row-link" href="#/review">
        <Icon name="find" /> Season review: what worked
      </a>
      {lanes.length > 0 && <OnPaper isWide pagesOn={(size) => seasonPages(view, lanes, size)} />}
    </Page>
  );
}

/** Females with nothing to draw, by stage. */
function Quiet({ quiet }: { readonly quiet: readonly QuietFemale[] }) {
  const stages = new Map<Stage, QuietFemale[]>();
  for (const each of quiet) stages.set(each.stage, [...(stages.get(each.stage) ?? []), each]);
  if (quiet.length === 0) return null;
  return (
    <section>
      <h2>No season under way</h2>
      {[...stages].map(([stage, females]) => (
        <Unfolds key={stage} summary={`${females.length} ${stage}`}>
          {() => (
            <ul class="quiet-females">
              {females.map(({ id, name, position }) => (
                <li key={id}>
                  <a href={`#/animal/${id}`}>
                    <span class="quiet number">{position}</span> {name}
                  </a>
                </li>
              ))}
            </ul>
          )}
        </Unfolds>
      ))}
    </section>
  );
}

/** What the keeper's own records say of each sign. */
const Signs = ({ view: { signs, cycles } }: { readonly view: LanesView }) => (
  <section class="stack">
    <h2>Signs, in your records</h2>
    {signs.length === 0 ? (
      <p class="quiet">
        {cycles === 0
          ? 'No ovulation on record yet. Signs are counted from the first one on.'
          : `No sign on record before your ${cycles === 1 ? 'ovulation' : `${cycles} ovulations`}.`}
      </p>
    ) : (
      <>
        <dl class="sign-lines">
          {signs.map(({ sign, says }) => (
            <div key={sign}>
              <dt>{sign}</dt>
              <dd>{says}</dd>
            </div>
          ))}
        </dl>
        <p class="quiet small">
          Counted, not weighed: the day it was first written down, in cycles with an ovulation on
          record. In brackets, the share of cycles, 95 % interval. From ten cycles on, one in ten is
          left out at either end of the days. A sign nobody wrote down counts as not seen.
        </p>
      </>
    )}
  </section>
);
