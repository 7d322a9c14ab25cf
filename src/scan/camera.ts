import { Html5Qrcode, Html5QrcodeSupportedFormats } from 'html5-qrcode';
import { capabilitiesOf, torchOf, type Torch } from './torch.ts';
import { troubleOf } from './trouble.ts';

/** A camera that is running and shown. */
export interface RunningCamera {
  readonly video: HTMLVideoElement;
  readonly track: MediaStreamTrack;
  readonly torch: Torch | undefined;
  /** Releases the camera and empties its place on the page. Never rejects. */
  readonly close: () => Promise<void>;
}

/** Whether the library that opens the camera shall also look for codes, and whom to tell. */
export type OwnDecoder = 'idle' | ((texts: readonly string[]) => void);

/** Its loop cannot be switched off. Once a day is as good, and still fits a timer's 31 bits. */
const IDLE_FPS = 1 / 86_400;
const LOOKING_FPS = 8;

/**
 * Opens a camera and shows it in a box: the remembered one, or one that looks away from the keeper
 * when that is gone.
 *
 * Errors: rejects with whatever stood in the way; `troubleOf` can read it. Nothing stays open then.
 */
export async function openCamera(
  box: HTMLElement,
  cameraId: string | undefined,
  decoder: OwnDecoder,
): Promise<RunningCamera> {
  if (cameraId === undefined) return start(box, { facingMode: { ideal: 'environment' } }, decoder);
  try {
    return await start(box, { deviceId: { exact: cameraId } }, decoder);
  } catch (error) {
    if (troubleOf(error) !== 'no-camera') throw error;
    return openCamera(box, undefined, decoder);
  }
}

async function start(
  box: HTMLElement,
  which: MediaTrackConstraints,
  decoder: OwnDecoder,
): Promise<RunningCamera> {
  // A place of its own, because the library empties the one it is given and finds it by id.
  const place = document.createElement('div');
  place.id = `camera-${crypto.randomUUID()}`;
  box.append(place);
  let opener: Html5Qrcode | undefined;
  const close = async (): Promise<void> => {
    const tracks = tracksIn(place);
    try {
      await opener?.stop();
    } catch {
      // It could not stop what had not quite started; the tracks are stopped below.
    }
    for (const track of tracks) track.stop();
    place.remove();
  };
  try {
    opener = new Html5Qrcode(place.id, {
      verbose: false,
      formatsToSupport: [Html5QrcodeSupportedFormats.QR_CODE],
    });
    const tell = decoder === 'idle' ? () => {} : decoder;
    await opener.start(
      { facingMode: 'environment' }, // Asked for, but `videoConstraints` is what counts.
      {
        fps: decoder === 'idle' ? IDLE_FPS : LOOKING_FPS,
        disableFlip: true,
        videoConstraints: { ...which, width: { ideal: 1920 }, height: { ideal: 1080 } },
      },
      (text) => tell([text]),
      () => tell([]),
    );
    return await settle(place, opener, close);
  } catch (error) {
    await close();
    throw error;
  }
}

const tracksIn = (place: HTMLElement): readonly MediaStreamTrack[] => {
  const stream = place.querySelector('video')?.srcObject;
  return stream instanceof MediaStream ? stream.getVideoTracks() : [];
};

async function settle(
  place: HTMLElement,
  opener: Html5Qrcode,
  close: () => Promise<void>,
): Promise<RunningCamera> {
  const video = place.querySelector('video');
  const [track] = tracksIn(place);
  if (!video || !track) throw new Error('The camera opened without a picture.');
  // The library writes the width of this moment in pixels: wrong once the phone is turned.
  video.style.width = '100%';
  // It calls itself started before the first picture, and cannot be stopped until then.
  await video.play();
  await focusAlways(opener);
  const torch = torchOf(opener);
  return {
    video,
    track,
    torch,
    close: async () => {
      if (torch?.on) await torch.set(false);
      await close();
    },
  };
}

async function focusAlways(opener: Html5Qrcode): Promise<void> {
  const modes: unknown = Reflect.get(capabilitiesOf(opener), 'focusMode');
  if (!Array.isArray(modes) || !modes.includes('continuous')) return;
  // Not in TypeScript's own list of constraints yet.
  const continuous: object = { focusMode: 'continuous' };
  try {
    await opener.applyVideoConstraints({ advanced: [continuous] });
  } catch {
    // A camera that will not be told focuses as it likes.
  }
}
