import type { AnimalId, PhotoId } from './core/ids.ts';
import type { FileLike } from './file-like.ts';

/** What pictures take on this device. */
export interface PhotoRoom {
  readonly count: number;
  readonly bytes: number;
  /** Made since the last backup with pictures, by whom they show: they lie here and nowhere else. */
  readonly onlyHere: number;
  readonly shows: readonly {
    readonly animal: AnimalId;
    readonly name: string;
    readonly count: number;
  }[];
}

/** A backup with pictures. */
export interface PhotoBackupMade {
  readonly pictures: number;
  readonly newest?: PhotoId | undefined;
  /** Absent where it was written into the keeper's own file. */
  readonly file?: FileLike | undefined;
}
