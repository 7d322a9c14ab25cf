/** Bytes that begin as a JPEG does; nobody looks at the rest. */
export function aJpeg(bytes: number): Uint8Array<ArrayBuffer> {
  const jpeg = Uint8Array.from({ length: bytes }, (_, n) => (n * 31) % 251);
  jpeg.set([0xff, 0xd8, 0xff]);
  return jpeg;
}

/** Somewhere to write to, and all that was written. */
export function collected() {
  const pieces: Uint8Array<ArrayBuffer>[] = [];
  const write = async (piece: Uint8Array): Promise<void> => {
    pieces.push(piece.slice());
  };
  return { write, whole: () => new Blob(pieces) };
}
