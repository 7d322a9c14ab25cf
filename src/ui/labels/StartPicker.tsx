import { labelsOnPage, type LabelFormat } from '../../domain/labels/format.ts';

export interface StartPickerProps {
  readonly format: LabelFormat;
  readonly startAt: number;
  /** How many labels will be printed from there on. */
  readonly count: number;
  readonly onStart: (startAt: number) => void;
}

/** A small picture of the sheet: tap the first label that is still there. */
export function StartPicker({ format, startAt, count, onStart }: StartPickerProps) {
  const fate = (place: number) =>
    place < startAt ? 'used' : place < startAt + count ? 'printed' : 'free';
  return (
    <details class="labels-fold">
      <summary>{startAt === 1 ? 'A full sheet' : `Begin at label ${startAt}`}</summary>
      <fieldset class="labels-choice">
        <legend>Half-used sheet? Tap the first label that is left.</legend>
        <div class="labels-sheet" data-columns={format.columns}>
          {Array.from({ length: labelsOnPage(format) }, (_, i) => i + 1).map((place) => (
            <label key={place} class="labels-cell" data-fate={fate(place)}>
              <input
                type="radio"
                name="labels-start"
                aria-label={`Label ${place}`}
                checked={place === startAt}
                onChange={() => onStart(place)}
              />
              <span aria-hidden="true">{place}</span>
            </label>
          ))}
        </div>
      </fieldset>
    </details>
  );
}
