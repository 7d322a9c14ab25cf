import { fileURLToPath } from 'node:url';
import { chromium, type Page } from '@playwright/test';
import { LABEL_CODES, labelCode } from '../../src/domain/core/code.ts';
import { browserArgs, findBrowser } from '../browser.ts';
import { showToCamera, useCanvasCamera } from '../camera/canvas-camera.ts';
import { conditions, type Condition } from '../camera/conditions.ts';
import { cameraFrame } from '../camera/frames.ts';
import { startZXing, zbar } from '../camera/other-decoders.ts';
import type { Picture } from '../camera/picture.ts';
import { qrPrint } from '../camera/print.ts';
import { seeded } from '../camera/random.ts';
import { serveScanPage } from '../camera/scan-page.ts';
import { atLeast, atMost, median, print, type Figure, type Tell } from './figure.ts';

// What our camera path reads of labels in bad light, beside what other decoders read of the very same
// pictures when they are handed them directly.

const FRAMES_EACH = 6;
/** A keeper gives a label about this long before moving the phone. */
const PATIENCE_MS = 1500;

interface Trial {
  readonly text: string;
  readonly picture: Picture;
}

/** Half of them plain codes, half links, each with a code of its own; held almost straight. */
function trials(condition: Condition, index: number): readonly Trial[] {
  return Array.from({ length: FRAMES_EACH }, (_, n) => {
    const seed = 1000 * index + n;
    const random = seeded(seed);
    const code = labelCode(Math.floor(random() * LABEL_CODES));
    const text = n % 2 === 0 ? code : `https://example.org/app/#/${code}`;
    const { rotation = 0 } = condition.view;
    const view = {
      ...condition.view,
      rotation: rotation + 3 * (random() - 0.5),
      offset: [60 * (random() - 0.5), 40 * (random() - 0.5)],
      seed,
    } as const;
    return { text, picture: cameraFrame(qrPrint(text, { ...condition.qr, random }), view) };
  });
}

interface Outcome {
  /** From the picture's first drawing to its text, undefined when it was not read in time. */
  readonly ms: number | undefined;
  readonly zxing: boolean;
  readonly zbar: boolean;
}

async function timeToRead(page: Page, { text, picture }: Trial): Promise<number | undefined> {
  await showToCamera(page, picture);
  return page.evaluate(
    async ([wanted, withinMs]) => {
      const atMs = await window.scanPage.whenRead(wanted, withinMs);
      return atMs === undefined ? undefined : atMs - window.canvasCamera.shownAtMs;
    },
    [text, PATIENCE_MS] as const,
  );
}

/** Runs all conditions and calls `tell` for each figure as soon as it is known. About three minutes. */
export async function decodeFigures(tell: Tell): Promise<void> {
  const zxing = await startZXing();
  const served = await serveScanPage();
  const browser = await chromium.launch({ executablePath: findBrowser(), args: [...browserArgs] });
  try {
    const page = await browser.newPage();
    await useCanvasCamera(page);
    await page.goto(served.url);
    const opened = await page.evaluate(() => window.scanPage.open());
    if (!opened.ok) throw new Error(`The scanner did not open: ${JSON.stringify(opened)}`);

    const outcomes: Outcome[] = [];
    const texts = new Set<string>();
    for (const [index, condition] of conditions.entries()) {
      const row: Outcome[] = [];
      for (const trial of trials(condition, index)) {
        texts.add(trial.text);
        row.push({
          ms: await timeToRead(page, trial),
          zxing: (await zxing(trial.picture)).includes(trial.text),
          zbar: (await zbar(trial.picture)).includes(trial.text),
        });
      }
      outcomes.push(...row);
      tell(conditionFigure(condition.name, row));
    }
    const { read, violations } = await page.evaluate(() => ({
      read: window.scanPage.read.map(({ text }) => text),
      violations: window.scanPage.violations,
    }));
    for (const figure of summary(outcomes)) tell(figure);
    const wrong = read.filter((text) => !texts.has(text)).length;
    tell({ name: 'decode: wrong texts', value: wrong, unit: 'texts', ...atMost(0, wrong) });
    const broken = violations.length;
    tell({
      name: 'decode: policy violations',
      value: broken,
      unit: 'events',
      ...atMost(0, broken),
    });
  } finally {
    await browser.close();
    await served.close();
  }
}

const isRead = ({ ms }: Outcome): boolean => ms !== undefined;

function conditionFigure(name: string, row: readonly Outcome[]): Figure {
  const alone = row.filter((each) => each.zxing).length;
  return {
    name: `decode: ${name} (ZXing alone ${alone})`,
    value: row.filter(isRead).length,
    unit: `of ${row.length}`,
  };
}

function summary(outcomes: readonly Outcome[]): readonly Figure[] {
  const share = (of: readonly Outcome[]) =>
    Math.round((1000 * of.filter(isRead).length) / of.length) / 10;
  const ofZXing = share(outcomes.filter((each) => each.zxing));
  const ofEither = share(outcomes.filter((each) => each.zxing || each.zbar));
  const middle = Math.round(median(outcomes.flatMap(({ ms }) => ms ?? [])));
  return [
    { name: 'decode: frames', value: outcomes.length, unit: 'frames' },
    { name: 'decode: read', value: outcomes.filter(isRead).length, unit: 'frames' },
    {
      name: 'decode: read of what ZXing alone reads',
      value: ofZXing,
      unit: '%',
      ...atLeast(99, ofZXing),
    },
    {
      name: 'decode: read of what ZXing or ZBar reads',
      value: ofEither,
      unit: '%',
      ...atLeast(99, ofEither),
    },
    {
      name: 'decode: median from picture to text',
      value: middle,
      unit: 'ms',
      ...atMost(300, middle),
    },
  ];
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await decodeFigures(print);
