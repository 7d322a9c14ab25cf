import type { FeedingView } from '../../domain/views/feeding-view.ts';
import { piecesWords } from '../../domain/views/prey-words.ts';
import { Icon } from '../components/Icon.tsx';
import { useModel } from '../model.ts';

/** What the night before left open: meals in tubs to be settled, and thawed pieces that nobody took. */
export function LastNight({ view: { left, lastNight } }: { readonly view: FeedingView }) {
  const { write } = useModel();
  if (left.length === 0 && lastNight.length === 0) return null;
  return (
    <section class="stack">
      <h2>Still open</h2>
      <ul class="plain-list" aria-label="Still open">
        {left.map(({ animal, name, position, words }) => (
          <li key={animal}>
            <a class="meal-line" href={`#/snake/${animal}`}>
              <span class="plate">{position}</span>
              <span class="stop-who">
                <strong>{name}</strong>
                <span class="small quiet">{words}</span>
              </span>
              <Icon name="overnight" />
            </a>
          </li>
        ))}
      </ul>
      {lastNight.map(({ kind, size, pieces }) => {
        const words = piecesWords({ kind, size, pieces });
        return (
          <button
            type="button"
            class="pill"
            key={`${kind} ${size}`}
            onClick={() =>
              void write({
                drafts: [
                  { type: 'prey-thrown-out', kind, size, pieces, from: 'thawed', why: 'left over' },
                ],
                words: `${words} thrown out`,
              })
            }
          >
            <Icon name="close" /> Into the bin, of last night: {words}
          </button>
        );
      })}
    </section>
  );
}
