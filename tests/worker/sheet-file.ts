import {
  noChoices,
  type SheetChoices,
  type SheetFile,
  type SheetPreview,
} from '../../src/domain/sheet/preview.ts';
import { aDevice, openTab, settleIn, type Tab } from './make-world.ts';

/** A file as a page hands it over. */
export function sheetFile(content: string | Uint8Array, name = 'snakes.csv'): SheetFile {
  const bytes = typeof content === 'string' ? new TextEncoder().encode(content) : content;
  return {
    name,
    size: bytes.length,
    arrayBuffer: async () => new Uint8Array(bytes).buffer,
  };
}

export async function aTab(): Promise<Tab> {
  const tab = await openTab(aDevice());
  await settleIn(tab);
  return tab;
}

export const HEAD = 'Name,Sex,Tub,Hatched,Genes,Date,Weight (g),Meal,Shed,Notes';

/** Rows as keepers have them, under one heading. */
export const table = (...rows: readonly string[]) => sheetFile([HEAD, ...rows].join('\n'));

export const animal = (tab: Tab, name: string) => {
  const found = tab.picture.animals().find((each) => each.name === name);
  if (!found) throw new Error(`There is no ${name}.`);
  return found;
};

export const counts = ({ fresh, known, newAnimals, openCount, leftOutCount }: SheetPreview) => ({
  fresh,
  known,
  newAnimals,
  openCount,
  leftOutCount,
});

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
