import { useLayoutEffect, useRef } from 'preact/hooks';
import type { Lane, LanesView } from '../../domain/views/lanes-view.ts';
import { nightWords } from '../night.ts';
import { LaneStrip, StripGround } from './LaneStrip.tsx';
import { nextWords } from './lane-words.ts';
import { monthWords } from './month-words.ts';
import type { StripScale } from './strip-shapes.ts';
import { useGrowing } from './use-growing.ts';

const scale: StripScale = { perDay: 3.2, height: 54, letter: 14, line: 1.5 };
/** Tonight stands this far from the left edge: what is coming wants more room than what was. */
const TONIGHT_SHARE = 0.3;

/** All females on one time axis that scrolls sideways under their names. */
export function WallStrip({
  view,
  lanes,
}: {
  readonly view: LanesView;
  readonly lanes: readonly Lane[];
}) {
  const head = useRef<HTMLDivElement>(null);
  const strip = useRef<HTMLDivElement>(null);
  const shown = useGrowing(lanes.length);
  const width = view.days * scale.perDay;
  const tonight = (view.tonightAt + 0.5) * scale.perDay;

  useLayoutEffect(() => {
    const box = strip.current;
    if (box) box.scrollLeft = tonight - TONIGHT_SHARE * box.clientWidth;
  }, [tonight]);

  return (
    <div class="wall-strip">
      <div class="strip-head" aria-hidden="true" ref={head}>
        <svg width={width} height="2.5rem">
          {view.months.map((month) => {
            const x = month.at * scale.perDay;
            return (
              <g key={month.at}>
                <line class="strip-month" x1={x} x2={x} y2="100%" />
                <text class="strip-month-name" x={x + 4} y="1rem">
                  {monthWords(month)}
                </text>
              </g>
            );
          })}
          <line
            class="strip-tonight"
            stroke-width={2}
            x1={tonight}
            x2={tonight}
            y1="55%"
            y2="100%"
          />
          <text class="strip-tonight-name" x={tonight + 4} y="2.15rem">
            tonight, {nightWords(view.night)}
          </text>
        </svg>
      </div>
      <div
        class="strip-scroll"
        ref={strip}
        onScroll={({ currentTarget }) => {
          if (head.current) head.current.scrollLeft = currentTarget.scrollLeft;
        }}
      >
        <ol>
          {lanes.slice(0, shown).map((lane) => (
            <li key={lane.id}>
              <a class="lane" href={`#/animal/${lane.id}`}>
                <span class="lane-label">
                  <span class="lane-place">{lane.position}</span>
                  <strong>{lane.name}</strong>
                  <span class="lane-next">
                    {lane.questions > 0 && <b class="lane-asks">asks </b>}
                    {nextWords(lane)}
                  </span>
                </span>
                <svg width={width} height={scale.height} aria-hidden="true">
                  <StripGround view={view} scale={scale} />
                  <LaneStrip lane={lane} tonightAt={view.tonightAt} scale={scale} />
                </svg>
              </a>
            </li>
          ))}
        </ol>
      </div>
    </div>
  );
}
