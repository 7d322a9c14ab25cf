import { useState } from 'preact/hooks';
import type { IncubatorId } from '../../domain/core/ids.ts';
import type { IncubatorSpanAsk } from '../../domain/views/incubator-span.ts';
import type { SeriesView } from '../../domain/views/room-span.ts';
import { useView } from '../model.ts';
import { RoomSpan } from '../room/RoomSpan.tsx';
import { UnitSwitch } from '../room/UnitSwitch.tsx';
import { WarmthTable } from './WarmthTable.tsx';

const bandWords = ({ spot }: SeriesView): string =>
  ` The inner band is the limits of eggs, the outer one where an alarm begins.${spot === 'air' ? ' Air may stand a little off what the eggs feel.' : ''}`;

/** What an incubator was like: curve, figures and table, between the eggs and of its air. */
export function IncubatorSpan({ id }: { readonly id: IncubatorId }) {
  const [{ days, back }, setSpan] = useState({ days: 7, back: 0 });
  const view = useView('incubatorSpan', `${id}/${days}/${back}` satisfies IncubatorSpanAsk);
  const [kept, setKept] = useState(view);
  // While another span is worked out, the last one stays: the screen must not jump.
  if (view && view !== kept) setKept(view);
  const shown = view ?? kept;
  if (!shown) return null;
  return (
    <>
      <RoomSpan
        span={shown}
        onGo={(d, b) => setSpan({ days: d, back: b })}
        bandWords={bandWords}
        Table={WarmthTable}
      />
      <UnitSwitch />
    </>
  );
}
