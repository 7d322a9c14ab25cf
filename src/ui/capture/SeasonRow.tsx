import type { Occupant } from '../../domain/views/capture-view.ts';
import type { Act } from '../../domain/rules/rule.ts';
import { Slab } from '../components/Slab.tsx';
import type { FormName } from './form-props.ts';
import type { Put } from './row-props.ts';

type SeasonAct = Extract<Act, 'look-eggs' | 'look-ovulation' | 'nest-box' | 'pair' | 'scan'>;

const acts: readonly Act[] = ['look-eggs', 'look-ovulation', 'nest-box', 'pair', 'scan'];

/** What her season asks for tonight, where it comes before a meal that is due. */
export function seasonAct({ chores }: Occupant): SeasonAct | undefined {
  const first = chores.find(
    ({ act, blocked }) => blocked === undefined && (act === 'feed' || acts.includes(act)),
  );
  return first && first.act !== 'feed' ? (first.act as SeasonAct) : undefined;
}

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
  const under = chores.find((chore) => chore.act === act)?.asks;
  const nothingYet = (lookedFor: 'ovulation' | 'eggs') => () =>
    put({ type: 'nothing-yet', animal, lookedFor }, `${name}: no ${lookedFor} yet`);
  switch (act) {
    case 'look-eggs':
      return (
        <>
          <Slab icon="eggs" onPress={() => onForm('eggs')}>
            Eggs
          </Slab>
          <Slab icon="look" kind="main" under="just now" onPress={nothingYet('eggs')}>
            No eggs yet
          </Slab>
        </>
      );
    case 'look-ovulation':
      return (
        <>
          <Slab icon="look" onPress={() => onForm('ovulation')}>
            Ovulated
          </Slab>
          <Slab icon="look" kind="main" under="just now" onPress={nothingYet('ovulation')}>
            Not yet
          </Slab>
        </>
      );
    case 'nest-box':
      return (
        <div class="whole-row">
          <Slab
            icon="nest"
            kind="main"
            onPress={() => put({ type: 'nest-box-set', animal, is: 'in' }, `${name}: nest box in`)}
          >
            Nest box in
          </Slab>
        </div>
      );
    case 'pair':
      return (
        <div class="whole-row">
          <Slab icon="pair" kind="main" under={under} onPress={() => onForm('pair')}>
            Male in
          </Slab>
        </div>
      );
    case 'scan':
      return (
        <div class="whole-row">
          <Slab icon="follicles" kind="main" under={under} onPress={() => onForm('follicles')}>
            Scan
          </Slab>
        </div>
      );
  }
}
