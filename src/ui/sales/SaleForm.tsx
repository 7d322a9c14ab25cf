import { useState } from 'preact/hooks';
import { addDays, type Day } from '../../domain/core/calendar.ts';
import type { BuyerId } from '../../domain/core/ids.ts';
import { ok, type Result } from '../../domain/core/result.ts';
import type { Draft } from '../../domain/events/event.ts';
import type { Money } from '../../domain/events/sales.ts';
import { showMoney } from '../../domain/sale/money.ts';
import type { PapersView } from '../../domain/views/papers-view.ts';
import { Sheet } from '../components/Sheet.tsx';
import { useModel } from '../model.ts';
import { BuyerFields, type BuyerText } from './BuyerFields.tsx';
import { PriceFields } from './PriceFields.tsx';
import { priceText, readPrice } from './price-text.ts';
import { useBuyers } from './use-buyers.ts';

export type SaleStep = 'put up' | 'reserve' | 'sell';

const titles = { 'put up': 'Up for sale', reserve: 'Reserve', sell: 'Sold' } as const;
const USUAL_DAYS = 14;

/** One step of a sale: its price, and from a reservation on whom it is for. */
export function SaleForm({
  view,
  step,
  onClose,
}: {
  readonly view: PapersView;
  readonly step: SaleStep;
  readonly onClose: () => void;
}) {
  const model = useModel();
  const [buyers] = useBuyers();
  const [price, setPrice] = useState(() => priceText(view.price));
  const [deposit, setDeposit] = useState(() => ({
    ...priceText(),
    ...(view.price && { currency: view.price.currency }),
  }));
  const [instead, setInstead] = useState('');
  const [until, setUntil] = useState<Day | ''>(addDays(view.night, USUAL_DAYS));
  const [buyer, setBuyer] = useState<BuyerText>(
    view.buyer === undefined ? { kind: 'none' } : { kind: 'kept', id: view.buyer },
  );
  const [refusal, setRefusal] = useState<string>();

  /** Kept first: a sale must not name somebody who was not written down. */
  async function buyerOf(): Promise<Result<BuyerId | undefined>> {
    if (step === 'put up' || buyer.kind === 'none') return ok(undefined);
    if (buyer.kind === 'kept') return ok(buyer.id);
    const kept = await model.desk.tell('keepBuyer', { name: buyer.name, contact: buyer.contact });
    // Written once, also where the sale itself is asked about and written only then.
    if (kept.ok) setBuyer({ kind: 'kept', id: kept.value });
    return kept;
  }

  async function write(): Promise<void> {
    setRefusal(undefined);
    const asked = readPrice(price);
    const paid = instead.trim() === '' ? readPrice(deposit) : ok(instead.trim());
    if (!asked.ok) return setRefusal(asked.problem.message);
    if (!paid.ok) return setRefusal(paid.problem.message);
    const named = await buyerOf();
    if (!named.ok) return setRefusal(named.problem.message);
    const draft = draftOf(step, view, {
      price: asked.value,
      deposit: paid.value,
      buyer: named.value,
      until: until === '' ? undefined : until,
    });
    await model.write({ drafts: [draft], words: wordsOf(step, view, asked.value), after: onClose });
  }

  return (
    <Sheet title={`${titles[step]}: ${view.name}`} onClose={onClose}>
      <form
        class="stack"
        onSubmit={(submitted) => {
          submitted.preventDefault();
          write().catch(model.failWith);
        }}
      >
        {view.blocks.length > 0 && (
          <p class="note note-warn small">
            Not to be sold now: {view.blocks.map(({ short }) => short).join(', ')}.
          </p>
        )}
        <PriceFields legend="Price" price={price} onChange={setPrice} />
        {step !== 'put up' && buyers && (
          <BuyerFields buyers={buyers} buyer={buyer} onChange={setBuyer} />
        )}
        {step === 'reserve' && (
          <>
            <PriceFields legend="Deposit" price={deposit} onChange={setDeposit} />
            <label>
              Or the deposit in words, without a name
              <input
                value={instead}
                maxLength={60}
                autocomplete="off"
                onInput={({ currentTarget }) => setInstead(currentTarget.value)}
              />
            </label>
            <label>
              Reserved until
              <input
                type="date"
                value={until}
                min={view.night}
                onInput={({ currentTarget }) => setUntil(currentTarget.value as Day | '')}
              />
            </label>
          </>
        )}
        {refusal !== undefined && (
          <p class="note note-warn" role="alert">
            {refusal}
          </p>
        )}
        <button type="submit" class="slab slab-main">
          Write: {titles[step].toLowerCase()}
        </button>
      </form>
    </Sheet>
  );
}

interface Said {
  readonly price: Money | undefined;
  readonly deposit: Money | string | undefined;
  readonly buyer: BuyerId | undefined;
  readonly until: Day | undefined;
}

function draftOf(step: SaleStep, { id: animal }: PapersView, said: Said): Draft {
  const { price, deposit, buyer, until } = said;
  const priced = price === undefined ? {} : { price };
  const named = buyer === undefined ? {} : { buyer };
  switch (step) {
    case 'put up':
      return { type: 'put-up-for-sale', animal, ...priced };
    case 'sell':
      return { type: 'sold', animal, ...priced, ...named };
    case 'reserve': {
      const paid = deposit === undefined ? {} : { deposit };
      const held = until === undefined ? {} : { until };
      return { type: 'reserved', animal, ...priced, ...named, ...paid, ...held };
    }
  }
}

function wordsOf(step: SaleStep, { name }: PapersView, price: Money | undefined): string {
  const amount = price === undefined ? '' : `, ${showMoney(price)}`;
  const what = { 'put up': 'up for sale', reserve: 'reserved', sell: 'sold' }[step];
  return `${name} ${what}${amount}`;
}
