import type { ClutchView } from '../../domain/views/clutch-view.ts';
import { Sheet } from '../components/Sheet.tsx';
import { Slab } from '../components/Slab.tsx';
import { useModel } from '../model.ts';

const ends = [
  ['all out', 'All that will are out'],
  ['none left alive', 'None is left alive'],
  ['given away', 'The eggs are given away'],
] as const;

/** Nothing more is asked about these eggs afterwards. */
export function EndForm({
  view,
  onClose,
}: {
  readonly view: ClutchView;
  readonly onClose: () => void;
}) {
  const model = useModel();
  return (
    <Sheet title="Close the clutch" onClose={onClose}>
      {ends.map(([why, words]) => (
        <Slab
          key={why}
          onPress={() =>
            void model.write({
              drafts: [{ type: 'clutch-closed', clutch: view.id, why }],
              words: `Eggs of ${view.dam}: ${why}`,
              after: onClose,
            })
          }
        >
          {words}
        </Slab>
      ))}
    </Sheet>
  );
}
