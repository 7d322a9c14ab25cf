import { useState } from 'preact/hooks';
import type { AnimalId } from '../../domain/core/ids.ts';
import type { Draft } from '../../domain/events/event.ts';
import type { ClutchChoice } from '../../domain/views/young-view.ts';
import { Stepper, stepped } from '../capture/Stepper.tsx';
import { useFields, type Fields } from '../capture/use-fields.ts';
import { Sheet } from '../components/Sheet.tsx';
import { Slab, SlabLink } from '../components/Slab.tsx';
import { useModel, useView } from '../model.ts';
import { dateWords } from '../../domain/core/day-words.ts';
import { SirePills, type Sire } from './SirePills.tsx';

type Counted = Extract<Draft, { type: 'young-counted' }>;
type Sex = 'female' | 'male' | 'unknown';

const MOST = 30;
const USUAL_YOUNG = 6;
const MOST_ROWS = 24;

/** Hatched young that get no name of their own: how many look how. */
export function YoungForm({
  id,
  name,
  onClose,
}: {
  readonly id: AnimalId;
  readonly name: string;
  readonly onClose: () => void;
}) {
  const view = useView('young', id);
  const [picked, setPicked] = useState<string>();
  const clutch = view?.clutches.find((each) => each.clutch === picked) ?? view?.clutches[0];
  return (
    <Sheet title={`Young of ${name}`} onClose={onClose}>
      {view && !clutch && (
        <>
          <p>No clutch of hers is on record. Write down her eggs first, on the night they came.</p>
          <SlabLink icon="eggs" kind="main" href={`#/snake/${id}`}>
            Write something down
          </SlabLink>
        </>
      )}
      {view && view.clutches.length > 1 && (
        <div class="chips" role="group" aria-label="Which clutch">
          {view.clutches.map((each) => (
            <button
              type="button"
              class="pill"
              key={each.clutch}
              aria-pressed={each.clutch === clutch?.clutch}
              onClick={() => setPicked(each.clutch)}
            >
              {dateWords(each.laid)}
            </button>
          ))}
        </div>
      )}
      {clutch && <Counting key={clutch.clutch} id={id} name={name} of={clutch} onClose={onClose} />}
    </Sheet>
  );
}

/** Fields hold a count by look and sex; what was counted before is where it begins. */
const keyOf = (looks: string, sex: Sex): string => `${sex}|${looks}`;
const fieldsOf = ({ counted }: ClutchChoice): Fields =>
  Object.fromEntries(
    (counted?.counts ?? []).map(({ looks, sex = 'unknown', count }) => [
      keyOf(looks, sex),
      String(count),
    ]),
  );

function Counting({
  id,
  name,
  of,
  onClose,
}: {
  readonly id: AnimalId;
  readonly name: string;
  readonly of: ClutchChoice;
  readonly onClose: () => void;
}) {
  const { write } = useModel();
  const [typed, change, forget] = useFields(`young.${of.clutch}`);
  const [sires, setSires] = useState<readonly Sire[]>(siresAtFirst(of));
  const [isSexed, setIsSexed] = useState(false);
  const [own, setOwn] = useState('');
  const fields = { ...fieldsOf(of), ...typed };
  const males = sires.flatMap((male) =>
    male === 'unknown' ? [] : [{ kind: 'snake' as const, id: male }],
  );
  const isKnown = males.length > 0 && males.length === sires.length;
  const odds = useView('pair', {
    female: { kind: 'snake', id },
    males: isKnown ? males : [{ kind: 'words', text: '' }],
    young: USUAL_YOUNG,
    wish: '',
  });
  const likely = (odds?.looks ?? []).map(({ words }) => words);
  const written = Object.keys(fields).map((key) => key.slice(key.indexOf('|') + 1));
  const looks = [...new Set([...likely, ...written])];
  const sexes: readonly Sex[] = isSexed ? ['female', 'male'] : ['unknown'];
  const counts = Object.entries(fields).flatMap(([key, value]) => {
    const [sex = 'unknown', ...rest] = key.split('|');
    const count = Number(value ?? 0);
    if (count === 0) return [];
    const known = sex === 'female' || sex === 'male' ? { sex } : {};
    return [{ looks: rest.join('|'), count, ...known } as Counted['counts'][number]];
  });
  const all = counts.reduce((sum, { count }) => sum + count, 0);
  const said = counts.map(({ looks: as, count }) => `${count} ${as}`).join(', ');
  return (
    <>
      <p>
        {of.says}, {dateWords(of.laid)}. Count the hatched young that you do not add as snakes of
        their own: those count by themselves.
      </p>
      <SirePills met={of.met} sires={sires} onSires={setSires} />
      <div class="chips">
        <button
          type="button"
          class="pill"
          aria-pressed={isSexed}
          onClick={() => setIsSexed(!isSexed)}
        >
          By sex
        </button>
      </div>
      {looks.map((look) =>
        sexes.map((sex) => {
          const key = keyOf(look, sex);
          const count = fields[key] === undefined ? undefined : Number(fields[key]);
          return (
            <Stepper
              key={key}
              label={sex === 'unknown' ? look : `${look}, ${sex}s`}
              count={count}
              most={MOST}
              onStep={(step) =>
                change(key, (before) => {
                  const from = before ?? fields[key];
                  const next = stepped(from === undefined ? undefined : Number(from), step, MOST);
                  return String(next ?? 0);
                })
              }
            />
          );
        }),
      )}
      <form
        class="stack"
        onSubmit={(submitted) => {
          submitted.preventDefault();
          if (own.trim() === '') return;
          change(keyOf(own.trim(), isSexed ? 'female' : 'unknown'), () => '1');
          setOwn('');
        }}
      >
        <label>
          Another look
          <input
            value={own}
            maxLength={200}
            autocomplete="off"
            autocapitalize="off"
            onInput={({ currentTarget }) => setOwn(currentTarget.value)}
          />
        </label>
        <button type="submit" class="slab" disabled={own.trim() === ''}>
          Add this look
        </button>
      </form>
      <Slab
        icon="eggs"
        kind="main"
        disabled={all === 0 || sires.length === 0}
        under={said || undefined}
        onPress={() =>
          void write({
            drafts: [
              {
                type: 'young-counted',
                animal: id,
                clutch: of.clutch,
                sires: sires.map((male) => ({ male })),
                counts: counts.slice(0, MOST_ROWS),
              },
            ],
            words: `${name}: young counted, ${said}`,
            after: () => {
              forget();
              onClose();
            },
          })
        }
      >
        Write {all} young
      </Slab>
    </>
  );
}

function siresAtFirst({ counted, fathers, met }: ClutchChoice): readonly Sire[] {
  if (counted) return counted.sires.map(({ male }) => male);
  if (fathers.length > 0) return fathers;
  return met.length > 0 ? met.map(({ id }) => id) : ['unknown'];
}
