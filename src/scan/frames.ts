import type { Frame } from './decoder/messages.ts';

/**
 * Takes one picture of a video at the camera's own size, whatever size it is shown at.
 *
 * Shrinking to the size on screen would throw away what a small or distant label needs.
 */
export function frameTaker(video: HTMLVideoElement): () => Promise<Frame | undefined> {
  const canvas = document.createElement('canvas');
  const context = canvas.getContext('2d', { willReadFrequently: true });
  // A worker draws for itself where it can (in Safari since 16.4, from memory).
  if (typeof OffscreenCanvas === 'function') {
    return async () => (video.videoWidth > 0 ? createImageBitmap(video) : undefined);
  }
  return async () => {
    const { videoWidth: width, videoHeight: height } = video;
    if (width === 0) return undefined;
    Object.assign(canvas, { width, height });
    context?.drawImage(video, 0, 0);
    return context?.getImageData(0, 0, width, height);
  };
}

/**
 * Calls `turn` for new pictures of a video, never before the last call is done, until told to end.
 *
 * A hidden page shows no pictures; the calls go on by themselves when it is seen again.
 */
export function onFrames(video: HTMLVideoElement, turn: () => Promise<void>): () => void {
  let ended = false;
  const wait = (): void => {
    if (ended) return;
    // Firefox has it since 132 (from memory).
    if ('requestVideoFrameCallback' in HTMLVideoElement.prototype) {
      video.requestVideoFrameCallback(step);
    } else {
      requestAnimationFrame(step);
    }
  };
  const step = (): void => {
    // A picture that cannot be taken is let go: the next comes soon.
    if (!ended) turn().then(wait, wait);
  };
  wait();
  return () => {
    ended = true;
  };
}
