import { useEffect, useState } from 'preact/hooks';
import type { Commands } from '../../domain/desk.ts';
import { noChoices, type SheetChoices, type SheetPreview } from '../../domain/sheet/preview.ts';
import { inMassUnit } from '../mass-unit.ts';
import { useModel } from '../model.ts';

export type Earlier = Commands['sheetsTaken']['answer'];

/** What the app says of masses is said in the keeper's unit; what stands in the file stays as it is. */
const inOwnUnit = (preview: SheetPreview): SheetPreview => ({
  ...preview,
  asks: inMassUnit(preview.asks),
  leftOut: inMassUnit(preview.leftOut),
});

/** A file that is looked at, what the keeper said of it, and how far taking it in has come. */
export function useSheet() {
  const { desk, failWith, say } = useModel();
  const [fileName, setFileName] = useState<string>();
  const [choices, setChoices] = useState<SheetChoices>(noChoices);
  const [preview, setPreview] = useState<SheetPreview>();
  const [refusal, setRefusal] = useState<string>();
  const [isBusy, setIsBusy] = useState(false);
  const [progress, setProgress] = useState<{ readonly written: number; readonly total: number }>();
  const [earlier, setEarlier] = useState<Earlier>([]);

  /** The device may let us down at any step: it is said, and the screen can be used again. */
  async function busy(work: () => Promise<void>): Promise<void> {
    setIsBusy(true);
    setRefusal(undefined);
    try {
      await work();
    } catch (error) {
      failWith(error);
    }
    setIsBusy(false);
  }

  const listEarlier = async () => setEarlier(await desk.tell('sheetsTaken', null));
  useEffect(() => {
    listEarlier().catch(failWith);
  }, []);

  const look = (next: SheetChoices, file?: File) =>
    busy(async () => {
      setChoices(next);
      const looked = await desk.tell('lookIntoSheet', { file, choices: next });
      setPreview(looked.ok ? inOwnUnit(looked.value) : undefined);
      if (!looked.ok) setRefusal(looked.problem.message);
    });

  return {
    fileName,
    choices,
    preview,
    refusal,
    isBusy,
    progress,
    earlier,

    async pick(file: File) {
      setFileName(file.name);
      setPreview(undefined);
      await look(noChoices, file);
    },

    change: (part: Partial<SheetChoices>) => look({ ...choices, ...part }),

    takeIn: () =>
      busy(async () => {
        for (;;) {
          const taken = await desk.tell('takeInSheet', null);
          if (!taken.ok) {
            setRefusal(taken.problem.message);
            break;
          }
          const { written, total } = taken.value;
          setProgress(taken.value);
          if (written < total) continue;
          say(`${total.toLocaleString('en')} records of ${fileName ?? 'the file'} taken in`);
          setPreview(undefined);
          break;
        }
        setProgress(undefined);
        await listEarlier();
      }),

    undo: (mark: string, name: string) =>
      busy(async () => {
        setPreview(undefined);
        const undone = await desk.tell('undoSheet', mark);
        if (undone.ok) {
          say(`${name} undone: ${undone.value.toLocaleString('en')} records struck out`);
        } else setRefusal(undone.problem.message);
        await listEarlier();
      }),
  };
}

export type SheetDesk = ReturnType<typeof useSheet>;
