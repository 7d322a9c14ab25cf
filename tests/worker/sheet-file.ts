import { noChoices, type SheetChoices, type SheetFile } from '../../src/domain/sheet/preview.ts';
import type { Tab } from './make-world.ts';

/** A file as a page hands it over. */
export function sheetFile(content: string | Uint8Array, name = 'snakes.csv'): SheetFile {
  const bytes = typeof content === 'string' ? new TextEncoder().encode(content) : content;
  return {
    name,
    size: bytes.length,
    arrayBuffer: async () => new Uint8Array(bytes).buffer,
  };
}

/** What a look at a file shows. Errors: throws where the file is refused. */
export async function lookAt(
  tab: Tab,
  file: SheetFile | undefined,
  said: Partial<SheetChoices> = {},
) {
  const looked = await tab.lookIntoSheet({ file, choices: { ...noChoices, ...said } });
  if (!looked.ok) throw new Error(looked.problem.message);
  return looked.value;
}

/** Takes in all that the last look found; answers the import's mark. */
export async function takeAllIn(tab: Tab): Promise<string> {
  for (;;) {
    const taken = await tab.takeInSheet(null);
    if (!taken.ok) throw new Error(taken.problem.message);
    if (taken.value.written === taken.value.total) return taken.value.mark;
  }
}
