import type { SheetPreview } from '../../domain/sheet/preview.ts';
import { Unfolds } from '../components/Unfolds.tsx';
import { useModel } from '../model.ts';
import { saveFile } from '../save-file.ts';
import { count } from './count-words.ts';

/** As many lines of numbers as one reads; all of them are in the file. */
const MOST_LINE_WORDS = 80;

/** What is left out, by reason and line, and a file of it to mend. */
export function LeftOutList({
  preview: { leftOut, leftOutCount, openCount },
}: {
  readonly preview: SheetPreview;
}) {
  const { desk, failWith } = useModel();
  if (leftOutCount + openCount === 0) return null;
  const save = async () => {
    try {
      const { fileName, text } = await desk.tell('sheetLeftOut', null);
      await saveFile(fileName, text);
    } catch (error) {
      failWith(error);
    }
  };
  return (
    <section aria-labelledby="sheet-left-out">
      <h2 id="sheet-left-out">Left out</h2>
      {leftOut.length > 0 && (
        <Unfolds summary={`${count(leftOutCount, 'cell or row', 'cells and rows')}, and why`}>
          {() => (
            <ul class="plain-list small sheet-list">
              {leftOut.map(({ why, heading, count: n, lines, example }) => (
                <li key={`${heading}/${why}`}>
                  <strong>{heading}</strong>: {example !== '' && <>“{example}” </>}
                  {why} ({n > 1 ? `${n.toLocaleString('en')} times: lines ` : 'line '}
                  {lines.length > MOST_LINE_WORDS ? `${lines.slice(0, MOST_LINE_WORDS)}…` : lines}).
                </li>
              ))}
            </ul>
          )}
        </Unfolds>
      )}
      <button type="button" class="pill" onClick={() => void save()}>
        Save what is left out as CSV
      </button>
    </section>
  );
}
