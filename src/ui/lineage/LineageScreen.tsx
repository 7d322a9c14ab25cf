import type { AnimalId } from '../../domain/core/ids.ts';
import type { LineageRow, LineageView, NamedKin } from '../../domain/views/lineage-view.ts';
import { SexMark } from '../components/SexMark.tsx';
import { Unfolds } from '../components/Unfolds.tsx';
import { useView } from '../model.ts';
import { Page } from '../screens/Page.tsx';
import { cordsOf } from './cord-shapes.ts';
import { CordRow } from './CordRow.tsx';
import { KinLine } from './KinLine.tsx';
import './lineage.css';
import { LineageTable } from './LineageTable.tsx';

/** Where one snake comes from, on cords and as a table, and what came of it. */
export function LineageScreen({ id }: { readonly id: AnimalId }) {
  const view = useView('lineage', id);
  if (!view) return <Page title="Lineage" back />;
  return (
    <Page title="Lineage" beside={view.self.name} back>
      <KinLine kin={view.kin} limits={view.limits} />
      {view.common.length > 0 && (
        <p>
          On both sides: <Names kin={view.common} />.
        </p>
      )}
      <Slips slips={view.slips} />
      <Strings view={view} />
      <LineageTable rows={view.rows} />
      <Siblings siblings={view.siblings} />
      <Young broods={view.broods} />
    </Page>
  );
}

/** What is stated of parents and cannot be, with the ways to the records. */
const Slips = ({ slips }: Pick<LineageView, 'slips'>) => (
  <>
    {slips.map(({ says, records }) => (
      <p class="note note-warn" key={says}>
        {says} Records of:{' '}
        {records.map(({ id, name }, n) => (
          <span key={id}>
            {n > 0 && ', '}
            <a href={`#/animal/${id}`}>{name}</a>
          </span>
        ))}
        .
      </p>
    ))}
  </>
);

function Strings({ view: { self, rows, common } }: { readonly view: LineageView }) {
  const cords = cordsOf([0, ...rows.map(({ generation }) => generation)]);
  const own = cords[0];
  const onBothSides = new Set(common.map(({ id }) => id));
  return (
    <section>
      <h2>Ancestors</h2>
      <ol class="forebears" aria-label={`Ancestors of ${self.name}, each followed by its own`}>
        {own && (
          <CordRow
            generation={0}
            cords={own}
            sex={self.sex}
            isFrayed={rows.length === 0}
            href={`#/animal/${self.id}`}
          >
            <strong>{self.name}</strong>
            {rows.length === 0 && <span class="quiet small">parents not known</span>}
          </CordRow>
        )}
        {rows.map((row, n) => (
          <CordRow
            key={row.path}
            generation={row.generation}
            cords={cords[n + 1] ?? { passing: [], goesOn: false }}
            sex={row.who?.sex}
            isUnsure={row.sure < 1}
            isAgain={row.again}
            isFrayed={row.isFounder && !row.again}
            isCommon={row.who !== undefined && onBothSides.has(row.who.id)}
            href={row.who?.isOnRecord ? `#/lineage/${row.who.id}` : undefined}
          >
            <RowWords row={row} isCommon={row.who !== undefined && onBothSides.has(row.who.id)} />
          </CordRow>
        ))}
      </ol>
      <p class="quiet small">
        Round knots are females, square ones males, one on its corner is not sexed. A frayed end:
        parents not known. Dashed: one of several possible fathers. Ringed: on both sides.
      </p>
    </section>
  );
}

const RowWords = ({ row, isCommon }: { readonly row: LineageRow; readonly isCommon: boolean }) => (
  <>
    {row.who ? <strong>{row.who.name}</strong> : <span>not known</span>}
    <span class="quiet small">
      {[
        row.relation,
        row.hatched,
        row.doubt,
        isCommon ? 'on both sides' : undefined,
        row.again ? 'again, see above' : undefined,
      ]
        .filter((each) => each !== undefined)
        .join(' · ')}
      {row.who && row.isFounder && <span class="hidden-words">, parents not known</span>}
    </span>
    {row.traits !== undefined && <span class="small">{row.traits}</span>}
  </>
);

const Names = ({ kin }: { readonly kin: readonly NamedKin[] }) => (
  <>
    {kin.map(({ id, name }, n) => (
      <span key={id}>
        {n > 0 && ', '}
        <a href={`#/lineage/${id}`}>{name}</a>
      </span>
    ))}
  </>
);

const KinList = ({ kin }: { readonly kin: readonly NamedKin[] }) => (
  <ul class="kin-list">
    {kin.map(({ id, name, sex }) => (
      <li key={id}>
        <a href={`#/lineage/${id}`}>
          {name} <SexMark sex={sex} />
        </a>
      </li>
    ))}
  </ul>
);

const Siblings = ({ siblings }: Pick<LineageView, 'siblings'>) => (
  <section>
    <h2>Siblings</h2>
    {siblings.length === 0 && <p class="quiet">None on record.</p>}
    {siblings.map(({ shares, kin }) => (
      <Unfolds key={shares} summary={`${kin.length} sharing ${shares}`}>
        {() => <KinList kin={kin} />}
      </Unfolds>
    ))}
  </section>
);

const Young = ({ broods }: Pick<LineageView, 'broods'>) => (
  <section>
    <h2>Young</h2>
    {broods.length === 0 && <p class="quiet">None on record under a name of their own.</p>}
    {broods.map(({ others, isPerhaps, young }) => {
      const by = others.map(({ name }) => name).join(' or ') || 'a parent not known';
      const perhaps = isPerhaps ? 'perhaps, ' : '';
      return (
        <Unfolds key={`${by}${perhaps}`} summary={`${perhaps}${young.length} with ${by}`}>
          {() => <KinList kin={young} />}
        </Unfolds>
      );
    })}
  </section>
);
