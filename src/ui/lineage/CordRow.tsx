import type { ComponentChildren } from 'preact';
import { frayPath, joinPath, KNOT_Y, knotPath, laneX, type Cords } from './cord-shapes.ts';

interface CordRowProps {
  readonly generation: number;
  readonly cords: Cords;
  /** Undefined: nobody is known here. */
  readonly sex: 'female' | 'male' | 'unknown' | undefined;
  readonly isUnsure?: boolean;
  readonly isAgain?: boolean;
  readonly isFrayed?: boolean;
  readonly isCommon?: boolean;
  readonly href?: string | undefined;
  readonly children: ComponentChildren;
}

/** One line of a lineage: its knot on the cords, and its words beside it. */
export function CordRow({ href, children, ...drawn }: CordRowProps) {
  const inside = (
    <>
      <span class={`cord-room cord-room-${drawn.generation}`}>
        <CordDrawing {...drawn} />
      </span>
      <span class="forebear-words">{children}</span>
    </>
  );
  return (
    <li>
      {href === undefined ? (
        <span class="forebear">{inside}</span>
      ) : (
        <a class="forebear" href={href}>
          {inside}
        </a>
      )}
    </li>
  );
}

/** Lengths are pixels, and the row’s own height is 100 %: rows of any height tie on to each other. */
function CordDrawing({
  generation,
  cords: { passing, goesOn },
  sex,
  isUnsure = false,
  isAgain = false,
  isFrayed = false,
  isCommon = false,
}: Omit<CordRowProps, 'href' | 'children'>) {
  const x = laneX(generation);
  return (
    <svg class="cords" width={x + 14} height="100%" aria-hidden="true">
      {passing.map((lane) => (
        <line key={lane} class="cord" x1={laneX(lane)} x2={laneX(lane)} y1="0" y2="100%" />
      ))}
      {goesOn && <line class="cord" x1={x} x2={x} y1={KNOT_Y} y2="100%" />}
      {generation > 0 && (
        <path class={isUnsure ? 'cord cord-unsure' : 'cord'} d={joinPath(generation)} />
      )}
      {sex === undefined ? (
        <path class="cord" d={frayPath(generation, false)} />
      ) : (
        <>
          {isFrayed && <path class="cord" d={frayPath(generation, true)} />}
          {isCommon && <circle class="cord-common" cx={x} cy={KNOT_Y} r="12" />}
          <path
            class={isAgain ? 'cord-knot cord-again' : 'cord-knot'}
            d={knotPath(sex, generation)}
          />
        </>
      )}
    </svg>
  );
}
