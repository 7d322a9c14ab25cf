import type { EventOf } from '../../domain/events/event.ts';

type Felt = Extract<EventOf<'follicles-scanned'>['found'], { method: 'palpation' }>['felt'];

interface FeltClass {
  readonly felt: Felt;
  /** The follicles that go with it. Common practice; see the numbers of the protocol. */
  readonly under: string;
  readonly mm: number;
  readonly lumps: number;
}

const classes: readonly FeltClass[] = [
  { felt: 'nothing', under: 'none felt', mm: 0, lumps: 0 },
  { felt: 'small bumps', under: 'about 12 mm', mm: 12, lumps: 6 },
  { felt: 'round lumps', under: 'about 20 mm', mm: 20, lumps: 4 },
  { felt: 'large lumps', under: 'about 30 mm', mm: 30, lumps: 3 },
  { felt: 'egg-like', under: '40 mm and more', mm: 40, lumps: 2 },
];

// Millimetres: what a light hand has in it of her last third.
const LENGTH = 112;
const HEIGHT = 48;

/** A stretch of her body from above, with what is felt in it; all of them to one scale. */
function Lumps({ mm, lumps }: FeltClass) {
  const step = LENGTH / lumps;
  return (
    <svg class="felt-lumps" viewBox={`0 0 ${LENGTH} ${HEIGHT}`} aria-hidden="true">
      <path d={`M0 2Q${LENGTH / 2} 0 ${LENGTH} 2M0 46Q${LENGTH / 2} 48 ${LENGTH} 46`} />
      {Array.from({ length: lumps }, (_, i) => (
        <ellipse
          key={i}
          cx={step * (i + 0.5)}
          cy={HEIGHT / 2 + (i % 2 === 0 ? -1 : 1)}
          rx={mm >= 40 ? mm * 0.65 : mm / 2}
          ry={mm / 2}
        />
      ))}
    </svg>
  );
}

/** What the fingers found, picked from drawings: a hand knows a size better than a number. */
export const FeltScale = ({ onPick }: { readonly onPick: (felt: Felt) => void }) => (
  <div class="stack felt-scale">
    {classes.map((each) => (
      <button type="button" class="slab" key={each.felt} onClick={() => onPick(each.felt)}>
        <Lumps {...each} />
        <span>
          {each.felt}
          <small>{each.under}</small>
        </span>
      </button>
    ))}
    <p class="small quiet">All drawn to one scale. Not after a meal: that feels like lumps too.</p>
  </div>
);
