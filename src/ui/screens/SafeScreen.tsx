import { DAY_MS } from '../../domain/core/calendar.ts';
import { useRef, useState } from 'preact/hooks';
import type { DeskStatus } from '../../domain/desk.ts';
import type { RestorePreview } from '../../domain/restore-preview.ts';
import { Icon } from '../components/Icon.tsx';
import { Slab } from '../components/Slab.tsx';
import { useModel, useView } from '../model.ts';
import { goBack } from '../route.ts';
import { saveFile } from '../save-file.ts';
import { Page } from './Page.tsx';
import { megabytes, Pictures, pictureWords } from './Pictures.tsx';

/** Where the records live, a copy of them out of this device, and one taken in. */
export function SafeScreen() {
  const status = useView('status', null);
  return (
    <Page title="Backup and restore" back>
      {status && (
        <>
          <WhereTheyLive status={status} />
          {status.collection === 'demo' ? (
            <p class="note">The demo is not backed up. Erase it to begin your own records.</p>
          ) : (
            <>
              <BackUp status={status} />
              <Pictures />
              <TakeIn />
            </>
          )}
        </>
      )}
    </Page>
  );
}

function WhereTheyLive({ status }: { readonly status: DeskStatus }) {
  const { storageKept } = useModel();
  const kept = storageKept.value;
  return (
    <div class={`note${status.inMemoryOnly || kept === false ? ' note-warn' : ''}`}>
      <p>
        {status.inMemoryOnly
          ? 'This window keeps nothing: the browser refused storage, as private windows do. Open the app in an ordinary window, or back up before you close it.'
          : kept === true
            ? 'Your records lie on this device, and the browser has promised to keep them.'
            : 'Your records lie on this device. The browser may clear them when space runs out: install the app, and back up each week.'}
      </p>
      {status.unreadable > 0 && (
        <p class="small">
          {status.unreadable} records were written by a newer version. They are kept as they are;
          update the app to see them.
        </p>
      )}
    </div>
  );
}

const lastWords = ({ lastBackupMs }: DeskStatus): string => {
  if (lastBackupMs === undefined) return 'No backup has been made on this device yet.';
  const days = Math.floor((Date.now() - lastBackupMs) / DAY_MS);
  return days === 0 ? 'Last backup: today.' : `Last backup: ${days} days ago.`;
};

function BackUp({ status }: { readonly status: DeskStatus }) {
  const { desk, failWith, fail } = useModel();
  const backUp = async () => {
    try {
      const { fileName, file } = await desk.tell('backUp', null);
      const saved = await saveFile(fileName, file as unknown as Blob);
      if (saved) await desk.tell('backedUp', {});
      else fail('The backup was not saved.', 'Press Back up again.');
    } catch (error) {
      failWith(error);
    }
  };
  return (
    <section class="stack">
      <h2>Back up</h2>
      <p class="quiet">
        {lastWords(status)} Keep the copy off this phone. <a href="#/buyers">Buyers</a> are not in
        it.
      </p>
      <Slab icon="safe" kind="main" onPress={() => void backUp()}>
        Back up now
      </Slab>
    </section>
  );
}

function TakeIn() {
  const { desk, failWith, say } = useModel();
  const input = useRef<HTMLInputElement>(null);
  const [isBusy, setIsBusy] = useState(false);
  const [preview, setPreview] = useState<RestorePreview>();
  const [refusal, setRefusal] = useState<string>();

  const look = async (file: File | undefined) => {
    setPreview(undefined);
    setRefusal(undefined);
    if (!file) return;
    setIsBusy(true);
    try {
      const looked = await desk.tell('lookInto', file);
      if (looked.ok) setPreview(looked.value);
      else setRefusal(looked.problem.message);
    } catch (error) {
      failWith(error);
    }
    setIsBusy(false);
  };

  const takeIn = async () => {
    setIsBusy(true);
    try {
      const taken = await desk.tell('takeIn', null);
      if (taken.ok) {
        say(`${taken.value.toLocaleString('en')} records taken in`);
        setPreview(undefined);
        if (input.current) input.current.value = '';
      } else {
        setRefusal(taken.problem.message);
      }
    } catch (error) {
      failWith(error);
    }
    setIsBusy(false);
  };

  return (
    <section class="stack">
      <h2>Take in a backup</h2>
      <p class="quiet">
        From this phone or a helper’s. What is new is added; nothing here is overwritten.
      </p>
      <label>
        Backup file
        <input
          type="file"
          accept=".jsonl,.zip,application/x-ndjson,application/zip"
          ref={input}
          onChange={({ currentTarget }) => void look(currentTarget.files?.[0])}
        />
      </label>
      {isBusy && <p role="status">Reading…</p>}
      {refusal !== undefined && (
        <div class="note note-warn" role="alert">
          <Icon name="alarm" /> {refusal}
        </div>
      )}
      {preview && (
        <div class="note stack">
          <p>
            Made {preview.made.slice(0, 16).replace('T', ', ')}:{' '}
            {preview.records.toLocaleString('en')} records, <strong>{preview.fresh} new</strong>,{' '}
            {preview.known} you have already.
          </p>
          {preview.pictures && (
            <p>
              {pictureWords(preview.pictures.fresh)} new
              {preview.pictures.fresh > 0 && ` (${megabytes(preview.pictures.freshBytes)})`},{' '}
              {preview.pictures.known} you have already.
            </p>
          )}
          {preview.unreadable > 0 && (
            <div class="small">
              <p>
                {preview.unreadable} are not understood by this version and are kept as they are.
              </p>
              {preview.reasons.map((reason) => (
                <p key={reason}>{reason}</p>
              ))}
            </div>
          )}
          <div class="two">
            <Slab onPress={goBack}>Leave it</Slab>
            <Slab
              kind="main"
              disabled={preview.fresh + preview.unreadable + (preview.pictures?.fresh ?? 0) === 0}
              onPress={() => void takeIn()}
            >
              Add {preview.fresh} records
              {preview.pictures && `, ${pictureWords(preview.pictures.fresh)}`}
            </Slab>
          </div>
        </div>
      )}
    </section>
  );
}
