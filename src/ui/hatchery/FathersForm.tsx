import { useState } from 'preact/hooks';
import type { EventOf } from '../../domain/events/event.ts';
import type { ClutchView } from '../../domain/views/clutch-view.ts';
import { Sheet } from '../components/Sheet.tsx';
import { Slab } from '../components/Slab.tsx';
import { useModel } from '../model.ts';

type Sire = EventOf<'paternity-stated'>['sires'][number];

/** Who may be the father: every male that was in with her, and what the records do not show. */
export function FathersForm({
  view,
  onClose,
}: {
  readonly view: ClutchView;
  readonly onClose: () => void;
}) {
  const model = useModel();
  const offered: readonly (Sire & { readonly words: string })[] = [
    ...view.candidates.map(({ male, name, locked }) => ({
      male,
      grounds: locked ? ('locked' as const) : ('together' as const),
      words: `${name}, ${locked ? 'seen locked' : 'was in with her'}`,
    })),
    { male: 'unknown', grounds: 'stored sperm', words: 'A male of an earlier season' },
    { male: 'unknown', grounds: 'together', words: 'A male that is not on record' },
    { male: 'none', grounds: 'DNA test', words: 'No father, by a DNA test' },
  ];
  const [picked, setPicked] = useState<ReadonlySet<number>>(
    () => new Set(view.candidates.map((_, n) => n)),
  );
  const { damId } = view;
  const toggle = (n: number) =>
    setPicked((before) => {
      const after = new Set(before);
      if (!after.delete(n)) after.add(n);
      return after;
    });
  const save = () => {
    if (damId === undefined) return;
    const sires = offered.flatMap(({ male, grounds }, n) =>
      picked.has(n) ? [{ male, grounds }] : [],
    );
    void model.write({
      drafts: [{ type: 'paternity-stated', animal: damId, clutch: view.id, sires }],
      words: 'Possible fathers',
      after: onClose,
    });
  };
  return (
    <Sheet title="Possible fathers" onClose={onClose}>
      {offered.map(({ words }, n) => (
        <Slab key={words} pressed={picked.has(n)} onPress={() => toggle(n)}>
          {words}
        </Slab>
      ))}
      <Slab icon="male" kind="main" disabled={picked.size === 0} onPress={save}>
        Write
      </Slab>
    </Sheet>
  );
}
