import type { SourceId } from '../../domain/sources.ts';
import { Cite } from './Cite.tsx';
import { Unfolds } from './Unfolds.tsx';

/** Anything asked or said by a rule. */
export interface Reasoned {
  readonly rule: string;
  readonly because: readonly string[];
  readonly says: string;
  readonly source: SourceId | undefined;
}

/** Why something is asked: the facts first, then the rule and where it comes from. */
export const Reasons = ({ chore }: { readonly chore: Reasoned }) => (
  <div class="because">
    {chore.because.map((fact) => (
      <p key={fact}>{fact}</p>
    ))}
    <p>
      Rule {chore.rule}: {chore.says}
    </p>
    <Cite source={chore.source} />
  </div>
);

/** The same behind one word. */
export const Because = ({ chore }: { readonly chore: Reasoned }) => (
  <Unfolds summary="Why">{() => <Reasons chore={chore} />}</Unfolds>
);
