import { createStore, get, set } from 'idb-keyval';

/** What this device last said of an evening, so that it does not say the same again. */
export interface Told {
  /** The room night it was about. */
  readonly night: string;
  readonly words: string;
  readonly alarms: number;
}

export interface ToldNote {
  load(): Promise<Told | undefined>;
  save(told: Told): Promise<void>;
}

/** Beside the device's notes, under a key of its own: the service worker writes it, no page does. */
export function createToldNote(databaseName: string): ToldNote {
  const store = createStore(databaseName, 'notes');
  return { load: () => get<Told>('told', store), save: (told) => set('told', told, store) };
}
