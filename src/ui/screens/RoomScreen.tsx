import { useState } from 'preact/hooks';
import type { RoomId } from '../../domain/core/ids.ts';
import type { RoomAsk } from '../../domain/views/room-view.ts';
import { AskNote } from '../components/AskNote.tsx';
import { Slab, SlabLink } from '../components/Slab.tsx';
import { useView } from '../model.ts';
import { ImportForm } from '../room/ImportForm.tsx';
import { ProgrammeForm } from '../room/ProgrammeForm.tsx';
import { ReadForm } from '../room/ReadForm.tsx';
import { roomPlaces } from '../room/room-places.ts';
import { RoomNow } from '../room/RoomNow.tsx';
import { RoomSpan } from '../room/RoomSpan.tsx';
import { UnitSwitch } from '../room/UnitSwitch.tsx';
import '../room/room.css';
import { goInstead } from '../route.ts';
import { History } from './History.tsx';
import { Page } from './Page.tsx';

type Form = 'read' | 'programme' | 'sensor';

const formOf = (text: string | undefined): Form | undefined =>
  text === 'read' || text === 'programme' || text === 'sensor' ? text : undefined;

/** A room's air: the last readings large, then what they say over time. `form` is open at first. */
export function RoomScreen({ id, form }: { readonly id: RoomId; readonly form?: string }) {
  const [{ days, back }, setSpan] = useState({ days: 7, back: 0 });
  const view = useView('room', `${id}/${days}/${back}` satisfies RoomAsk);
  const [kept, setKept] = useState(view);
  // While another span is worked out, the last one stays: the screen must not jump.
  if (view && view !== kept) setKept(view);
  const shown = view ?? kept;
  if (!shown) return <Page title="Room" back />;
  const open = formOf(form);
  const show = (next: Form | undefined) =>
    goInstead(next === undefined ? `/room/${id}` : `/room/${id}/${next}`);
  const close = () => show(undefined);
  return (
    <Page title={shown.name} back>
      {shown.alarms.map((alarm) => (
        <AskNote key={alarm.rule} icon="alarm" words={alarm.asks} chore={alarm} isAlarm />
      ))}
      <RoomNow view={shown} />
      <Slab icon="heat" kind="main" onPress={() => show('read')}>
        Write down a reading
      </Slab>
      <div class="two">
        <Slab onPress={() => show('programme')} under={shown.programme?.name ?? 'none yet'}>
          Programme
        </Slab>
        <Slab onPress={() => show('sensor')} under="take in its CSV">
          Sensor’s file
        </Slab>
      </div>
      <RoomSpan span={shown.span} onGo={(d, b) => setSpan({ days: d, back: b })} />
      <UnitSwitch />
      {shown.code === undefined && (
        <SlabLink icon="print" href="#/labels" under="scan it, and the form for a reading opens">
          Print a label for this room
        </SlabLink>
      )}
      <History lines={shown.history} isWhole={shown.isWhole} />
      {open === 'read' && <ReadForm view={shown} onClose={close} />}
      {open === 'programme' && <ProgrammeForm view={shown} onClose={close} />}
      {open === 'sensor' && (
        <ImportForm sensors={shown.sensors} places={roomPlaces(shown)} onClose={close} />
      )}
    </Page>
  );
}
