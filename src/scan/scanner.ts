import { openCamera, type RunningCamera } from './camera.ts';
import { frameTaker, onFrames } from './frames.ts';
import { startReader, type Reader } from './reader.ts';
import { look, type InView } from './repeats.ts';
import type { Torch } from './torch.ts';
import { troubleBefore, troubleOf, type ScanTrouble } from './trouble.ts';

/** A camera of this device. */
export interface Camera {
  readonly id: string;
  /** As the system calls it. */
  readonly name: string;
}

/** An open camera that looks for QR codes. */
export interface Scanner {
  /** All cameras there are, the running one included. */
  readonly cameras: readonly Camera[];
  /** The running one; worth remembering for the next time. */
  readonly cameraId: string | undefined;
  /** Undefined where this camera has none. */
  readonly torch: Torch | undefined;
  /** Turns the torch off and releases the camera. May be called again. Never rejects. */
  stop(): Promise<void>;
}

export interface ScanOptions {
  /** The camera to prefer; another is taken when it is gone. */
  readonly cameraId?: string | undefined;
  /**
   * A code has come into view. The same text comes again only after it was out of view for 1.5 s.
   */
  readonly onText: (text: string) => void;
  /** The camera was taken away. The scanner has stopped; open another to go on. */
  readonly onEnded?: (() => void) | undefined;
  /** A text just dealt with and still before the camera: not told of until it was out of view. */
  readonly inView?: string | undefined;
  /** Aborting it stops the scanner, also one that is still starting. */
  readonly signal?: AbortSignal | undefined;
}

export type Opened =
  | { readonly ok: true; readonly scanner: Scanner }
  | { readonly ok: false; readonly trouble: ScanTrouble };

/**
 * Opens a camera, shows it in a visible, empty box, and tells of every QR code it sees.
 *
 * The box gets a `div` with one `video` as wide as the box. Nothing leaves the device.
 *
 * Errors: returns the trouble, with the camera released; an aborted start comes back as `failed`.
 */
export async function openScanner(box: HTMLElement, options: ScanOptions): Promise<Opened> {
  const trouble = troubleBefore(globalThis);
  if (trouble) return { ok: false, trouble };
  const reader = startReader();
  try {
    const tell = teller(options);
    const camera = await openBest(box, options, reader, tell);
    const stop = run(camera, reader, tell, options);
    const cameras = await listCameras();
    if (options.signal?.aborted) {
      await stop();
      return { ok: false, trouble: 'failed' };
    }
    const { torch, track } = camera;
    const cameraId = track.getSettings().deviceId;
    return { ok: true, scanner: { cameras, cameraId, torch, stop } };
  } catch (error) {
    reader.close();
    return { ok: false, trouble: troubleOf(error) };
  }
}

type Tell = (texts: readonly string[]) => void;

function teller({ inView: known, onText }: ScanOptions): Tell {
  let inView: InView = new Map();
  if (known !== undefined) ({ inView } = look(inView, [known], performance.now()));
  return (texts) => {
    const seen = look(inView, texts, performance.now());
    ({ inView } = seen);
    for (const text of seen.fresh) onText(text);
  };
}

/** Opens a camera for our decoder, or, where that cannot run, with its opener's own weaker one. */
async function openBest(
  box: HTMLElement,
  { cameraId }: ScanOptions,
  reader: Reader,
  tell: Tell,
): Promise<RunningCamera> {
  const camera = await openCamera(box, cameraId, 'idle');
  if (await reader.started) return camera;
  reader.close(); // From here on it answers nothing, and is sent one picture at most.
  await camera.close();
  return openCamera(box, cameraId, tell);
}

/** Devices have names only once one of them may be used, so this is asked after opening. */
async function listCameras(): Promise<readonly Camera[]> {
  const devices = await navigator.mediaDevices.enumerateDevices().catch(() => []);
  return devices
    .filter(({ kind }) => kind === 'videoinput')
    .map(({ deviceId, label }, i) => ({ id: deviceId, name: label || `Camera ${i + 1}` }));
}

function run(
  { video, track, close }: RunningCamera,
  reader: Reader,
  tell: Tell,
  { signal, onEnded }: ScanOptions,
): () => Promise<void> {
  const over = new AbortController();
  let stopped: Promise<void> | undefined;
  const takeFrame = frameTaker(video);
  let misses = 0;
  const endFrames = onFrames(video, async () => {
    const frame = await takeFrame();
    if (!frame || over.signal.aborted) return;
    const texts = await reader.read(frame, misses);
    if (over.signal.aborted) return;
    misses = texts.length > 0 ? 0 : misses + 1;
    tell(texts);
  });
  const stop = (): Promise<void> => {
    over.abort();
    endFrames();
    reader.close();
    stopped ??= close();
    return stopped;
  };
  const until = { signal: over.signal };
  // Some phones pause the video behind a locked screen and leave it so.
  const wake = () => !document.hidden && void video.play().catch(() => {});
  document.addEventListener('visibilitychange', wake, until);
  track.addEventListener('ended', () => void stop().then(onEnded), until);
  signal?.addEventListener('abort', () => void stop(), until);
  return stop;
}
