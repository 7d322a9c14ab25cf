import type { Day } from '../../domain/core/calendar.ts';
import type { CaptureView, Occupant } from '../../domain/views/capture-view.ts';
import { Slab } from '../components/Slab.tsx';
import { useModel } from '../model.ts';
import type { FormName } from './form-props.ts';
import { onNight } from './drafts.ts';
import { FirstRow } from './FirstRow.tsx';
import { seasonAct, SeasonRow } from './SeasonRow.tsx';
import type { Put } from './row-props.ts';

interface ActionsProps {
  readonly view: CaptureView;
  readonly occupant: Occupant;
  readonly night: Day | undefined;
  readonly onForm: (form: FormName) => void;
}

/**
 * The big buttons. They keep their places above the lower edge, so that the thumb learns them; what
 * her season asks for stands over them.
 */
export function CaptureActions({ view, occupant, night, onForm }: ActionsProps) {
  const { write } = useModel();
  const put: Put = (draft, words) =>
    void write({ drafts: [onNight(draft, night)], tub: view.tub, words });
  const form = (name: FormName) => () => onForm(name);
  const act = seasonAct(occupant);

  return (
    <div class="two actions">
      {act && <SeasonRow act={act} occupant={occupant} put={put} onForm={onForm} />}
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
