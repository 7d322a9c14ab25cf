import type { AnimalId } from '../../domain/core/ids.ts';
import { Sheet } from '../components/Sheet.tsx';
import { Slab } from '../components/Slab.tsx';
import { useDraft, useModel, useView } from '../model.ts';
import { useLater } from '../protocol/use-later.ts';
import { ReadingNotes } from './ReadingNotes.tsx';

/** Genes as the keeper writes them, with what is made of them while they are typed. */
export function TraitsForm({
  id,
  name,
  onClose,
}: {
  readonly id: AnimalId;
  readonly name: string;
  readonly onClose: () => void;
}) {
  const { write } = useModel();
  const stated = useView('animal', id)?.traits ?? '';
  const [typed, setTyped] = useDraft(`traits.${id}`);
  const text = typed === '' ? stated : typed;
  const reading = useView('reading', useLater(text));
  const keep = () =>
    void write({
      drafts: [{ type: 'identified', animal: id, traits: text.trim() }],
      words: `${name}: ${text.trim()}`,
      after: () => {
        setTyped('');
        onClose();
      },
    });
  return (
    <Sheet title={`Genes of ${name}`} onClose={onClose}>
      <label>
        As you write them
        <input
          value={text}
          maxLength={300}
          autocomplete="off"
          autocapitalize="off"
          onInput={({ currentTarget }) => setTyped(currentTarget.value)}
        />
      </label>
      <p class="quiet small">For example: Pastel, 100% het Clown, 66% het Pied, super Enchi.</p>
      {reading && text.trim() !== '' && (
        <>
          <p role="status">
            {reading.understood === 1
              ? '1 gene understood.'
              : `${reading.understood} genes understood.`}
          </p>
          <ReadingNotes reading={reading} />
        </>
      )}
      <Slab
        icon="check"
        kind="main"
        disabled={text.trim() === '' || text.trim() === stated}
        onPress={keep}
      >
        Write
      </Slab>
    </Sheet>
  );
}
