import type { SheetPreview } from '../../domain/sheet/preview.ts';
import { count } from './count-words.ts';

/** What the file was found to be, and what had to be decided to read it. */
export function FileFacts({
  name,
  preview,
  leaveMerged,
  onSheet,
  onMerged,
}: {
  readonly name: string;
  readonly preview: SheetPreview;
  readonly leaveMerged: boolean;
  readonly onSheet: (index: number) => void;
  readonly onMerged: (leave: boolean) => void;
}) {
  const { kind, sheets, sheet, merged, formulas, formulasWithout, rows, headingLine } = preview;
  return (
    <section class="note stack" aria-label="The file">
      <p>
        <strong>{name}</strong>: {kind}. {count(rows, 'row', 'rows')}
        {headingLine === undefined ? ', no headings found' : `, headings on line ${headingLine}`}.
      </p>
      {sheets.length > 1 && (
        <div class="chips" role="group" aria-label="Sheet">
          {sheets.map((each, index) => (
            <button
              type="button"
              key={index}
              class="pill"
              aria-pressed={index === sheet}
              onClick={() => onSheet(index)}
            >
              {each.name} ({each.rows.toLocaleString('en')})
            </button>
          ))}
        </div>
      )}
      {formulas > 0 && (
        <p class="small">
          {count(formulas, 'cell is a formula', 'cells are formulas')}: the result that was saved
          with the file is taken
          {formulasWithout > 0 &&
            `; ${formulasWithout.toLocaleString('en')} have none saved and are left empty`}
          .
        </p>
      )}
      {merged > 0 && (
        <>
          <p class="small">
            {count(merged, 'block of cells is merged', 'blocks of cells are merged')}.
          </p>
          <div class="two" role="group" aria-label="Merged cells">
            <button
              type="button"
              class="slab"
              aria-pressed={!leaveMerged}
              onClick={() => onMerged(false)}
            >
              Each row gets the words
            </button>
            <button
              type="button"
              class="slab"
              aria-pressed={leaveMerged}
              onClick={() => onMerged(true)}
            >
              Only the first row
            </button>
          </div>
        </>
      )}
    </section>
  );
}
