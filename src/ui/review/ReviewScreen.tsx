import { useState } from 'preact/hooks';
import type { RateFigure, ReviewLine, ReviewView } from '../../domain/views/review-view.ts';
import type { ShareName } from '../../domain/review/tally.ts';
import { shareWords } from '../../domain/views/review-words.ts';
import { Unfolds } from '../components/Unfolds.tsx';
import { OnPaper } from '../labels/OnPaper.tsx';
import { useView } from '../model.ts';
import { Page } from '../screens/Page.tsx';
import { intervalText, shareText } from './figure-text.ts';
import { LagRow } from './LagRow.tsx';
import { LineTable } from './LineTable.tsx';
import { MonthsChart } from './MonthsChart.tsx';
import { Outcomes } from './Outcomes.tsx';
import { RateRow, SpreadRow } from './RateRow.tsx';
import { reviewPages } from './ReviewPages.tsx';
import './review.css';
import { SeasonsCompared } from './SeasonsCompared.tsx';

const PAIRING: readonly ShareName[] = [
  'ovulatedOfPaired',
  'laidOfPaired',
  'laidOfOvulated',
  'lockedOfVisits',
];
const YOUNG: readonly ShareName[] = [
  'goodOfEggs',
  'slugsOfEggs',
  'hatchedOfGood',
  'hatchedOfEggs',
  'deadOfGood',
  'livedOfYoung',
  'establishedOfYoung',
  'malesOfYoung',
];

/** What worked, and how sure so few cases can be: one season or all of them. */
export function ReviewScreen() {
  const [season, setSeason] = useState('');
  const view = useView('review', season);
  if (!view) return <Page title="Season review" back />;
  if (!view.isWhole) {
    return (
      <Page title="Season review" back>
        <p role="status">Reading the old records…</p>
      </Page>
    );
  }
  const pick = (names: readonly ShareName[]) => names.map((name) => view.rates[name]);
  return (
    <Page title="Season review" back>
      <label>
        Season
        <select value={season} onChange={({ currentTarget }) => setSeason(currentTarget.value)}>
          <option value="">All seasons</option>
          {view.seasons.map((each) => (
            <option key={each} value={each}>
              {each}
            </option>
          ))}
        </select>
      </label>
      {view.underWay > 0 && (
        <p class="note small">
          {view.underWay === 1
            ? '1 paired season is still under way and not counted.'
            : `${view.underWay} paired seasons are still under way and not counted.`}
        </p>
      )}
      <Rates title="From pairing to eggs" season={view.season} rates={pick(PAIRING)} />
      <Rates title="Eggs and young" season={view.season} rates={pick(YOUNG)} />
      <Clutches view={view} />
      <section class="stack">
        <Title title="How long it took" season={view.season} />
        <ul class="review-rows">
          {view.lags.map((figure) => (
            <LagRow key={figure.lag} figure={figure} />
          ))}
        </ul>
        <p class="small quiet">
          Dashed: the usual window of your protocol. Solid: yours, from all seasons.
        </p>
      </section>
      <section class="stack">
        <h2>Season by season</h2>
        <SeasonsCompared seasons={view.bySeason} onPick={setSeason} />
      </section>
      <section class="stack">
        <Title title="One by one" season={view.season} />
        <Lines what="Female" summary="females" lines={view.females} link={toAnimal} />
        <Lines what="Male" summary="males" lines={view.males} link={toAnimal} />
        {view.males.length > 0 && (
          <p class="small quiet">
            A male’s eggs are those of which only he can be the father. “Laid” is of the females he
            visited, whoever else did.
          </p>
        )}
        <Lines
          what="Incubator"
          summary="incubators"
          lines={view.incubators}
          link={(id) => `#/incubator/${id}`}
        />
      </section>
      <section class="stack">
        <Title title="Feeding" season={view.season} />
        <ul class="review-rows">
          <RateRow figure={view.rates.refusedOfOffers} />
        </ul>
        <MonthsChart months={view.months} />
      </section>
      <Outcomes view={view} />
      <OnPaper pagesOn={(size) => reviewPages(view, size)} />
    </Page>
  );
}

const toAnimal = (id: string): string => `#/animal/${id}`;

/** What follows, and of which season: the page is long. */
const Title = ({ title, season }: { readonly title: string; readonly season: string }) => (
  <h2>
    {title} <span class="quiet small">{season === '' ? 'all seasons' : season}</span>
  </h2>
);

const Rates = ({
  title,
  season,
  rates,
}: {
  readonly title: string;
  readonly season: string;
  readonly rates: readonly RateFigure[];
}) => (
  <section class="stack">
    <Title title={title} season={season} />
    <ul class="review-rows">
      {rates.map((figure) => (
        <RateRow key={figure.name} figure={figure} />
      ))}
    </ul>
    <Unfolds summary={`${title} as a table`}>
      {() => (
        <table class="numbers">
          <thead>
            <tr>
              <th scope="col">Figure</th>
              <th scope="col">Counted</th>
              <th scope="col">Share</th>
              <th scope="col">95 %</th>
            </tr>
          </thead>
          <tbody>
            {rates.map((rate) => (
              <tr key={rate.name}>
                <th scope="row">{shareWords[rate.name].name}</th>
                <td class="number">
                  {rate.hits} of {rate.of}
                </td>
                <td class="number">{shareText(rate)}</td>
                <td class="number">{intervalText(rate)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </Unfolds>
  </section>
);

const Clutches = ({ view: { spreads, season } }: { readonly view: ReviewView }) => (
  <section class="stack">
    <Title title="Clutches" season={season} />
    {spreads.length === 0 ? (
      <p class="quiet">No clutch on record yet.</p>
    ) : (
      <ul class="review-rows">
        {spreads.map((figure) => (
          <SpreadRow key={figure.name} figure={figure} />
        ))}
      </ul>
    )}
  </section>
);

const Lines = ({
  what,
  summary,
  lines,
  link,
}: {
  readonly what: string;
  readonly summary: string;
  readonly lines: readonly ReviewLine[];
  readonly link: (id: string) => string;
}) =>
  lines.length === 0 ? null : (
    <Unfolds summary={`${lines.length} ${lines.length === 1 ? what.toLowerCase() : summary}`}>
      {() => (
        <LineTable
          what={what}
          lines={lines}
          nameOf={({ id, name }) => <a href={link(id)}>{name}</a>}
        />
      )}
    </Unfolds>
  );
