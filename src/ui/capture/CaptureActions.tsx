import type { Day } from '../../domain/core/calendar.ts';
import type { Draft } from '../../domain/events/event.ts';
import type { CaptureView, Occupant } from '../../domain/views/capture-view.ts';
import { Slab } from '../components/Slab.tsx';
import { useModel } from '../model.ts';
import type { FormName } from './CaptureForm.tsx';
import { onNight, takenOut } from './drafts.ts';

interface ActionsProps {
  readonly view: CaptureView;
  readonly occupant: Occupant;
  readonly night: Day | undefined;
  readonly onForm: (form: FormName) => void;
}

/** The big buttons. They keep their places, so that the thumb learns them; what is due comes first. */
export function CaptureActions({ view, occupant, night, onForm }: ActionsProps) {
  const { write } = useModel();
  const { id: animal, name, meal, mealShort } = occupant;
  const put = (draft: Draft, words: string) =>
    void write({ drafts: [onNight(draft, night)], tub: view.tub, words });
  const offered = (outcome: 'ate' | 'refused') =>
    put({ type: 'meal-offered', animal, prey: meal, outcome }, `${name} ${outcome} ${mealShort}`);

  return (
    <div class="actions">
      <DueFirst view={view} occupant={occupant} put={put} />
      <div class="two">
        <Slab icon="feed" kind="main" under={occupant.mealWords} onPress={() => offered('ate')}>
          Ate
        </Slab>
        <Slab icon="refuse" under={mealShort} onPress={() => offered('refused')}>
          Refused
        </Slab>
        <Slab icon="weigh" onPress={() => onForm('weigh')}>
          Weight
        </Slab>
        <Slab icon="shed" onPress={() => onForm('shed')}>
          Shed
        </Slab>
        <Lock view={view} put={put} onForm={onForm} />
        <Slab icon="follicles" onPress={() => onForm('follicles')}>
          Follicles
        </Slab>
        <Slab icon="overnight" onPress={() => onForm('meal')}>
          Other meal
        </Slab>
        <Slab icon="more" onPress={() => onForm('more')}>
          More
        </Slab>
      </div>
    </div>
  );
}

type Put = (draft: Draft, words: string) => void;

/** What was left open at this tub comes before a new meal. */
function DueFirst({
  view,
  occupant,
  put,
}: {
  readonly view: CaptureView;
  readonly occupant: Occupant;
  readonly put: Put;
}) {
  const { left, id: animal, name } = occupant;
  const isOut = occupant.chores.some(({ act }) => act === 'take-out');
  return (
    <>
      {left && (
        <div class="two">
          {(['ate', 'refused'] as const).map((outcome) => (
            <Slab
              key={outcome}
              icon={outcome === 'ate' ? 'check' : 'close'}
              kind="main"
              under={`${left.words}, left overnight`}
              onPress={() =>
                put(
                  { type: 'meal-settled', animal, offer: left.offer, outcome },
                  `${name}: meal left was ${outcome === 'ate' ? 'eaten' : 'not eaten'}`,
                )
              }
            >
              {outcome === 'ate' ? 'Eaten' : 'Not eaten'}
            </Slab>
          ))}
        </div>
      )}
      {view.pair && isOut && (
        <Slab
          icon="out"
          kind="main"
          onPress={() => view.pair && put(takenOut(view.pair), `${name} taken out`)}
        >
          Take {name} out
        </Slab>
      )}
    </>
  );
}

/** One tap where a pair is together; else the way to put one in. */
function Lock({
  view,
  put,
  onForm,
}: {
  readonly view: CaptureView;
  readonly put: Put;
  readonly onForm: (form: FormName) => void;
}) {
  const { pair } = view;
  return pair ? (
    <Slab
      icon="lock"
      under="both seen together"
      onPress={() =>
        put(
          { type: 'pair-seen', male: pair.male, female: pair.female, seen: 'locked' },
          'Lock seen',
        )
      }
    >
      Lock
    </Slab>
  ) : (
    <Slab icon="pair" onPress={() => onForm('pair')}>
      Pair
    </Slab>
  );
}
