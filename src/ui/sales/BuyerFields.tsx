import type { BuyerId } from '../../domain/core/ids.ts';
import type { Buyer } from '../../domain/sale/buyer.ts';

/** Whom it goes to, while it is being said: one that is kept, or a new one. */
export type BuyerText =
  | { readonly kind: 'none' }
  | { readonly kind: 'kept'; readonly id: BuyerId }
  | { readonly kind: 'new'; readonly name: string; readonly contact: string };

/** Who buys: nobody named, one that is kept, or a new one. Half-typed names are not remembered. */
export function BuyerFields({
  buyers,
  buyer,
  onChange,
}: {
  readonly buyers: readonly Buyer[];
  readonly buyer: BuyerText;
  readonly onChange: (buyer: BuyerText) => void;
}) {
  const pick = (value: string) => {
    if (value === 'new') onChange({ kind: 'new', name: '', contact: '' });
    else onChange(value === '' ? { kind: 'none' } : { kind: 'kept', id: value as BuyerId });
  };
  return (
    <fieldset class="sale-fields stack">
      <legend>Buyer</legend>
      <select
        aria-label="Buyer"
        value={buyer.kind === 'kept' ? buyer.id : buyer.kind === 'new' ? 'new' : ''}
        onChange={({ currentTarget }) => pick(currentTarget.value)}
      >
        <option value="">not named</option>
        <option value="new">a new one</option>
        {buyers.map(({ id, name }) => (
          <option key={id} value={id}>
            {name}
          </option>
        ))}
      </select>
      {buyer.kind === 'new' && (
        <>
          <label>
            Name
            <input
              value={buyer.name}
              maxLength={80}
              autocomplete="off"
              onInput={({ currentTarget }) => onChange({ ...buyer, name: currentTarget.value })}
            />
          </label>
          <label>
            Contact
            <input
              value={buyer.contact}
              maxLength={200}
              autocomplete="off"
              onInput={({ currentTarget }) => onChange({ ...buyer, contact: currentTarget.value })}
            />
          </label>
          <p class="small quiet">
            Only as much as the law where you live asks for. It lies on this device, apart from your
            records, in no backup and on no label, and can be erased at any time.
          </p>
        </>
      )}
    </fieldset>
  );
}
