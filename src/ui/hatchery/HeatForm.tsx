import { useState } from 'preact/hooks';
import type { IncubatorView } from '../../domain/views/incubator-view.ts';
import { NumberPad } from '../components/NumberPad.tsx';
import { Sheet } from '../components/Sheet.tsx';
import { Slab } from '../components/Slab.tsx';
import { useModel } from '../model.ts';

/** A power cut or a fault, as one record for every incubator it hits, and its end. */
export function HeatForm({
  view,
  onClose,
}: {
  readonly view: IncubatorView;
  readonly onClose: () => void;
}) {
  const model = useModel();
  const [lowest, setLowest] = useState('');
  const all = [view.id, ...view.others];
  if (view.noHeat) {
    const lowestC = lowest === '' ? {} : { lowestC: Number(lowest) };
    return (
      <Sheet title="Heat is back" onClose={onClose}>
        <NumberPad
          label="Lowest"
          unit="°C"
          decimals
          before="coldest it got"
          typed={lowest}
          onType={setLowest}
          canBeDone
          doneLabel={
            lowest === '' ? 'Write, lowest not known' : `Write, ${lowest} °C at the lowest`
          }
          onDone={() =>
            void model.write({
              drafts: [{ type: 'heat-back', incubators: all, ...lowestC }],
              words: 'Heat is back',
              after: onClose,
            })
          }
        />
      </Sheet>
    );
  }
  const fail = (incubators: readonly (typeof view.id)[], words: string) =>
    void model.write({
      drafts: [{ type: 'heat-failed', incubators: [...incubators] }],
      words,
      after: onClose,
    });
  return (
    <Sheet title="No heat" onClose={onClose}>
      <p>
        Keep the boxes shut: they stay warm for hours. A short chill is usually survived; it delays
        the pip. Think of a spare source of heat. Every clutch in it keeps this on record.
      </p>
      {view.others.length > 0 && (
        <Slab icon="alarm" kind="warn" onPress={() => fail(all, 'No heat in all incubators')}>
          All incubators
        </Slab>
      )}
      <Slab icon="alarm" kind="warn" onPress={() => fail([view.id], `${view.name}: no heat`)}>
        {view.name} alone
      </Slab>
    </Sheet>
  );
}
