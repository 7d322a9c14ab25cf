import { useState } from 'preact/hooks';
import type { SchoolRow, ValueRow } from '../../domain/views/protocol-view.ts';
import { Slab } from '../components/Slab.tsx';
import { VetLine } from '../components/VetLine.tsx';
import { useView } from '../model.ts';
import { ProtocolHistory } from '../protocol/ProtocolHistory.tsx';
import { SchoolSheet } from '../protocol/SchoolSheet.tsx';
import { ValueGroup } from '../protocol/ValueGroup.tsx';
import { ValueSheet } from '../protocol/ValueSheet.tsx';
import { VetSheet } from '../protocol/VetSheet.tsx';
import { Page } from './Page.tsx';
import '../protocol/protocol.css';

type Open =
  | { readonly is: 'value'; readonly key: ValueRow['key'] }
  | { readonly is: 'school'; readonly id: SchoolRow['id'] }
  | { readonly is: 'vet' };

/** The numbers that everything is worked out with, each with its reason, to be changed. */
export function ProtocolScreen({ begin }: { readonly begin?: 'vet' | undefined }) {
  const view = useView('protocol', null);
  const [open, setOpen] = useState<Open | undefined>(begin && { is: begin });
  if (!view) return <Page title="Protocol" back />;
  const close = () => setOpen(undefined);
  const { groups, schools, changed, vet, history } = view;
  const row =
    open?.is === 'value'
      ? groups.flatMap(({ rows }) => rows).find(({ key }) => key === open.key)
      : undefined;
  const school = open?.is === 'school' ? schools.find(({ id }) => id === open.id) : undefined;
  return (
    <Page title="Protocol" back>
      <p class="quiet">
        The numbers tonight is worked out with. {changedWords(changed)} Each says why, and shows
        what would change before it is written.
      </p>
      <section class="stack">
        <h2>School of practice</h2>
        <p class="quiet small">
          Keepers disagree about size, age, visits and rests. Choose a side; your own numbers stay.
        </p>
        {schools.map(({ id, name, says, isChosen }) => (
          <Slab
            key={id}
            under={says}
            pressed={isChosen}
            onPress={() => setOpen({ is: 'school', id })}
          >
            {name}
          </Slab>
        ))}
      </section>
      <section class="stack">
        <h2>Your vet</h2>
        {vet && <VetLine vet={vet} />}
        <button type="button" class="pill" onClick={() => setOpen({ is: 'vet' })}>
          {vet ? 'Another vet or number' : 'Add your vet’s number'}
        </button>
      </section>
      <div>
        {groups.map((group) => (
          <ValueGroup
            key={group.title}
            group={group}
            onPick={({ key }) => setOpen({ is: 'value', key })}
          />
        ))}
      </div>
      <ProtocolHistory lines={history} />
      {row && <ValueSheet key={row.key} row={row} onClose={close} />}
      {school && <SchoolSheet key={school.id} school={school} onClose={close} />}
      {open?.is === 'vet' && <VetSheet vet={vet} onClose={close} />}
    </Page>
  );
}

function changedWords(changed: number): string {
  if (changed === 0) return 'All are the defaults.';
  return changed === 1 ? 'One is not the default.' : `${changed} are not the defaults.`;
}
