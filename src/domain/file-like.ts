/** As much of a browser's file as reading one needs. */
export interface FileLike {
  readonly size: number;
  slice(start: number, end: number): FileLike;
  text(): Promise<string>;
}
