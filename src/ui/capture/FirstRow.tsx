import type { CaptureView, Occupant } from '../../domain/views/capture-view.ts';
import { Slab } from '../components/Slab.tsx';
import { takenOut } from './drafts.ts';
import type { RowProps } from './row-props.ts';
import { seasonAct } from './SeasonRow.tsx';

/** One tap each: a pair that is together is not fed, and a meal left is settled before the next. */
export function FirstRow({ view, occupant, put }: RowProps) {
  if (view.pair) return <PairRow pair={view.pair} view={view} occupant={occupant} put={put} />;
  return occupant.left ? (
    <LeftRow left={occupant.left} occupant={occupant} put={put} />
  ) : (
    <MealRow occupant={occupant} put={put} />
  );
}

function MealRow({ occupant, put }: Omit<RowProps, 'view'>) {
  const { id: animal, name, meal, mealShort, mealWords, chores } = occupant;
  // Where her season asks and no meal is due, the tap that is wanted is not this one.
  const leads = seasonAct(occupant) === undefined || chores.some(({ act }) => act === 'feed');
  const offered = (outcome: 'ate' | 'refused') => () =>
    put({ type: 'meal-offered', animal, prey: meal, outcome }, `${name} ${outcome} ${mealShort}`);
  return (
    <>
      <Slab
        icon="feed"
        kind={leads ? 'main' : undefined}
        under={mealWords}
        onPress={offered('ate')}
      >
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
