import { useRef, useState } from 'preact/hooks';
import { dateWords } from '../../domain/core/day-words.ts';
import type { Buyer } from '../../domain/sale/buyer.ts';
import type { BuyerUse } from '../../domain/views/sales-view.ts';
import { Icon } from '../components/Icon.tsx';
import { Sheet } from '../components/Sheet.tsx';
import { Slab } from '../components/Slab.tsx';
import { useModel, useView } from '../model.ts';
import { saveFile } from '../save-file.ts';
import { Page } from '../screens/Page.tsx';
import './sales.css';
import { useBuyers } from './use-buyers.ts';

/** Who bought: apart from the records, and erased in two taps. */
export function BuyersScreen() {
  const [buyers, look] = useBuyers();
  const view = useView('sales', null);
  const [erasing, setErasing] = useState<Buyer>();
  if (!buyers) return <Page title="Buyers" back />;
  return (
    <Page title="Buyers" back>
      <p class="note small">
        They lie on this device alone, apart from your records: in no backup, on no label. Keep a
        name only as long as the law where you live asks for.
      </p>
      {buyers.length === 0 && (
        <p class="quiet">None is kept. One is written down with a reservation or a sale.</p>
      )}
      <ul class="sale-list">
        {buyers.map((buyer) => (
          <li key={buyer.id} class="buyer">
            <strong>{buyer.name}</strong>
            {buyer.contact !== undefined && <span>{buyer.contact}</span>}
            <Uses uses={(view?.uses ?? []).filter((use) => use.buyer === buyer.id)} />
            <span class="small quiet">kept since {dateWords(buyer.since)}</span>
            <button type="button" class="pill" onClick={() => setErasing(buyer)}>
              <Icon name="close" /> Erase<span class="hidden-words"> {buyer.name}</span>
            </button>
          </li>
        ))}
      </ul>
      <BuyersFile count={buyers.length} onChange={look} />
      {erasing && (
        <EraseSheet
          buyer={erasing}
          onErased={() => {
            setErasing(undefined);
            void look();
          }}
          onClose={() => setErasing(undefined)}
        />
      )}
    </Page>
  );
}

const Uses = ({ uses }: { readonly uses: readonly BuyerUse[] }) => (
  <>
    {uses.map(({ animal, name, says }) => (
      <a key={`${animal} ${says}`} class="row-link" href={`#/papers/${animal}`}>
        {name}: {says}
      </a>
    ))}
    {uses.length === 0 && <span class="small">No sale on record names this buyer.</span>}
  </>
);

function EraseSheet({
  buyer,
  onErased,
  onClose,
}: {
  readonly buyer: Buyer;
  readonly onErased: () => void;
  readonly onClose: () => void;
}) {
  const { desk, failWith, say } = useModel();
  const erase = async () => {
    await desk.tell('eraseBuyer', buyer.id);
    say('Buyer erased');
    onErased();
  };
  return (
    <Sheet title={`Erase ${buyer.name}?`} onClose={onClose}>
      <p>Name and contact are deleted from this device, for good. This cannot be undone.</p>
      <p class="small">
        The sales, their prices and every number stay: they hold no name. Backups never held one. A
        file of buyers or a register with names that you saved before, and papers you printed, still
        do: delete those too, and taking such a file in again would bring the name back.
      </p>
      <Slab icon="close" kind="warn" onPress={() => void erase().catch(failWith)}>
        Erase for good
      </Slab>
    </Sheet>
  );
}

/** A copy of the buyers, because no backup holds them. */
function BuyersFile({
  count,
  onChange,
}: {
  readonly count: number;
  readonly onChange: () => Promise<void>;
}) {
  const { desk, failWith, say } = useModel();
  const input = useRef<HTMLInputElement>(null);
  const [refusal, setRefusal] = useState<string>();
  const save = async () => {
    const { fileName, text } = await desk.tell('buyersFile', null);
    if (await saveFile(fileName, text)) say(`Saved: ${fileName}`);
  };
  const takeIn = async (file: File | undefined) => {
    setRefusal(undefined);
    if (!file) return;
    const taken = await desk.tell('takeInBuyers', file);
    if (taken.ok) say(taken.value === 1 ? '1 buyer taken in' : `${taken.value} buyers taken in`);
    else setRefusal(taken.problem.message);
    if (input.current) input.current.value = '';
    await onChange();
  };
  return (
    <section class="stack">
      <h2>A copy of their own</h2>
      <p class="small quiet">
        A backup holds your records without any buyer. If you want a copy, it is this file, and
        whoever is erased later is still in it.
      </p>
      <Slab icon="safe" disabled={count === 0} onPress={() => void save().catch(failWith)}>
        Save the buyers in a file
      </Slab>
      <label>
        Take in a file of buyers
        <input
          type="file"
          accept=".json,application/json"
          ref={input}
          onChange={({ currentTarget }) => void takeIn(currentTarget.files?.[0]).catch(failWith)}
        />
      </label>
      {refusal !== undefined && (
        <p class="note note-warn" role="alert">
          {refusal}
        </p>
      )}
    </section>
  );
}
