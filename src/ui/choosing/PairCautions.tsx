import type { PairLine } from '../../domain/views/choose-view.ts';
import { Unfolds } from '../components/Unfolds.tsx';
import { CautionList } from './CautionList.tsx';
import { ReasonForm } from './ReasonForm.tsx';

/** What to know before these two are put together. It blocks nothing: it asks for a reason, and keeps it. */
export function PairCautions({ pair }: { readonly pair: PairLine }) {
  if (pair.cautions.length === 0) return null;
  return (
    <div class="pair-cautions">
      <CautionList cautions={pair.cautions} />
      {pair.reasoned !== undefined && <p class="small">Your reason: {pair.reasoned}</p>}
      <Unfolds summary={pair.reasoned === undefined ? 'Pair them for a reason' : 'Another reason'}>
        {() => <ReasonForm pair={pair} />}
      </Unfolds>
    </div>
  );
}
