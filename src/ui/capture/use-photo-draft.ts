import type { AnimalId, PhotoId } from '../../domain/core/ids.ts';
import type { Draft } from '../../domain/events/event.ts';
import { useDraft, useModel } from '../model.ts';

/** A picture that is laid by, until the form it belongs to is written. */
export interface PhotoDraft {
  readonly photo: PhotoId | undefined;
  /** What it adds to what is written: nothing, or its record. */
  readonly drafts: readonly Draft[];
  /** Lays another one by in its place. */
  readonly take: (file: File) => Promise<void>;
  readonly drop: () => Promise<void>;
  readonly forget: () => void;
}

/** It lies on the disk from the moment it is taken: a phone may drop the page for its camera. */
export function usePhotoDraft(key: string, animal: AnimalId): PhotoDraft {
  const { desk } = useModel();
  const [kept, setKept] = useDraft(`photo.${key}`);
  const [id, bytes] = kept.split(' ');
  const photo = id === '' || id === undefined ? undefined : (id as PhotoId);
  const drop = async () => {
    setKept('');
    if (photo) await desk.tell('dropPhoto', photo);
  };
  return {
    photo,
    drafts: photo ? [{ type: 'photo-kept', animal, photo, bytes: Number(bytes) }] : [],
    async take(file) {
      const { scaleDown } = await import('./scale-down.ts');
      const jpeg = await scaleDown(file);
      await drop();
      setKept(`${await desk.tell('keepPhoto', jpeg)} ${jpeg.byteLength}`);
    },
    drop,
    forget: () => setKept(''),
  };
}
