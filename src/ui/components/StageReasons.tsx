import type { StageInWords } from '../../domain/views/stage-in-words.ts';
import { stageRule } from '../../domain/views/stage-words.ts';
import { Cite } from './Cite.tsx';

/** What puts a snake where it stands: the facts, the rule, and where that comes from. */
export function StageReasons({ stage }: { readonly stage: StageInWords }) {
  const { says, source } = stageRule(stage, stage.isMale);
  return (
    <div class="because">
      {[...stage.because, says].map((words) => (
        <p key={words}>{words}</p>
      ))}
      <Cite source={source} />
    </div>
  );
}
