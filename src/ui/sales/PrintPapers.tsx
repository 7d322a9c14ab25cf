import { useState } from 'preact/hooks';
import type { PapersView } from '../../domain/views/papers-view.ts';
import { OnPaper } from '../labels/OnPaper.tsx';
import { remember, remembered } from '../remember.ts';
import { paperPages } from './paper-pages.tsx';
import { useBuyers } from './use-buyers.ts';

const SELLER = 'papers.seller';

/** The animal's card and its hand-over sheet, to be printed in one go. */
export function PrintPapers({ view }: { readonly view: PapersView }) {
  const [seller, setSeller] = useState(remembered(SELLER) ?? '');
  const [withBuyer, setWithBuyer] = useState(false);
  const [buyers] = useBuyers(view.buyer);
  const buyer = buyers?.find(({ id }) => id === view.buyer);
  return (
    <>
      <label>
        You, as seller: name, address, licence
        <textarea
          rows={3}
          maxLength={240}
          value={seller}
          onInput={({ currentTarget }) => {
            remember(SELLER, currentTarget.value);
            setSeller(currentTarget.value);
          }}
        />
      </label>
      <p class="small quiet">
        For the head of the sheet. Kept on this device alone; left empty, there is room to write.
      </p>
      {buyer && (
        <label class="tick">
          <input
            type="checkbox"
            checked={withBuyer}
            onChange={({ currentTarget }) => setWithBuyer(currentTarget.checked)}
          />
          Print the buyer’s name on the hand-over sheet
        </label>
      )}
      <OnPaper
        pagesOn={(size) => paperPages(view, { seller, buyer: withBuyer ? buyer : undefined }, size)}
      />
      <p class="small quiet">
        Two sheets: the animal’s card, with what is on record of it, and the hand-over sheet to
        sign.
      </p>
    </>
  );
}
