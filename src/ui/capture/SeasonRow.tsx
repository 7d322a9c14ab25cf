import type { Occupant } from '../../domain/views/capture-view.ts';
import type { Act } from '../../domain/rules/rule.ts';
import { Slab } from '../components/Slab.tsx';
import type { FormName } from './form-props.ts';
import type { Put } from './row-props.ts';

type SeasonAct = Extract<Act, 'look-eggs' | 'look-ovulation' | 'nest-box' | 'pair' | 'scan'>;

const acts: readonly Act[] = ['look-eggs', 'look-ovulation', 'nest-box', 'pair', 'scan'];

/** What her season asks for tonight. */
export const seasonAct = ({ chores }: Occupant): SeasonAct | undefined =>
  chores.find(({ act, blocked }) => blocked === undefined && acts.includes(act))?.act as
    SeasonAct | undefined;

const wholeRows = {
  'nest-box': { icon: 'nest', words: 'Nest box in' },
  pair: { icon: 'pair', words: 'Male in' },
  scan: { icon: 'follicles', words: 'Scan' },
} as const;

/** The look that found nothing is one tap; what was found has a form. */
export function SeasonRow({
  act,
  occupant,
  put,
  onForm,
}: {
  readonly act: SeasonAct;
  readonly occupant: Occupant;
  readonly put: Put;
  readonly onForm: (form: FormName) => void;
}) {
  const { id: animal, name, chores } = occupant;
  if (act === 'look-eggs' || act === 'look-ovulation') {
    const isEggs = act === 'look-eggs';
    const lookedFor = isEggs ? 'eggs' : 'ovulation';
    return (
      <>
        <Slab icon={isEggs ? 'eggs' : 'look'} onPress={() => onForm(lookedFor)}>
          {isEggs ? 'Eggs' : 'Ovulated'}
        </Slab>
        <Slab
          icon="look"
          kind="main"
          under="just now"
          onPress={() =>
            put({ type: 'nothing-yet', animal, lookedFor }, `${name}: no ${lookedFor} yet`)
          }
        >
          {isEggs ? 'No eggs yet' : 'Not yet'}
        </Slab>
      </>
    );
  }
  const { icon, words } = wholeRows[act];
  const press = () => {
    if (act === 'nest-box') {
      put({ type: 'nest-box-set', animal, is: 'in' }, `${name}: nest box in`);
    } else {
      onForm(act === 'scan' ? 'follicles' : act);
    }
  };
  return (
    <div class="whole-row">
      <Slab
        icon={icon}
        kind="main"
        under={chores.find((chore) => chore.act === act)?.asks}
        onPress={press}
      >
        {words}
      </Slab>
    </div>
  );
}
