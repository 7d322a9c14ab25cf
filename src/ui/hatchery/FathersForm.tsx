import { useState } from 'preact/hooks';
import type { Draft, EventOf } from '../../domain/events/event.ts';
import type { ClutchView } from '../../domain/views/clutch-view.ts';
import { Sheet } from '../components/Sheet.tsx';
import { Slab } from '../components/Slab.tsx';
import { useModel } from '../model.ts';

type Sire = EventOf<'paternity-stated'>['sires'][number];

/** What states the fathers of a clutch, for its eggs and for the young that already have its fathers. */
export function fathersDrafts(
  { id: clutch, damId: dam, followers }: ClutchView,
  sires: readonly Sire[],
): readonly Draft[] {
  if (dam === undefined) return [];
  const males = sires.flatMap(({ male }) => (male === 'unknown' || male === 'none' ? [] : [male]));
  return [
    { type: 'paternity-stated', animal: dam, clutch, sires: [...sires] },
    ...followers.map((animal): Draft => ({
      type: 'parents-stated',
      animal,
      dam,
      sires: [...males],
    })),
  ];
}

/** Who may be the father: every male the records name, with the reasons, and what they do not show. */
export function FathersForm({
  view,
  onClose,
}: {
  readonly view: ClutchView;
  readonly onClose: () => void;
}) {
  const model = useModel();
  const offered: readonly (Sire & { readonly words: string; readonly evidence?: string })[] = [
    ...view.offers.map(({ male, name, grounds, evidence }) => ({
      male,
      grounds,
      words: name,
      evidence,
    })),
    { male: 'unknown', grounds: 'stored sperm', words: 'A male of an earlier season' },
    { male: 'unknown', grounds: 'together', words: 'A male that is not on record' },
    { male: 'none', grounds: 'DNA test', words: 'No father, by a DNA test' },
  ];
  const [picked, setPicked] = useState<ReadonlySet<number>>(
    () => new Set(view.offers.flatMap(({ isLikely }, n) => (isLikely ? [n] : []))),
  );
  const toggle = (n: number) =>
    setPicked((before) => {
      const after = new Set(before);
      if (!after.delete(n)) after.add(n);
      return after;
    });
  const save = () => {
    const sires = offered.flatMap(({ male, grounds }, n) =>
      picked.has(n) ? [{ male, grounds }] : [],
    );
    void model.write({
      drafts: fathersDrafts(view, sires),
      words: 'Possible fathers',
      after: onClose,
    });
  };
  return (
    <Sheet title="Possible fathers" onClose={onClose}>
      {offered.map(({ words, evidence }, n) => (
        <Slab key={words} pressed={picked.has(n)} onPress={() => toggle(n)} under={evidence}>
          {words}
        </Slab>
      ))}
      <Slab icon="male" kind="main" disabled={picked.size === 0} onPress={save}>
        Write
      </Slab>
    </Sheet>
  );
}
