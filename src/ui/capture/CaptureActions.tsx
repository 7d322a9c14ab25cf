import type { Day } from '../../domain/core/calendar.ts';
import type { Draft } from '../../domain/events/event.ts';
import type { CaptureView, Occupant } from '../../domain/views/capture-view.ts';
import { Slab } from '../components/Slab.tsx';
import { useModel } from '../model.ts';
import type { FormName } from './form-props.ts';
import { onNight, takenOut } from './drafts.ts';

interface ActionsProps {
  readonly view: CaptureView;
  readonly occupant: Occupant;
  readonly night: Day | undefined;
  readonly onForm: (form: FormName) => void;
}

/** The big buttons. They keep their places, so that the thumb learns them; what is open stands first. */
export function CaptureActions({ view, occupant, night, onForm }: ActionsProps) {
  const { write } = useModel();
  const put: Put = (draft, words) =>
    void write({ drafts: [onNight(draft, night)], tub: view.tub, words });
  const form = (name: FormName) => () => onForm(name);

  return (
    <div class="two actions">
      <FirstRow view={view} occupant={occupant} put={put} />
      <Slab icon="weigh" onPress={form('weigh')}>
        Weight
      </Slab>
      <Slab icon="shed" onPress={form('shed')}>
        Shed
      </Slab>
      {!view.pair && (
        <Slab icon="pair" onPress={form('pair')}>
          Pair
        </Slab>
      )}
      <Slab icon="follicles" onPress={form('follicles')}>
        Follicles
      </Slab>
      <Slab icon="overnight" onPress={form('meal')}>
        Other meal
      </Slab>
      <Slab icon="more" onPress={form('more')}>
        More
      </Slab>
    </div>
  );
}

type Put = (draft: Draft, words: string) => void;

interface RowProps {
  readonly view: CaptureView;
  readonly occupant: Occupant;
  readonly put: Put;
}

/** One tap each: a pair that is together is not fed, and a meal left is settled before the next. */
function FirstRow({ view, occupant, put }: RowProps) {
  if (view.pair) return <PairRow pair={view.pair} view={view} occupant={occupant} put={put} />;
  return occupant.left ? (
    <LeftRow left={occupant.left} occupant={occupant} put={put} />
  ) : (
    <MealRow occupant={occupant} put={put} />
  );
}

function MealRow({ occupant, put }: Omit<RowProps, 'view'>) {
  const { id: animal, name, meal, mealShort, mealWords } = occupant;
  const offered = (outcome: 'ate' | 'refused') => () =>
    put({ type: 'meal-offered', animal, prey: meal, outcome }, `${name} ${outcome} ${mealShort}`);
  return (
    <>
      <Slab icon="feed" kind="main" under={mealWords} onPress={offered('ate')}>
        Ate
      </Slab>
      <Slab icon="refuse" under={mealShort} onPress={offered('refused')}>
        Refused
      </Slab>
    </>
  );
}

function LeftRow({
  left,
  occupant,
  put,
}: Omit<RowProps, 'view'> & { readonly left: NonNullable<Occupant['left']> }) {
  const { id: animal, name } = occupant;
  const settled = (outcome: 'ate' | 'refused') => () =>
    put(
      { type: 'meal-settled', animal, offer: left.offer, outcome },
      `${name}: meal left was ${outcome === 'ate' ? 'eaten' : 'not eaten'}`,
    );
  return (
    <>
      <Slab icon="check" kind="main" under={`${left.words}, left`} onPress={settled('ate')}>
        Eaten
      </Slab>
      <Slab icon="close" under={`${left.words}, left`} onPress={settled('refused')}>
        Not eaten
      </Slab>
    </>
  );
}

function PairRow({
  pair,
  view,
  put,
}: RowProps & { readonly pair: NonNullable<CaptureView['pair']> }) {
  const male = view.occupants.find(({ id }) => id === pair.male);
  const isDue = male?.chores.some(({ act }) => act === 'take-out') ?? false;
  return (
    <>
      <Slab
        icon="lock"
        kind={isDue ? undefined : 'main'}
        under="seen just now"
        onPress={() =>
          put(
            { type: 'pair-seen', male: pair.male, female: pair.female, seen: 'locked' },
            'Lock seen',
          )
        }
      >
        Lock
      </Slab>
      <Slab
        icon="out"
        kind={isDue ? 'main' : undefined}
        under={male?.name}
        onPress={() => put(takenOut(pair), `${male?.name ?? 'He'} taken out`)}
      >
        Take out
      </Slab>
    </>
  );
}
