import { useState } from 'preact/hooks';
import type { ClutchId } from '../../domain/core/ids.ts';
import type { Draft } from '../../domain/events/event.ts';
import type { ClutchView, Hatchling } from '../../domain/views/clutch-view.ts';
import { SexMark } from '../components/SexMark.tsx';
import { Slab, SlabLink } from '../components/Slab.tsx';
import { useModel, useView } from '../model.ts';
import { History } from '../screens/History.tsx';
import { Page } from '../screens/Page.tsx';
import { CheckForm } from './CheckForm.tsx';
import { ChoreNotes } from './ChoreNotes.tsx';
import { ClutchFacts } from './ClutchFacts.tsx';
import { EndForm } from './EndForm.tsx';
import { FathersByRecords } from './FathersByRecords.tsx';
import { FathersForm } from './FathersForm.tsx';
import { FeltForm } from './FeltForm.tsx';
import { HatchForm } from './HatchForm.tsx';
import '../room/room.css';
import './hatchery.css';
import { PipForm } from './PipForm.tsx';
import { SetForm } from './SetForm.tsx';

const forms = {
  check: CheckForm,
  pip: PipForm,
  hatch: HatchForm,
  fathers: FathersForm,
  set: SetForm,
  felt: FeltForm,
  end: EndForm,
} as const;

/** One clutch, from the eggs to the young that stand by themselves. */
export function ClutchScreen({ id }: { readonly id: ClutchId }) {
  const view = useView('clutch', id);
  const model = useModel();
  const [form, setForm] = useState<keyof typeof forms>();
  if (!view) return <Page title="Clutch" back />;
  const Form = form && forms[form];
  const air: Draft = { type: 'box-aired', clutch: id };
  // A DNA test may come when all are long out.
  const fathers = (
    <Slab icon="male" onPress={() => setForm('fathers')}>
      Fathers
    </Slab>
  );
  return (
    <Page title={`Eggs of ${view.dam}`} back>
      <ChoreNotes chores={view.chores} />
      <ClutchFacts view={view} />
      <FathersByRecords view={view} />
      {view.closed === undefined && (
        <>
          <div class="two">
            <Slab icon="look" kind="main" onPress={() => setForm('pip')}>
              Pips
            </Slab>
            <Slab icon="add" kind="main" onPress={() => setForm('hatch')} under={view.nextName}>
              Hatchling
            </Slab>
            <Slab icon="eggs" onPress={() => setForm('check')}>
              Look at the eggs
            </Slab>
            <Slab
              icon="nest"
              onPress={() => void model.write({ drafts: [air], words: 'Box aired' })}
            >
              Aired the box
            </Slab>
            <Slab icon="heat" onPress={() => setForm('set')} under={view.incubator}>
              Put into
            </Slab>
            {fathers}
            <Slab icon="female" onPress={() => setForm('felt')}>
              Eggs left in her?
            </Slab>
            <Label view={view} />
          </div>
          <Slab icon="check" onPress={() => setForm('end')}>
            Close the clutch
          </Slab>
        </>
      )}
      {view.closed !== undefined && fathers}
      <Young view={view} />
      <History lines={view.history} isWhole={view.isWhole} />
      {Form && <Form view={view} onClose={() => setForm(undefined)} />}
    </Page>
  );
}

function Label({ view }: { readonly view: ClutchView }) {
  const model = useModel();
  const give = () => void model.desk.tell('giveCard', [view.id]).catch(model.failWith);
  return view.code === undefined ? (
    <Slab icon="print" onPress={give} under="one for the box, one for its lid">
      Give it a label
    </Slab>
  ) : (
    <SlabLink icon="print" href="#/labels" under={view.code}>
      Print its labels
    </SlabLink>
  );
}

const Young = ({ view }: { readonly view: ClutchView }) =>
  view.hatchlings.length === 0 ? null : (
    <section class="stack" aria-label="Young">
      <h2>Young</h2>
      {view.hatchlings.map((each) => (
        <a class="row-link" key={each.id} href={`#/snake/${each.id}`}>
          <span>
            <strong>{each.name}</strong> <SexMark sex={each.sex} />
            <span class="small quiet"> {standWords(each, view.establishedMeals)}</span>
          </span>
        </a>
      ))}
      <p class="small quiet">
        Established after {view.establishedMeals} unaided meals in a row, and not for sale before.
      </p>
    </section>
  );

function standWords({ meals, established, defects, gone }: Hatchling, most: number): string {
  const stands = established
    ? `established: ${meals} unaided meals in a row`
    : `${meals} of ${most} unaided meals in a row`;
  return [gone ?? stands, ...defects].join(' · ');
}
