import type { Amendment } from '../../domain/views/amend-shed.ts';
import { useModel } from '../model.ts';

/** Says something else of a record, now that more is known; the first stays in the history. */
export function AmendButton({ amend }: { readonly amend: Amendment }) {
  const { write } = useModel();
  return (
    <button
      type="button"
      class="strike"
      onClick={() => void write({ drafts: [amend.draft], words: amend.asks })}
    >
      {amend.asks}
    </button>
  );
}
