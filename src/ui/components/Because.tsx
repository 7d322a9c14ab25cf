import type { Chore } from '../../domain/views/tonight-view.ts';
import { Unfolds } from './Unfolds.tsx';

/** Why something is asked: the facts first, then the rule and where it comes from. */
export const Reasons = ({ chore }: { readonly chore: Chore }) => (
  <div class="because">
    {chore.because.map((fact) => (
      <p key={fact}>{fact}</p>
    ))}
    <p>
      Rule {chore.rule}: {chore.says}
    </p>
    <p>{chore.source}</p>
  </div>
);

/** The same behind one word. */
export const Because = ({ chore }: { readonly chore: Chore }) => (
  <Unfolds summary="Why">{() => <Reasons chore={chore} />}</Unfolds>
);
