import type { Together } from '../../domain/views/moves-view.ts';
import { useModel } from '../model.ts';
import { nightWords } from '../night.ts';

const looks = [
  ['locked', 'Locked'],
  ['courting', 'Courting'],
  ['apart', 'Apart'],
] as const;

/** A pair that is together: what was seen, in one tap. */
export function TogetherLine({ pair }: { readonly pair: Together }) {
  const { write } = useModel();
  const { male, female, since, seen, out } = pair;
  return (
    <li class="board-row" aria-label={`${male.name} and ${female.name}`}>
      <p class="board-head">
        <span class="plate">{female.position}</span>
        <strong>
          {male.name} with {female.name}
        </strong>
      </p>
      <p class="small">
        Since {nightWords(since)}; he comes out on {nightWords(out)}.
        {seen.length > 0 && ` Seen tonight: ${seen.join(', ')}.`}
      </p>
      <div class="chips" role="group" aria-label={`Seen of ${male.name} and ${female.name}`}>
        {looks.map(([look, word]) => (
          <button
            type="button"
            class="pill"
            key={look}
            onClick={() =>
              void write({
                drafts: [{ type: 'pair-seen', male: male.id, female: female.id, seen: look }],
                tub: female.tub,
                words: `${male.name} and ${female.name}: ${look}`,
              })
            }
          >
            {word}
          </button>
        ))}
      </div>
    </li>
  );
}
