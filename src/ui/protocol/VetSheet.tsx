import type { Vet } from '../../domain/state/house.ts';
import { Sheet } from '../components/Sheet.tsx';
import { useDraft, useModel } from '../model.ts';

/** Whom to call: written down on a quiet evening, and needed on another one. */
export function VetSheet({
  vet,
  onClose,
}: {
  readonly vet: Vet | undefined;
  readonly onClose: () => void;
}) {
  const { write } = useModel();
  const [name, setName] = useDraft('vet.name');
  const [phone, setPhone] = useDraft('vet.phone');
  const isFull = name.trim() !== '' && phone.trim() !== '';
  return (
    <Sheet title="Your reptile vet" onClose={onClose}>
      {vet && (
        <p>
          Now {vet.name}, {vet.phone}.
        </p>
      )}
      <p class="quiet small">
        One that treats snakes, and a number that answers at night. It is shown wherever a sign
        belongs before a vet.
      </p>
      <form
        class="stack"
        onSubmit={(submitted) => {
          submitted.preventDefault();
          if (!isFull) return;
          void write({
            drafts: [{ type: 'vet-stated', name: name.trim(), phone: phone.trim() }],
            words: `Vet: ${name.trim()}`,
            after: () => {
              setName('');
              setPhone('');
              onClose();
            },
          });
        }}
      >
        <label>
          Name
          <input
            value={name}
            maxLength={120}
            autocomplete="off"
            onInput={({ currentTarget }) => setName(currentTarget.value)}
          />
        </label>
        <label>
          Telephone
          <input
            type="tel"
            value={phone}
            maxLength={40}
            autocomplete="off"
            onInput={({ currentTarget }) => setPhone(currentTarget.value)}
          />
        </label>
        <button type="submit" class="slab slab-main" disabled={!isFull}>
          Write
        </button>
      </form>
    </Sheet>
  );
}
