import type { ClutchView } from '../../domain/views/clutch-view.ts';
import { Sheet } from '../components/Sheet.tsx';
import { Slab } from '../components/Slab.tsx';
import { useModel } from '../model.ts';
import { CallVet } from '../screens/CallVet.tsx';

const answers = [
  ['none', 'None, she is empty'],
  ['unsure', 'Not sure'],
  ['some', 'Yes, some are left'],
] as const;

/** Whether eggs are left in her: from here the clock of the vet runs. */
export function FeltForm({
  view,
  onClose,
}: {
  readonly view: ClutchView;
  readonly onClose: () => void;
}) {
  const model = useModel();
  const { damId } = view;
  if (damId === undefined) return null;
  return (
    <Sheet title={`Eggs left in ${view.dam}?`} onClose={onClose}>
      {answers.map(([left, words]) => (
        <Slab
          key={left}
          onPress={() =>
            void model.write({
              drafts: [{ type: 'eggs-felt', animal: damId, left }],
              words: `Eggs left in ${view.dam}: ${left}`,
              after: onClose,
            })
          }
        >
          {words}
        </Slab>
      ))}
      <p class="note note-warn small">
        Laying that has stopped with eggs inside is best treated within 48 hours. Straining, a
        prolapse or limpness: now. <CallVet />
      </p>
    </Sheet>
  );
}
