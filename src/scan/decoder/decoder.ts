import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader';
import wasmUrl from 'zxing-wasm/reader/zxing_reader.wasm?url';
import { attemptAfter } from './attempts.ts';
import type { Answer, Frame, Question } from './messages.ts';
import { sharpen } from './sharpen.ts';

// Answers one picture at a time, away from the page, so that looking never holds up a tap.

const answer = (message: Answer): void => postMessage(message);

const canvas = new OffscreenCanvas(1, 1);
const context = canvas.getContext('2d', { willReadFrequently: true });

function pixelsOf(frame: Frame): ImageData | undefined {
  if (frame instanceof ImageData) return frame;
  const { width, height } = frame;
  if (canvas.width !== width || canvas.height !== height) Object.assign(canvas, { width, height });
  context?.drawImage(frame, 0, 0);
  frame.close();
  return context?.getImageData(0, 0, width, height);
}

async function read({ frame, misses }: Question): Promise<readonly string[]> {
  const pixels = pixelsOf(frame);
  if (!pixels) return [];
  const { sharpen: edges, closeScratches = false } = attemptAfter(misses);
  if (edges) sharpen(pixels, edges.reach, edges.strength);
  const found = await readBarcodes(pixels, {
    formats: ['QRCode'],
    tryHarder: true,
    // The two do not get on: https://github.com/zxing-cpp/zxing-cpp/issues/951
    tryInvert: !closeScratches,
    tryDenoise: closeScratches,
    tryDownscale: true,
    maxNumberOfSymbols: 4,
  });
  return found.filter(({ isValid }) => isValid).map(({ text }) => text);
}

addEventListener('message', ({ data }: MessageEvent<Question>) => {
  read(data).then(
    (texts) => answer({ kind: 'read', texts }),
    () => answer({ kind: 'read', texts: [] }), // The next picture is a new chance.
  );
});

// Our own copy: left to itself the package fetches one from a public server.
prepareZXingModule({ overrides: { locateFile: () => wasmUrl }, fireImmediately: true }).then(
  () => answer({ kind: 'started', ok: context !== null }),
  () => answer({ kind: 'started', ok: false }),
);
