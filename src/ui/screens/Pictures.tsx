import { useEffect, useState } from 'preact/hooks';
import type { FileSpot } from '../../domain/file-like.ts';
import type { PhotoBackupMade, PhotoRoom } from '../../domain/photo-room.ts';
import { Slab } from '../components/Slab.tsx';
import { Unfolds } from '../components/Unfolds.tsx';
import { useModel } from '../model.ts';
import { saveFile } from '../save-file.ts';

const MB = 1_000_000;

/** @example megabytes(41_234_000) //=> '41.2 MB' */
export const megabytes = (bytes: number): string => `${Math.max(0.1, bytes / MB).toFixed(1)} MB`;

export const pictureWords = (count: number): string =>
  count === 1 ? '1 picture' : `${count.toLocaleString('en')} pictures`;

/** What pictures take here, which lie nowhere else, and a backup that holds them. */
export function Pictures() {
  const { desk } = useModel();
  const [room, setRoom] = useState<PhotoRoom>();
  const look = () => desk.tell('photoRoom', null).then(setRoom, () => undefined);
  useEffect(() => void look(), []);
  if (!room || room.count === 0) return null;
  return (
    <section class="stack">
      <h2>Pictures</h2>
      <p>
        {pictureWords(room.count)} on this phone, {megabytes(room.bytes)}. Back up now leaves them
        here.
      </p>
      {room.onlyHere === 0 ? (
        <p class="quiet">All of them were in your last backup with pictures.</p>
      ) : (
        <OnlyHere room={room} />
      )}
      <BackUpPictures onDone={() => void look()} />
    </section>
  );
}

const OnlyHere = ({ room: { onlyHere, shows } }: { readonly room: PhotoRoom }) => (
  <div class="note note-warn">
    <p>
      {pictureWords(onlyHere)} {onlyHere === 1 ? 'is' : 'are'} only on this phone: in no backup made
      here yet.
    </p>
    {shows.length > 0 && (
      <Unfolds summary="Which">
        {() => (
          <ul>
            {shows.map(({ animal, name, count }) => (
              <li key={animal}>
                <a class="row-link" href={`#/animal/${animal}`}>
                  {name}: {pictureWords(count)}
                </a>
              </li>
            ))}
          </ul>
        )}
      </Unfolds>
    )}
  </div>
);

type Picker = (options: { readonly suggestedName: string }) => Promise<FileSpot>;

/** Absent on phones and outside Chromium; then the browser keeps the file until it is saved. */
const picker = (): Picker | undefined =>
  (window as { readonly showSaveFilePicker?: Picker }).showSaveFilePicker?.bind(window);

function BackUpPictures({ onDone }: { readonly onDone: () => void }) {
  const { desk, failWith, fail, say } = useModel();
  const [isBusy, setIsBusy] = useState(false);

  const write = async () => {
    const fileName = `${new Date().toLocaleDateString('sv')}.nightdrop.zip`;
    const pick = picker();
    const spot = pick ? await pick({ suggestedName: fileName }) : null;
    setIsBusy(true);
    const made = await desk.tell('backUpWithPhotos', spot);
    if (!(await isSaved(made, fileName))) {
      fail('The backup was not saved.', 'Press Back up with pictures again.');
      return;
    }
    await desk.tell('backedUp', made.newest ? { newestSafePhoto: made.newest } : {});
    say(`Backed up, with ${pictureWords(made.pictures)}`);
    onDone();
  };

  const backUp = async () => {
    try {
      await write();
    } catch (error) {
      // Turned away in the window that asks for a place: nothing was begun.
      if (!(error instanceof DOMException && error.name === 'AbortError')) failWith(error);
    }
    setIsBusy(false);
  };

  return (
    <>
      <Slab icon="safe" disabled={isBusy} onPress={() => void backUp()}>
        Back up with pictures
      </Slab>
      {isBusy && <p role="status">Writing records and pictures…</p>}
    </>
  );
}

/** What was written into the keeper’s own file lies there already. */
const isSaved = async ({ file }: PhotoBackupMade, name: string): Promise<boolean> =>
  file ? saveFile(name, file as unknown as Blob, 'application/zip') : true;
