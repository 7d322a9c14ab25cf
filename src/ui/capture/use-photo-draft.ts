import type { AnimalId, PhotoId } from '../../domain/core/ids.ts';
import type { Draft } from '../../domain/events/event.ts';
import { useDraft, useModel } from '../model.ts';

/** A picture that is laid by, until the form it belongs to is written. */
export interface PhotoDraft {
  readonly photo: PhotoId | undefined;
  /** What its record will hold. */
  readonly kept: { readonly photo: PhotoId; readonly bytes: number } | undefined;
  /** What it adds to what is written: nothing, or its record. */
  readonly drafts: readonly Draft[];
  /** Lays another one by in its place. */
  readonly take: (file: File) => Promise<void>;
  readonly drop: () => Promise<void>;
  readonly forget: () => void;
}

/**
 * Of an animal, or of one that the form makes.
 *
 * It lies on the disk from the moment it is taken: a phone may drop the page for its camera.
 */
export function usePhotoDraft(key: string, animal?: AnimalId): PhotoDraft {
  const { desk } = useModel();
  const [draft, setDraft] = useDraft(`photo.${key}`);
  const [id, bytes] = draft.split(' ');
  const photo = id === '' || id === undefined ? undefined : (id as PhotoId);
  const kept = photo && { photo, bytes: Number(bytes) };
  const drop = async () => {
    setDraft('');
    if (photo) await desk.tell('dropPhoto', photo);
  };
  return {
    photo,
    kept,
    drafts: kept && animal ? [{ type: 'photo-kept', animal, ...kept }] : [],
    async take(file) {
      const { scaleDown } = await import('./scale-down.ts');
      const jpeg = await scaleDown(file);
      await drop();
      setDraft(`${await desk.tell('keepPhoto', jpeg)} ${jpeg.byteLength}`);
    },
    drop,
    forget: () => setDraft(''),
  };
}
