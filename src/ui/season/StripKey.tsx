import type { ComponentChildren } from 'preact';
import { Unfolds } from '../components/Unfolds.tsx';
import { Mark, Tent } from './LaneStrip.tsx';
import { eventLook, type Event, type StripScale } from './strip-shapes.ts';

const scale: StripScale = { perDay: 3.2, height: 44, letter: 13, line: 1.5 };
const events = Object.keys(eventLook) as readonly Event[];

const Sample = ({
  children,
  words,
}: {
  readonly children: ComponentChildren;
  readonly words: string;
}) => (
  <li>
    <svg class="strip-sample" width="44" height="44" aria-hidden="true">
      {children}
    </svg>
    {words}
  </li>
);

const mark = { at: 6, from: 6 } as const;

/** What the shapes mean: the letters at a glance, the rest when asked. */
export const StripKey = () => (
  <div class="strip-key">
    <Unfolds
      summary={
        <span>
          <b>O</b> ovulation <b>S</b> pre-lay shed <b>E</b> eggs <b>P</b> pip: <u>how to read it</u>
        </span>
      }
    >
      {() => (
        <ul class="strip-samples">
          {events.map((event) => (
            <Sample
              key={event}
              words={`${event}, coming: within the tent in 4 of 5 cases, likeliest under its ridge`}
            >
              <Tent
                scale={scale}
                window={{ event, fromAt: 1, likelyAt: 5, toAt: 13, isOverdue: false }}
              />
            </Sample>
          ))}
          <Sample words="happened; the letter says what">
            <Mark scale={scale} mark={{ ...mark, kind: 'eggs' }} />
          </Sample>
          <Sample words="a scan; the bead is as large as the follicle">
            <Mark scale={scale} mark={{ ...mark, kind: 'scan', mm: 26 }} />
          </Sample>
          <Sample words="felt, not measured">
            <Mark scale={scale} mark={{ ...mark, kind: 'felt', mm: 26 }} />
          </Sample>
          <Sample words="looked, and found none">
            <Mark scale={scale} mark={{ ...mark, kind: 'none seen' }} />
          </Sample>
          <Sample words="a visit, with a stitch for each lock">
            <path class="strip-stay" stroke-width={2.1} d="M10 28.6H34" />
            <Mark scale={scale} mark={{ ...mark, kind: 'lock' }} />
          </Sample>
          <Sample words="tonight">
            <path class="strip-tonight" stroke-width={2.1} d="M22 0V44" />
          </Sample>
        </ul>
      )}
    </Unfolds>
  </div>
);
