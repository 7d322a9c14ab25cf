import type { Answer, Frame, Question } from './decoder/messages.ts';

/** The decoder, as seen from the page. */
export interface Reader {
  /** Whether it runs here; it does not where WebAssembly or module workers are missing or forbidden. */
  readonly started: Promise<boolean>;
  /**
   * The texts in a picture, which is given away. Ask for the next only when the last is answered:
   * a reader that did not start, or is closed, never answers.
   *
   * `misses` says how many pictures in a row showed nothing: after each, it looks in another way.
   */
  read(frame: Frame, misses: number): Promise<readonly string[]>;
  close(): void;
}

/** Starts a decoder in a worker of its own. Never throws: `started` turns false instead. */
export function startReader(): Reader {
  let worker: Worker | undefined;
  let onRead: ((texts: readonly string[]) => void) | undefined;
  const started = new Promise<boolean>((resolve) => {
    try {
      worker = new Worker(new URL('./decoder/decoder.ts', import.meta.url), { type: 'module' });
    } catch {
      resolve(false);
      return;
    }
    worker.addEventListener('error', () => resolve(false));
    worker.addEventListener('message', ({ data }: MessageEvent<Answer>) => {
      if (data.kind === 'started') resolve(data.ok);
      else onRead?.(data.texts);
    });
  });
  return {
    started,
    read: (frame, misses) =>
      new Promise((resolve) => {
        onRead = resolve;
        const question: Question = { frame, misses };
        worker?.postMessage(question, 'close' in frame ? [frame] : [frame.data.buffer]);
      }),
    close: () => worker?.terminate(),
  };
}
