export interface ChoiceOption<Value extends string> {
  readonly value: Value;
  readonly label: string;
}

export interface ChoiceProps<Value extends string> {
  readonly legend: string;
  readonly name: string;
  readonly options: readonly ChoiceOption<Value>[];
  readonly chosen: Value;
  readonly onChoose: (value: Value) => void;
}

/** One of a few, side by side: native radio buttons in touch-sized tiles. */
export function Choice<Value extends string>(props: ChoiceProps<Value>) {
  const { legend, name, options, chosen, onChoose } = props;
  return (
    <fieldset class="labels-choice">
      <legend>{legend}</legend>
      <div class="labels-tiles">
        {options.map(({ value, label }) => (
          <label key={value} class="labels-tile">
            <input
              type="radio"
              name={name}
              checked={value === chosen}
              onChange={() => onChoose(value)}
            />
            <span>{label}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
