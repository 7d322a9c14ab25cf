import { useState } from 'preact/hooks';
import { Icon } from '../components/Icon.tsx';
import { useModel } from '../model.ts';
import { PhotoOf } from './PhotoOf.tsx';
import type { PhotoDraft } from './use-photo-draft.ts';

/** Takes a picture to go with what is written, from the camera or a file. Never asked for. */
export function PhotoPick({ picture }: { readonly picture: PhotoDraft }) {
  const { failWith } = useModel();
  const [isBusy, setIsBusy] = useState(false);
  const take = async (file: File | undefined) => {
    if (!file) return;
    setIsBusy(true);
    try {
      await picture.take(file);
    } catch (error) {
      failWith(error);
    }
    setIsBusy(false);
  };
  if (picture.photo) {
    return (
      <div class="photo-pick">
        <PhotoOf photo={picture.photo} words="Picture to keep" />
        <button type="button" class="pill" onClick={() => void picture.drop().catch(failWith)}>
          Not this one
        </button>
      </div>
    );
  }
  return (
    <div class="photo-pick" aria-busy={isBusy}>
      <Pick words="Keep the picture" isCamera onPick={take} />
      <Pick words="From file" onPick={take} />
    </div>
  );
}

const Pick = ({
  words,
  isCamera = false,
  onPick,
}: {
  readonly words: string;
  readonly isCamera?: boolean;
  readonly onPick: (file: File | undefined) => Promise<void>;
}) => (
  <label class="pill">
    {isCamera && <Icon name="camera" />}
    {words}
    <input
      type="file"
      class="hidden-words"
      accept="image/*"
      capture={isCamera ? 'environment' : undefined}
      onChange={({ currentTarget }) => {
        const [file] = currentTarget.files ?? [];
        void onPick(file).then(() => {
          currentTarget.value = '';
        });
      }}
    />
  </label>
);
