import type { ClutchView } from '../../domain/views/clutch-view.ts';
import { Sheet } from '../components/Sheet.tsx';
import { Slab, SlabLink } from '../components/Slab.tsx';
import { useModel } from '../model.ts';

/** Into which incubator the box goes. */
export function SetForm({
  view,
  onClose,
}: {
  readonly view: ClutchView;
  readonly onClose: () => void;
}) {
  const model = useModel();
  return (
    <Sheet title="Put the box into" onClose={onClose}>
      {view.incubators.map(({ id, name }) => (
        <Slab
          key={id}
          icon="heat"
          onPress={() =>
            void model.write({
              drafts: [{ type: 'eggs-set', clutch: view.id, incubator: id }],
              words: `Eggs of ${view.dam} into ${name}`,
              after: onClose,
            })
          }
        >
          {name}
        </Slab>
      ))}
      {view.incubators.length === 0 && (
        <SlabLink icon="add" href="#/hatchery">
          Add an incubator first
        </SlabLink>
      )}
    </Sheet>
  );
}
