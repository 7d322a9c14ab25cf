import type { RackId } from '../../domain/core/ids.ts';
import type { Mark, RackView, TubCell } from '../../domain/views/racks-view.ts';
import { Icon, type IconName } from '../components/Icon.tsx';
import { SexMark } from '../components/SexMark.tsx';
import { SlabLink } from '../components/Slab.tsx';
import { useView } from '../model.ts';
import { Page } from './Page.tsx';

const markIcons: Record<Mark, IconName> = {
  feed: 'feed',
  'left overnight': 'overnight',
  'in blue': 'blue',
  'on hold': 'hold',
  pair: 'pair',
  away: 'away',
  weigh: 'weigh',
  'take out': 'out',
  quarantine: 'quarantine',
};

/** The rack as one stands before it: every tub in its place, with what it wants. */
export function RackScreen({ id }: { readonly id: RackId }) {
  const view = useView('rack', id);
  const meals = useView('meals', id);
  if (!view) return <Page title="Rack" back />;
  const marks = new Set(view.cells.flatMap((cell) => cell.marks));
  return (
    <Page title={`Rack ${view.name}`} beside={view.room} back>
      {(meals?.length ?? 0) > 0 && (
        <SlabLink
          icon="feed"
          kind="main"
          href={`#/meals/${id}`}
          under={`${meals?.length ?? 0} due: all as planned, except…`}
        >
          Feed this rack
        </SlabLink>
      )}
      <RackFront view={view} />
      {marks.size > 0 && (
        <ul class="marks" aria-label="What the marks say">
          {[...marks].map((mark) => (
            <li class="mark" key={mark}>
              <Icon name={markIcons[mark]} /> {mark}
            </li>
          ))}
        </ul>
      )}
      <SlabLink icon="print" href="#/labels">
        Print labels
      </SlabLink>
    </Page>
  );
}

function RackFront({ view }: { readonly view: RackView }) {
  const at = new Map(view.cells.map((cell) => [`${cell.row}/${cell.column}`, cell]));
  const rows = Array.from({ length: view.rows }, (_, i) => i + 1);
  const columns = Array.from({ length: view.columns }, (_, i) => i + 1);
  return (
    <div class="rack-scroll">
      <table class={`rack-front${view.columns > 3 ? ' rack-narrow' : ''}`}>
        <caption class="hidden-words">
          Rack {view.name}, {view.rows} rows of {view.columns}
        </caption>
        <tbody>
          {rows.map((row) => (
            <tr key={row}>
              {columns.map((column) => (
                <td key={column}>
                  <Cell cell={at.get(`${row}/${column}`)} />
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function Cell({ cell }: { readonly cell: TubCell | undefined }) {
  if (!cell) return <span class="tub-gap">–</span>;
  return (
    <a class={`tub-front${cell.names.length === 0 ? ' tub-empty' : ''}`} href={`#/tub/${cell.tub}`}>
      <span class="tub-place number">
        {cell.position}
        {cell.sex && cell.sex !== 'unknown' && <SexMark sex={cell.sex} />}
      </span>
      <span class="tub-name">{cell.names.join(' + ') || 'empty'}</span>
      <span class="tub-marks">
        {cell.marks.map((mark) => (
          <span key={mark}>
            <Icon name={markIcons[mark]} />
            <span class="hidden-words">{mark}</span>
          </span>
        ))}
      </span>
    </a>
  );
}
