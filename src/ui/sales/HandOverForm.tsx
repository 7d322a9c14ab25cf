import type { handOvers } from '../../domain/core/trade-words.ts';
import { dateWords } from '../../domain/core/day-words.ts';
import { journeyCautions } from '../../domain/views/papers-words.ts';
import type { PapersView } from '../../domain/views/papers-view.ts';
import { Cite } from '../components/Cite.tsx';
import { Sheet } from '../components/Sheet.tsx';
import { Slab } from '../components/Slab.tsx';
import { useModel } from '../model.ts';

const ways: readonly (readonly [(typeof handOvers)[number], string])[] = [
  ['collected', 'Collected here'],
  ['brought', 'Brought to the buyer'],
  ['sent', 'Sent with a carrier'],
];

/** How it goes to its buyer; from then on it is gone. */
export function HandOverForm({
  view,
  onClose,
}: {
  readonly view: PapersView;
  readonly onClose: () => void;
}) {
  const model = useModel();
  const { id: animal, name } = view;
  return (
    <Sheet title={`Hand over ${name}`} onClose={onClose}>
      {view.blocks.length > 0 && (
        <p class="note note-warn">
          Not to go now: {view.blocks.map(({ short }) => short).join(', ')}.
        </p>
      )}
      <div class="note small">
        <strong>Before a journey</strong>
        <ul class="sale-cautions">
          {journeyCautions.map((caution) => (
            <li key={caution}>{caution}</li>
          ))}
          <li>
            {view.lastFed === undefined
              ? 'No meal is on record.'
              : `It last ate on ${dateWords(view.lastFed)}.`}
          </li>
        </ul>
        <Cite source="sending" />
      </div>
      {ways.map(([how, words]) => (
        <Slab
          key={how}
          icon="out"
          onPress={() =>
            void model.write({
              drafts: [
                { type: 'handed-over', animal, how },
                { type: 'left', animal, how: 'sold' },
              ],
              words: `${name} handed over: ${how}`,
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
