import type { RecordLine } from '../../domain/views/record-line.ts';
import { nightWords } from '../night.ts';
import { AmendButton } from './AmendButton.tsx';
import { PhotoOf } from './PhotoOf.tsx';

/** What few records have beside their words: a picture, or something to say of them later. */
export const LineExtras = ({ line }: { readonly line: RecordLine }) => (
  <>
    {line.photo && <PhotoOf photo={line.photo} words={`Picture, ${nightWords(line.night)}`} />}
    {line.amend && <AmendButton amend={line.amend} />}
  </>
);
