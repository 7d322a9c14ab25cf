/** As much of a browser's file as reading one needs. */
export interface FileLike {
  readonly size: number;
  slice(start: number, end: number): FileLike;
  text(): Promise<string>;
}

/** As much of a browser's handle of a file as writing another into it needs. */
export interface FileSpot {
  createWritable(): Promise<{
    write(whole: FileLike): Promise<void>;
    close(): Promise<void>;
    /** What was there before stays. */
    abort(): Promise<void>;
  }>;
}
