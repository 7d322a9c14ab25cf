import { Fault } from '../../domain/core/fault.ts';

/** Enough to count follicles in; a tenth of what a camera gives. */
const LONGEST_PX = 1_280;
const QUALITY = 0.8;

/**
 * A picture as JPEG, its longest side 1,280 px at most, the right way up.
 *
 * Errors: throws a Fault where the file is no picture that this browser can read.
 */
export async function scaleDown(file: Blob): Promise<Uint8Array> {
  const bitmap = await createImageBitmap(file, { imageOrientation: 'from-image' }).catch(
    (cause: unknown) => {
      throw noPicture(cause);
    },
  );
  const scale = Math.min(1, LONGEST_PX / Math.max(bitmap.width, bitmap.height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(bitmap.width * scale));
  canvas.height = Math.max(1, Math.round(bitmap.height * scale));
  canvas.getContext('2d')?.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
  bitmap.close();
  const jpeg = await new Promise<Blob | null>((resolve) =>
    canvas.toBlob(resolve, 'image/jpeg', QUALITY),
  );
  if (!jpeg) throw noPicture();
  return new Uint8Array(await jpeg.arrayBuffer());
}

const noPicture = (cause?: unknown) =>
  new Fault(
    'not-a-picture',
    'That file could not be read as a picture.',
    'Take another one.',
    cause,
  );
