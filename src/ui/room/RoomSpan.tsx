import type { ComponentType } from 'preact';
import { useState } from 'preact/hooks';
import type { Day } from '../../domain/core/calendar.ts';
import type { SeriesView, SpanView } from '../../domain/views/room-span.ts';
import { RoomPlot } from '../charts/RoomPlot.tsx';
import { dateWords } from '../../domain/core/day-words.ts';
import { DayTable } from './DayTable.tsx';
import { SpanFigures } from './SpanFigures.tsx';
import { inUnit, tempUnit } from './temp-unit.ts';

const spans = [
  [1, 'Day'],
  [7, 'Week'],
  [30, 'Month'],
  [365, 'Year'],
] as const;

const two = (n: number): string => String(n).padStart(2, '0');

const dayOf = (ms: number): Day => {
  const date = new Date(ms);
  return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}` as Day;
};

const spanWords = ({ fromMs, toMs }: SpanView): string =>
  `${dateWords(dayOf(fromMs))} to ${dateWords(dayOf(toMs))}`;

interface SpanProps {
  readonly span: SpanView;
  readonly onGo: (days: number, back: number) => void;
  /** What the band is, for the caption. */
  readonly bandWords?: (series: SeriesView) => string;
  readonly Table?: ComponentType<Pick<SeriesView, 'lines'>>;
}

const programmeWords = ({ bands }: SeriesView): string =>
  bands.length > 0 ? ' The band is the programme with its tolerance.' : '';

/** The readings of a span against what is asked for: curve, figures, table. */
export function RoomSpan({ span, onGo, bandWords = programmeWords, Table = DayTable }: SpanProps) {
  const [picked, setPicked] = useState<string>();
  const series = span.series.find(({ key }) => key === picked) ?? span.series[0];
  return (
    <section class="stack">
      <h2>Readings</h2>
      <div class="room-spans" role="group" aria-label="How long">
        {spans.map(([days, words]) => (
          <button
            type="button"
            key={days}
            class="pill"
            aria-pressed={span.days === days}
            onClick={() => onGo(days, 0)}
          >
            {words}
          </button>
        ))}
      </div>
      <div class="room-steps">
        <button type="button" class="pill" onClick={() => onGo(span.days, span.back + 1)}>
          Earlier
        </button>
        <span class="small quiet">{spanWords(span)}</span>
        <button
          type="button"
          class="pill"
          disabled={span.back === 0}
          onClick={() => onGo(span.days, span.back - 1)}
        >
          Later
        </button>
      </div>
      {span.series.length > 1 && (
        <label>
          <span class="quiet small">Which readings</span>
          <select
            value={series?.key}
            onChange={({ currentTarget }) => setPicked(currentTarget.value)}
          >
            {span.series.map(({ key, label }) => (
              <option key={key} value={key}>
                {label}
              </option>
            ))}
          </select>
        </label>
      )}
      {series && series.statistics.readings > 0 ? (
        <OfSeries span={span} series={series} band={bandWords(series)} Table={Table} />
      ) : (
        <Nothing span={span} hasSeries={series !== undefined} onGo={onGo} />
      )}
    </section>
  );
}

const Nothing = ({
  span,
  hasSeries,
  onGo,
}: {
  readonly span: SpanView;
  readonly hasSeries: boolean;
  readonly onGo: (days: number, back: number) => void;
}) => (
  <>
    <p class="quiet">{hasSeries ? 'No readings in this time.' : 'No readings yet.'}</p>
    {span.newestBack !== undefined && span.newestBack !== span.back && (
      <button type="button" class="pill" onClick={() => onGo(span.days, span.newestBack ?? 0)}>
        Go to the newest
      </button>
    )}
  </>
);

function OfSeries({
  span,
  series,
  band,
  Table,
}: {
  readonly span: SpanView;
  readonly series: SeriesView;
  readonly band: string;
  readonly Table: NonNullable<SpanProps['Table']>;
}) {
  const unit = tempUnit.value;
  const { readings, gaps } = series.statistics;
  const thinned = series.isThinned ? ' Drawn are the lowest and highest of each while.' : '';
  const gapText =
    gaps.length > 0 && !series.isByHand
      ? ` ${gaps.length === 1 ? '1 gap' : `${gaps.length} gaps`} over ${span.gapHours} h, left open.`
      : '';
  return (
    <>
      <RoomPlot
        drawing={{
          fromMs: span.fromMs,
          toMs: span.toMs,
          points: series.points,
          bands: series.bands,
          inUnit: (tempC) => inUnit(tempC, unit),
          isByHand: series.isByHand,
        }}
        unit={unit}
        caption={`${series.label}, ${spanWords(span)}: ${readings.toLocaleString('en')} readings in ${unit}.${band}${gapText}${thinned}`}
      />
      <SpanFigures series={series} gapHours={span.gapHours} />
      <details>
        <summary>The same as a table</summary>
        <Table lines={series.lines} />
      </details>
    </>
  );
}
