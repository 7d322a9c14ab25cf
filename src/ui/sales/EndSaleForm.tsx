import type { Draft } from '../../domain/events/event.ts';
import type { PapersView } from '../../domain/views/papers-view.ts';
import { Sheet } from '../components/Sheet.tsx';
import { Slab } from '../components/Slab.tsx';
import { useModel } from '../model.ts';

/** The sale came to nothing: before it was handed over, or after. */
export function EndSaleForm({
  view,
  onClose,
}: {
  readonly view: PapersView;
  readonly onClose: () => void;
}) {
  const model = useModel();
  const { id: animal, name } = view;
  const write = (drafts: readonly Draft[], words: string) =>
    void model.write({ drafts, words, after: onClose });
  const brought: readonly Draft[] = [
    { type: 'sale-ended', animal, why: 'brought back' },
    ...(view.isGone ? [{ type: 'came-back', animal } as const] : []),
  ];
  if (!view.isGone && !view.isBack) {
    return (
      <Sheet title={`Sale of ${name}`} onClose={onClose}>
        <Slab
          kind="main"
          onPress={() =>
            write(
              [{ type: 'sale-ended', animal, why: 'fell through' }],
              `${name}: sale fell through`,
            )
          }
        >
          It fell through
        </Slab>
        <p class="small quiet">It is for sale again, if it was before. Its records stay.</p>
      </Sheet>
    );
  }
  return (
    <Sheet title={`${name} brought back`} onClose={onClose}>
      <p class="note note-warn">
        Where it has been you do not know: keep it apart like a new arrival, and look it over for
        mites and breathing.
      </p>
      <Slab
        icon="quarantine"
        kind="main"
        onPress={() =>
          write([...brought, { type: 'quarantine-started', animal }], `${name} back, in quarantine`)
        }
      >
        Back, and into quarantine
      </Slab>
      <Slab icon="undo" onPress={() => write(brought, `${name} back`)}>
        Back, without quarantine
      </Slab>
    </Sheet>
  );
}
