import { useState } from 'preact/hooks';
import { daysBetween, type Day } from '../../domain/core/calendar.ts';
import { Sheet } from '../components/Sheet.tsx';
import { Slab } from '../components/Slab.tsx';
import type { FormProps } from './form-props.ts';
import { lastLooks } from './last-looks.ts';
import { LastLookPicker } from './LastLookPicker.tsx';
import { PhotoPick } from './PhotoPick.tsx';
import { usePhotoDraft } from './use-photo-draft.ts';

/** The swelling shows for a day or two: an older look than this adds nothing. */
const LOOK_COUNTS_DAYS = 7;

const ways = [
  { sure: 'seen at peak', words: 'Seen at its peak', under: 'hard and round, right now' },
  { sure: 'seen late', words: 'Seen late', under: 'going down again, or already down' },
  { sure: 'inferred', words: 'Worked out', under: 'from a scan, a shed or how she behaves' },
] as const;

/** How sure an ovulation is: all later dates are counted from it, as wide as it is known. */
export function OvulationForm({ view, occupant, night, put, onClose }: FormProps) {
  const { id: animal, name, season } = occupant;
  const looks = lastLooks(season?.noOvulation, view.night, night);
  const [since, setSince] = useState(() => {
    const [first] = looks;
    if (first === undefined || first.at !== season?.noOvulation) return undefined;
    const ago = daysBetween(first.at.slice(0, 10) as Day, night ?? view.night);
    return ago <= LOOK_COUNTS_DAYS ? first.at : undefined;
  });
  const picture = usePhotoDraft(`ovulation.${animal}`, animal);
  const write = ({ sure, words }: (typeof ways)[number]) =>
    put(
      {
        type: 'ovulated',
        animal,
        sure,
        ...(sure === 'seen late' && since !== undefined
          ? { precision: 'between', notBefore: since }
          : {}),
      },
      `ovulation, ${words.toLowerCase()}`,
      { also: picture.drafts, after: picture.forget },
    );
  return (
    <Sheet title={`Ovulation of ${name}`} onClose={onClose}>
      <p class="small quiet">
        A hard swelling in the last third, like a huge meal. It shows for a day or two.
      </p>
      <PhotoPick picture={picture} />
      <LastLookPicker
        label="Seen late: the last look without it"
        looks={looks}
        chosen={since}
        onPick={setSince}
      />
      <div class="stack">
        {ways.map((way) => (
          <Slab
            key={way.sure}
            icon="look"
            kind={way.sure === 'seen at peak' ? 'main' : undefined}
            under={way.under}
            onPress={() => write(way)}
          >
            {way.words}
          </Slab>
        ))}
      </div>
      <p class="small quiet">
        From now on the male stays out, meals are small, and the warm end is hers to choose.
      </p>
    </Sheet>
  );
}
