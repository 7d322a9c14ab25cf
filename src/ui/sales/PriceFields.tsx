import type { PriceText } from './price-text.ts';

/** An amount and its currency, side by side. */
export const PriceFields = ({
  legend,
  price,
  onChange,
}: {
  readonly legend: string;
  readonly price: PriceText;
  readonly onChange: (price: PriceText) => void;
}) => (
  <fieldset class="sale-fields price-fields">
    <legend>{legend}</legend>
    <label>
      Amount
      <input
        value={price.amount}
        inputMode="decimal"
        autocomplete="off"
        maxLength={14}
        onInput={({ currentTarget }) => onChange({ ...price, amount: currentTarget.value })}
      />
    </label>
    <label>
      Currency
      <input
        value={price.currency}
        placeholder="EUR"
        autocomplete="off"
        autocapitalize="characters"
        maxLength={3}
        onInput={({ currentTarget }) => onChange({ ...price, currency: currentTarget.value })}
      />
    </label>
  </fieldset>
);
