import type { BackupContents } from '../src/store/backup-file.ts';
import { backupPieces } from '../src/store/backup-pieces.ts';

/** A backup as one text. */
export const backupText = (contents: BackupContents): string =>
  Array.from(backupPieces(contents), (piece) => Buffer.from(piece).toString()).join('');
