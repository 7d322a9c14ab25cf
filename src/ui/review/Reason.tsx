import type { SourceId } from '../../domain/sources.ts';
import { Cite } from '../components/Cite.tsx';
import { Unfolds } from '../components/Unfolds.tsx';

/** How a figure is counted, what its band means, and where that comes from. */
export const Reason = ({
  says,
  sources,
}: {
  readonly says: readonly string[];
  readonly sources: readonly SourceId[];
}) => (
  <Unfolds summary="Why">
    {() => (
      <div class="because">
        {says.map((each) => (
          <p key={each}>{each}</p>
        ))}
        {sources.map((source) => (
          <Cite key={source} source={source} />
        ))}
      </div>
    )}
  </Unfolds>
);
