import { createStore, get, setMany, clear } from 'idb-keyval';
import type { SheetTaken } from '../domain/sheet/preview.ts';
import type { PhotoId } from '../domain/core/ids.ts';
import { saving } from './saving.ts';

/** What this device remembers for itself; never merged, never in a backup. */
export interface DeviceNotes {
  readonly device?: string | undefined;
  /** Names the collection, so that two are never mixed by a restore. */
  readonly collection?: string | undefined;
  /** When this device's copy began. Milliseconds since 1970, as is the next. */
  readonly begunMs?: number | undefined;
  readonly lastBackupMs?: number | undefined;
  /** The newest picture of those that a backup took away from here. */
  readonly newestSafePhoto?: PhotoId | undefined;
  readonly initials?: string | undefined;
  /** Spreadsheets that were taken in here, newest last. */
  readonly sheets?: readonly SheetTaken[] | undefined;
}

export interface NoteShelf {
  load(): Promise<DeviceNotes>;
  save(notes: DeviceNotes): Promise<void>;
  clear(): Promise<void>;
}

export function createNoteShelf(databaseName: string): NoteShelf {
  const store = createStore(databaseName, 'notes');
  return {
    load: async () => (await get<DeviceNotes>('notes', store)) ?? {},
    save: (notes) => saving('what this device remembers', () => setMany([['notes', notes]], store)),
    clear: () => clear(store),
  };
}
