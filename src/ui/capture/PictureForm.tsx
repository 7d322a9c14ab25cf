import { Sheet } from '../components/Sheet.tsx';
import { Slab } from '../components/Slab.tsx';
import type { FormProps } from './form-props.ts';
import { PhotoPick } from './PhotoPick.tsx';
import { usePhotoDraft } from './use-photo-draft.ts';

/** A picture by itself, as of her back against last week’s. */
export function PictureForm({ occupant, put, onClose }: FormProps) {
  const picture = usePhotoDraft(`picture.${occupant.id}`, occupant.id);
  const [draft] = picture.drafts;
  return (
    <Sheet title={`Picture of ${occupant.name}`} onClose={onClose}>
      <PhotoPick picture={picture} />
      <Slab
        icon="camera"
        kind="main"
        disabled={!draft}
        onPress={() => draft && put(draft, 'picture kept', { after: picture.forget })}
      >
        Write
      </Slab>
      <p class="small quiet">Pictures stay on this device. A backup holds the records alone.</p>
    </Sheet>
  );
}
