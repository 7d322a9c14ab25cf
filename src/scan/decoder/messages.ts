/** One picture of the video, at the size the camera gave it. */
export type Frame = ImageBitmap | ImageData;

/** What the page sends: a picture, and how often in a row nothing was found. */
export interface Question {
  readonly frame: Frame;
  readonly misses: number;
}

/** What the decoder sends: first whether it could start, then one answer for each picture. */
export type Answer =
  | { readonly kind: 'started'; readonly ok: boolean }
  | { readonly kind: 'read'; readonly texts: readonly string[] };
