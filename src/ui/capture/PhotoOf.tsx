import { useEffect, useState } from 'preact/hooks';
import type { PhotoId } from '../../domain/core/ids.ts';
import { Sheet } from '../components/Sheet.tsx';
import { useModel } from '../model.ts';
import './photos.css';

/** A kept picture, small; a tap opens it. */
export function PhotoOf({ photo, words }: { readonly photo: PhotoId; readonly words: string }) {
  const address = useAddress(photo);
  const [isOpen, setIsOpen] = useState(false);
  if (address === 'missing') {
    return <span class="small quiet">(picture not on this device)</span>;
  }
  return (
    <>
      <button type="button" class="photo" onClick={() => setIsOpen(true)}>
        {address === undefined ? (
          <span class="hidden-words">{words}</span>
        ) : (
          <img src={address} alt={words} />
        )}
      </button>
      {isOpen && address !== undefined && (
        <Sheet title={words} onClose={() => setIsOpen(false)}>
          <img class="photo-whole" src={address} alt={words} />
        </Sheet>
      )}
    </>
  );
}

/** Where the browser finds the picture; undefined until it is read. */
function useAddress(photo: PhotoId): string | undefined {
  const { desk } = useModel();
  const [address, setAddress] = useState<string>();
  useEffect(() => {
    let made: string | undefined;
    let isOver = false;
    const missing = () => setAddress('missing');
    desk.tell('photo', photo).then((jpeg) => {
      if (isOver) return;
      if (!jpeg) {
        missing();
        return;
      }
      made = URL.createObjectURL(new Blob([new Uint8Array(jpeg)], { type: 'image/jpeg' }));
      setAddress(made);
    }, missing);
    return () => {
      isOver = true;
      if (made !== undefined) URL.revokeObjectURL(made);
    };
  }, [photo]);
  return address;
}
