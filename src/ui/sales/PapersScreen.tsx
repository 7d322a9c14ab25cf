import { useState } from 'preact/hooks';
import type { AnimalId } from '../../domain/core/ids.ts';
import { dateWords } from '../../domain/core/day-words.ts';
import type { PapersView } from '../../domain/views/papers-view.ts';
import { Icon } from '../components/Icon.tsx';
import { Slab } from '../components/Slab.tsx';
import { useModel, useView } from '../model.ts';
import { Page } from '../screens/Page.tsx';
import { EndSaleForm } from './EndSaleForm.tsx';
import { HandOverForm } from './HandOverForm.tsx';
import { PrintPapers } from './PrintPapers.tsx';
import { SaleBlocks } from './SaleBlocks.tsx';
import { SaleForm, type SaleStep } from './SaleForm.tsx';
import './sales.css';
import { SourceForm } from './SourceForm.tsx';

type Form = SaleStep | 'hand over' | 'end' | 'source';

/** The sale of one snake, and its papers. */
export function PapersScreen({ id }: { readonly id: AnimalId }) {
  const view = useView('papers', id);
  const [form, setForm] = useState<Form>();
  if (!view) return <Page title="Sale and papers" back />;
  const close = () => setForm(undefined);
  return (
    <Page title={view.name} beside="sale and papers" back>
      {!view.isWhole && <p class="quiet">Older records are still being read…</p>}
      <SaleNow view={view} />
      <SaleBlocks blocks={view.blocks} />
      <Steps view={view} onForm={setForm} />
      <Source view={view} onForm={setForm} />
      <PrintPapers view={view} />
      <a class="row-link" href={`#/animal/${id}`}>
        <Icon name="next" /> All about {view.name}
      </a>
      {(form === 'put up' || form === 'reserve' || form === 'sell') && (
        <SaleForm view={view} step={form} onClose={close} />
      )}
      {form === 'hand over' && <HandOverForm view={view} onClose={close} />}
      {form === 'end' && <EndSaleForm view={view} onClose={close} />}
      {form === 'source' && <SourceForm view={view} onClose={close} />}
    </Page>
  );
}

function SaleNow({ view }: { readonly view: PapersView }) {
  const { deposit, handedOver, isBack, isGone } = view;
  return (
    <div class="note">
      <p>
        <strong class="sale-state">{view.says}</strong>
      </p>
      {deposit !== undefined && <p class="small">Deposit: {deposit}</p>}
      {handedOver !== undefined && isGone && <p class="small">How: {handedOver}</p>}
      {isBack && <p class="small">It is here again. Say what became of the sale.</p>}
      {view.blocks.length === 0 && !isGone && (
        <p class="small">Nothing on record stands against a sale.</p>
      )}
    </div>
  );
}

/** What can be written next, the likeliest first. */
function Steps({
  view,
  onForm,
}: {
  readonly view: PapersView;
  readonly onForm: (form: Form) => void;
}) {
  const model = useModel();
  const { id: animal, name, stage, isGone, isBack } = view;
  const at = (...stages: readonly PapersView['stage'][]) => stages.includes(stage);
  const isHere = !isGone;
  return (
    <div class="two">
      {isHere && at('not offered') && (
        <Slab icon="add" kind="main" onPress={() => onForm('put up')}>
          Up for sale
        </Slab>
      )}
      {isHere && at('not offered', 'for sale', 'reserved') && (
        <>
          <Slab icon="hold" onPress={() => onForm('reserve')}>
            {at('reserved') ? 'Reserve anew' : 'Reserve'}
          </Slab>
          <Slab icon="check" onPress={() => onForm('sell')}>
            Sold
          </Slab>
        </>
      )}
      {isHere && at('sold') && (
        <Slab icon="out" kind="main" onPress={() => onForm('hand over')}>
          Hand over
        </Slab>
      )}
      {at('reserved', 'sold', 'handed over') && (isHere || at('handed over')) && (
        <Slab icon="undo" onPress={() => onForm('end')}>
          {isGone || isBack ? 'Brought back' : 'Fell through'}
        </Slab>
      )}
      {isHere && at('for sale') && (
        <>
          <Slab icon="more" onPress={() => onForm('put up')}>
            Other price
          </Slab>
          <Slab
            icon="close"
            onPress={() =>
              void model.write({
                drafts: [{ type: 'taken-off-sale', animal }],
                words: `${name} no longer for sale`,
              })
            }
          >
            Not for sale
          </Slab>
        </>
      )}
      {isHere && at('not offered', 'for sale') && (
        <Slab
          icon="racks"
          under="for yourself"
          onPress={() =>
            void model.write({
              drafts: [{ type: 'held-back', animal }],
              words: `${name} kept back`,
            })
          }
        >
          Keep back
        </Slab>
      )}
    </div>
  );
}

const Source = ({
  view: { source, lastFed, eats },
  onForm,
}: {
  readonly view: PapersView;
  readonly onForm: (form: Form) => void;
}) => (
  <section class="stack">
    <h2>For its papers</h2>
    <dl class="facts">
      <div>
        <dt>Last ate</dt>
        <dd>
          {lastFed === undefined ? 'nothing on record' : `${dateWords(lastFed)}, ${eats ?? ''}`}
        </dd>
      </div>
      <div>
        <dt>CITES source</dt>
        <dd>{source === undefined ? 'not stated' : `${source.code}: ${source.says}`}</dd>
      </div>
    </dl>
    <Slab icon="more" onPress={() => onForm('source')}>
      State the source
    </Slab>
  </section>
);
