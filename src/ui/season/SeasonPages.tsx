import type { SizeMm } from '../../domain/labels/format.ts';
import type { Lane, LanesView } from '../../domain/views/lanes-view.ts';
import { PaperPage } from '../labels/PaperPage.tsx';
import { dateWords } from '../../domain/core/day-words.ts';
import { LaneStrip, StripGround } from './LaneStrip.tsx';
import { nextWords } from './lane-words.ts';
import { monthWords } from './month-words.ts';
import type { StripScale } from './strip-shapes.ts';

const MARGIN = 9;
const HEAD = 27;
const FOOT = 12;
const NAME_X = 20;
const NEXT_X = 45;
const AXIS_X = 82;
/** No row is lower than can be read, and none higher than looks like one. */
const LEAST_ROW = 4;
const MOST_ROW = 9;

/** As few pages as hold all lanes, each with the head and the months. */
export function seasonPages(view: LanesView, lanes: readonly Lane[], size: SizeMm) {
  const room = size.height - HEAD - FOOT;
  const pages = Math.max(1, Math.ceil(lanes.length / Math.floor(room / LEAST_ROW)));
  const perPage = Math.max(1, Math.ceil(lanes.length / pages));
  const row = Math.min(MOST_ROW, room / perPage);
  return Array.from({ length: pages }, (_, page) => (
    <SeasonPage
      view={view}
      lanes={lanes.slice(page * perPage, (page + 1) * perPage)}
      row={row}
      size={size}
      name={`page ${page + 1} of ${pages}`}
    />
  ));
}

function SeasonPage({
  view,
  lanes,
  row,
  size,
  name,
}: {
  readonly view: LanesView;
  readonly lanes: readonly Lane[];
  readonly row: number;
  readonly size: SizeMm;
  readonly name: string;
}) {
  const perDay = (size.width - MARGIN - AXIS_X) / view.days;
  const scale: StripScale = { perDay, height: row, letter: Math.min(2.6, row * 0.45), line: 0.22 };
  const ground: StripScale = { ...scale, height: lanes.length * row };
  const tonight = (view.tonightAt + 0.5) * perDay;
  return (
    <PaperPage size={size} offset={{ x: 0, y: 0 }} name={`Season, ${name}`}>
      <g class="season-paper">
        <text x={MARGIN} y={14} font-size={5.4} font-weight="bold">
          Season, night of {dateWords(view.night)}
        </text>
        <text x={size.width - MARGIN} y={14} font-size={2.7} text-anchor="end">
          Nightdrop, {name}
        </text>
        <text x={MARGIN} y={19} font-size={2.7}>
          O ovulation, S pre-lay shed, E eggs, P first pip. Tents are coming, their ridge over the
          likeliest day; windows hold in 4 of 5 cases. Black knots have happened. Beads: scans, as
          large as the follicle.
        </text>
        <g transform={`translate(${AXIS_X} 0)`}>
          {view.months.map((month) => (
            <text key={month.at} x={month.at * perDay + 0.8} y={HEAD - 1.2} font-size={2.7}>
              {monthWords(month)}
            </text>
          ))}
          <path
            class="strip-month"
            stroke-width={0.12}
            d={view.months.map(({ at }) => `M${at * perDay} ${HEAD - 4}V${HEAD}`).join('')}
          />
          <g transform={`translate(0 ${HEAD})`}>
            <StripGround view={view} scale={ground} />
          </g>
          <text x={tonight} y={HEAD + ground.height + 3.4} font-size={2.5} text-anchor="middle">
            tonight
          </text>
        </g>
        {lanes.map((lane, i) => (
          <g key={lane.id} transform={`translate(0 ${HEAD + i * row})`}>
            <path
              class="strip-month"
              stroke-width={0.12}
              d={`M${MARGIN} 0H${size.width - MARGIN}`}
            />
            <text x={MARGIN} y={row / 2 + 0.95} font-size={2.7}>
              {lane.position}
            </text>
            <text x={NAME_X} y={row / 2 + 0.95} font-size={2.9} font-weight="bold">
              {cut(lane.name, 15)}
            </text>
            <text x={NEXT_X} y={row / 2 + 0.95} font-size={2.4}>
              {cut(nextWords(lane), 32)}
            </text>
            <g transform={`translate(${AXIS_X} 0)`}>
              <LaneStrip lane={lane} tonightAt={view.tonightAt} scale={scale} />
            </g>
          </g>
        ))}
      </g>
    </PaperPage>
  );
}

const cut = (words: string, most: number): string =>
  words.length > most ? `${words.slice(0, most - 1)}…` : words;
