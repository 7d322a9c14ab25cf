import { createStore, get, set, del } from 'idb-keyval';
import type { SavedSubject } from '../domain/state/ledger.ts';

/** The folded state as it was at a position in the log, so that a start need not wait for the log. */
export interface SavedPicture {
  /** The build that folded it: another build may fold otherwise. */
  readonly build: string;
  readonly position: number;
  readonly subjects: readonly SavedSubject[];
}

export interface PictureShelf {
  load(): Promise<SavedPicture | undefined>;
  save(picture: SavedPicture): Promise<void>;
  clear(): Promise<void>;
}

/** Losing it costs a slower start and nothing else, so it is written the fast way. */
export function createPictureShelf(databaseName: string, build: string): PictureShelf {
  const store = createStore(databaseName, 'picture');
  return {
    async load() {
      const saved = await get<SavedPicture>('saved', store);
      return saved?.build === build ? saved : undefined;
    },
    save: (picture) => set('saved', picture, store),
    clear: () => del('saved', store),
  };
}
