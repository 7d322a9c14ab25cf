import { hasRoomForLink } from '../../domain/labels/choose-qr.ts';
import type { LabelFormat } from '../../domain/labels/format.ts';
import type { LabelSubject } from '../../domain/labels/subject.ts';
import { Choice } from './Choice.tsx';

export interface CodeHoldsProps {
  readonly holdsLink: boolean;
  readonly linkBase: string;
  readonly format: LabelFormat;
  /** Any label of those to be printed: their codes are all equally long. */
  readonly example: LabelSubject | undefined;
  readonly onChoose: (holdsLink: boolean) => void;
}

/** What the QR codes say, and what that is good for. */
export function CodeHolds({ holdsLink, linkBase, format, example, onChoose }: CodeHoldsProps) {
  const tooSmall = holdsLink && example && !hasRoomForLink(example, format, linkBase);
  return (
    <>
      <Choice
        legend="The QR code holds"
        name="labels-holds"
        options={[
          { value: 'code', label: 'Code only' },
          { value: 'link', label: 'A link' },
        ]}
        chosen={holdsLink ? 'link' : 'code'}
        onChoose={(holds) => onChoose(holds === 'link')}
      />
      <output class="labels-hint" data-warn={tooSmall ? '' : undefined}>
        {tooSmall
          ? 'These labels are too small for a link, so they get the code only.'
          : holdsLink
            ? 'Opens Nightdrop from any camera app. Its squares are smaller, so scan from nearer.'
            : 'Large squares that scan from furthest away, with the scanner in Nightdrop.'}
      </output>
    </>
  );
}
