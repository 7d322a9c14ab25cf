/** As much of a browser's file as reading one needs. */
export interface FileLike {
  readonly size: number;
  slice(start: number, end: number): FileLike;
  text(): Promise<string>;
}

/** As much of a browser's handle of a file as writing it piece by piece needs. */
export interface FileSpot {
  createWritable(): Promise<{
    write(piece: Uint8Array): Promise<void>;
    close(): Promise<void>;
    /** What was there before stays. */
    abort(): Promise<void>;
  }>;
}
