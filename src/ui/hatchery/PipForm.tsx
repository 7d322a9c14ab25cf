import { useState } from 'preact/hooks';
import type { Draft, EventOf } from '../../domain/events/event.ts';
import type { ClutchView } from '../../domain/views/clutch-view.ts';
import { Stepper, stepped } from '../capture/Stepper.tsx';
import { Sheet } from '../components/Sheet.tsx';
import { Slab } from '../components/Slab.tsx';
import { useModel } from '../model.ts';
import { CallVet } from '../screens/CallVet.tsx';

type Seen = EventOf<'hatching-seen'>['seen'];

const found: readonly (readonly [Exclude<Seen, 'nothing yet'>, string])[] = [
  ['pip', 'Pipped'],
  ['cut', 'Cut'],
  ['out', 'Out'],
];

const MOST = 20;

/** A look at eggs that are due. */
export function PipForm({
  view,
  onClose,
}: {
  readonly view: ClutchView;
  readonly onClose: () => void;
}) {
  const model = useModel();
  const [eggs, setEggs] = useState(1);
  const write = (seen: Seen, words: string) => {
    const last = view.lastLook;
    const draft: Draft = {
      type: 'hatching-seen',
      clutch: view.id,
      seen,
      ...(seen === 'nothing yet' ? {} : { eggs }),
      ...(seen === 'pip' && last ? { precision: 'between', notBefore: last } : {}),
    };
    void model.write({ drafts: [draft], words, after: onClose });
  };
  return (
    <Sheet title="Look for pips" onClose={onClose}>
      <Slab icon="look" kind="main" onPress={() => write('nothing yet', 'No pip yet')}>
        Nothing new
      </Slab>
      <Stepper
        label="How many new"
        count={eggs}
        most={MOST}
        onStep={(step) => setEggs((before) => Math.max(1, stepped(before, step, MOST) ?? 1))}
      />
      <div class="two">
        {found.map(([seen, words]) => (
          <Slab key={seen} icon="eggs" onPress={() => write(seen, `${words}: ${eggs}`)}>
            {words}
          </Slab>
        ))}
      </div>
      <p class="note note-warn small">
        Opening eggs is disputed: early, it risks yolk and vessels. If some have pipped and others
        do not follow within two days, ask someone experienced or a reptile vet. <CallVet />
      </p>
    </Sheet>
  );
}
