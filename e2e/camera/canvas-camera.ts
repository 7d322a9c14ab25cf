import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import type { Picture } from './picture.ts';

/** A camera that the page shall believe in. */
export interface PretendCamera {
  readonly id: string;
  readonly name: string;
  readonly torch?: boolean;
}

export interface CanvasCameraOptions {
  /** The first one looks away from the keeper. One without a torch, when nothing is said. */
  readonly cameras?: readonly PretendCamera[];
  /** The name of the error that `getUserMedia` shall reject with. */
  readonly refuse?: string;
}

/** What a test can read about the camera from `window.canvasCamera`. */
export interface CanvasCameraState {
  /** When the picture now shown was first drawn, on the page's `performance.now()`. */
  shownAtMs: number;
  torch: boolean;
  /** Tracks given out and not stopped. */
  readonly running: () => number;
  readonly show: (width: number, height: number, grayBase64: string) => void;
  /** Ends the running tracks as if the camera was pulled out. */
  readonly unplug: () => void;
}

declare global {
  interface Window {
    canvasCamera: CanvasCameraState;
  }
}

/**
 * Gives the pages of a test a camera whose picture the test decides. Call it before `goto`.
 *
 * Works without any flag, and in every engine that can make a stream from a canvas.
 */
export async function useCanvasCamera(
  page: Page,
  options: CanvasCameraOptions = {},
): Promise<void> {
  const { cameras = [{ id: 'back', name: 'Back camera' }], refuse } = options;
  const script = readFileSync(new URL('./in-page-camera.js', import.meta.url), 'utf8');
  // As text: a function handed over would carry helpers of the tool that runs the test.
  await page.addInitScript({
    content: `${script}\ninstallCanvasCamera(${JSON.stringify({ cameras, refuse })});`,
  });
}

/** Holds a picture before the camera, until the next. Answers when it is drawn. */
export async function showToCamera(page: Page, { width, height, gray }: Picture): Promise<void> {
  const base64 = Buffer.from(gray).toString('base64');
  await page.evaluate(([w, h, text]) => window.canvasCamera.show(w, h, text), [
    width,
    height,
    base64,
  ] as const);
}
