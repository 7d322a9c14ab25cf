import { useState } from 'preact/hooks';
import { hatchDefects } from '../../domain/core/trade-words.ts';
import type { NewHatchling } from '../../domain/commands/new-hatchling.ts';
import type { ClutchView } from '../../domain/views/clutch-view.ts';
import { PhotoPick } from '../capture/PhotoPick.tsx';
import { usePhotoDraft } from '../capture/use-photo-draft.ts';
import { MassPad } from '../components/MassPad.tsx';
import { Sheet } from '../components/Sheet.tsx';
import { readMass, showMass } from '../mass-unit.ts';
import { useDraft, useModel } from '../model.ts';
import { CallVet } from '../screens/CallVet.tsx';

type Defect = (typeof hatchDefects)[number];

const sexes = [
  ['female', 'Female'],
  ['male', 'Male'],
  ['unknown', 'Not sexed'],
] as const;

/**
 * One hatchling after the other on one screen: the next name and an empty tub are there already, so
 * sex, two digits of weight and the button are all that gloves must touch.
 */
export function HatchForm({
  view,
  onClose,
}: {
  readonly view: ClutchView;
  readonly onClose: () => void;
}) {
  const model = useModel();
  const [mass, setMass] = useDraft(`hatch.${view.id}.mass`);
  const [looks, setLooks] = useDraft(`hatch.${view.id}.looks`);
  const [sex, setSex] = useState<NewHatchling['sex']>('unknown');
  const [defects, setDefects] = useState<readonly Defect[]>([]);
  const [tub, setTub] = useState<string>();
  const [isBusy, setIsBusy] = useState(false);
  const picture = usePhotoDraft(`hatch.${view.id}`);
  const chosen = view.freeTubs.find(({ id }) => id === tub) ?? view.freeTubs[0];
  const name = view.nextName;
  const weighed = readMass(mass);

  async function save(): Promise<void> {
    setIsBusy(true);
    try {
      const made = await model.desk.tell('takeInHatchling', {
        clutch: view.id,
        name,
        sex,
        ...(sex === 'unknown' ? {} : { sexedBy: 'popped' as const }),
        ...(weighed ? { massG: weighed.massG } : {}),
        ...(looks.trim() === '' ? {} : { traits: looks.trim() }),
        defects: [...defects],
        ...(chosen ? { tub: chosen.id } : {}),
        ...(picture.kept ? { picture: picture.kept } : {}),
      });
      if (!made.ok) {
        model.fail(made.problem.message, 'Nothing was written.');
        return;
      }
      const words = [
        name,
        sex === 'unknown' ? 'not sexed' : sex,
        ...(weighed ? [showMass(weighed.massG)] : []),
      ];
      model.said(words.join(', '), made.value.ids);
      setMass('');
      setLooks('');
      setSex('unknown');
      setDefects([]);
      setTub(undefined);
      picture.forget();
    } catch (error) {
      model.failWith(error);
    } finally {
      setIsBusy(false);
    }
  }

  return (
    <Sheet title={`Hatchling ${name}`} onClose={onClose}>
      <div class="room-fields" role="group" aria-label="Sex, by popping">
        {sexes.map(([each, words]) => (
          <button
            type="button"
            class="pill"
            key={each}
            aria-pressed={sex === each}
            onClick={() => setSex(each)}
          >
            {words}
          </button>
        ))}
      </div>
      <MassPad
        label="Mass"
        typed={mass}
        onType={setMass}
        canBeDone={!isBusy}
        doneLabel={`Write ${name}${chosen ? `, into ${chosen.position}` : ', no empty tub'}`}
        onDone={() => void save()}
      />
      <details>
        <summary>Looks, picture, tub and defects</summary>
        <label class="field">
          How it looks
          <input
            value={looks}
            maxLength={300}
            onInput={({ currentTarget }) => setLooks(currentTarget.value)}
          />
        </label>
        <PhotoPick picture={picture} />
        <label class="field">
          Tub
          <select
            value={chosen?.id ?? ''}
            onChange={({ currentTarget }) => setTub(currentTarget.value)}
          >
            {view.freeTubs.map(({ id, position }) => (
              <option key={id} value={id}>
                {position}
              </option>
            ))}
          </select>
        </label>
        <div class="room-fields" role="group" aria-label="Defects">
          {hatchDefects.map((defect) => (
            <button
              type="button"
              class="pill"
              key={defect}
              aria-pressed={defects.includes(defect)}
              onClick={() =>
                setDefects((before) =>
                  before.includes(defect)
                    ? before.filter((each) => each !== defect)
                    : [...before, defect],
                )
              }
            >
              {defect}
            </button>
          ))}
        </div>
        {defects.length > 0 && (
          <p class="note note-warn small">
            A belly not closed, yolk left outside or a weak young one is for a reptile vet.{' '}
            <CallVet />
          </p>
        )}
      </details>
      <p class="note small">Popping is for trained hands. Not sexed is an answer.</p>
    </Sheet>
  );
}
