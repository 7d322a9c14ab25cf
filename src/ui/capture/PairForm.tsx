import { useState } from 'preact/hooks';
import type { AnimalId, TubId } from '../../domain/core/ids.ts';
import type { Hit } from '../../domain/views/find-view.ts';
import { Sheet } from '../components/Sheet.tsx';
import { Slab } from '../components/Slab.tsx';
import { useModel, useView } from '../model.ts';
import type { FormProps } from './form-props.ts';
import { PairReason } from './PairReason.tsx';

const MOST = 12;

/** Two that are about to be put together. */
interface Chosen {
  readonly mate: AnimalId;
  readonly title: string;
  readonly tub: TubId;
}

/**
 * Puts a male in with a female. He goes to her tub, whichever of the two was scanned. What weighs
 * against the two is named first and asks for a reason; it never stands in the way of the record.
 */
export function PairForm({ view, occupant, put, onClose }: FormProps) {
  const [typed, setTyped] = useState('');
  const [chosen, setChosen] = useState<Chosen>();
  const hits = useView('find', typed) ?? [];
  const warnings = useView('pairWarnings', occupant.id);
  const { fail } = useModel();
  const isMale = occupant.sex === 'male';
  const wanted = isMale ? 'female' : 'male';
  const partners = hits.filter(({ animal, gone, sex }) => animal && !gone && sex === wanted);
  const against = (mate: AnimalId) => warnings?.find((each) => each.mate === mate);

  const write = ({ mate, title, tub }: Chosen, reason?: string) => {
    const pair = isMale ? { male: occupant.id, female: mate } : { male: mate, female: occupant.id };
    const cautions = (against(mate)?.cautions ?? []).map(({ id }) => id).slice(0, 24);
    put(
      { type: 'introduced', ...pair, tub },
      `together with ${title}`,
      reason === undefined
        ? {}
        : { also: [{ type: 'pairing-reasoned', ...pair, cautions, reason }] },
    );
  };

  const choose = ({ animal: mate, title, tub: theirTub }: Hit) => {
    const tub = isMale ? theirTub : view.tub;
    if (mate === undefined || tub === undefined) {
      fail('She stands in no tub yet.', 'Give her a tub first.');
      return;
    }
    const pair = { mate, title, tub };
    if (warnings && !against(mate)) write(pair);
    else setChosen(pair);
  };

  if (chosen) {
    return (
      <PairReason
        names={`${occupant.name} and ${chosen.title}`}
        isKnown={warnings !== undefined}
        warning={against(chosen.mate)}
        onWrite={(reason) => write(chosen, reason)}
        onClose={() => setChosen(undefined)}
      />
    );
  }

  return (
    <Sheet title={`${occupant.name} with…`} onClose={onClose}>
      <label>
        Name or position of the {wanted}
        <input
          value={typed}
          autocomplete="off"
          onInput={({ currentTarget }) => setTyped(currentTarget.value)}
        />
      </label>
      <div class="stack scroll-list">
        {partners.slice(0, MOST).map((hit) => (
          <Slab
            key={hit.animal}
            icon="pair"
            kind={hit.animal && against(hit.animal) ? 'warn' : undefined}
            under={underOf(hit, hit.animal && against(hit.animal)?.cautions[0]?.weight)}
            onPress={() => choose(hit)}
          >
            {hit.title}
          </Slab>
        ))}
        {partners.length === 0 && <p class="quiet">No {wanted} by that name.</p>}
      </div>
      <a
        class="row-link"
        href={`#/pair/${isMale ? `words/${occupant.id}` : `${occupant.id}/words`}`}
      >
        What would the young be, with …
      </a>
      <p class="small quiet">
        Not within two days of a meal, not in blue, not in quarantine. A pairing needs two animals
        in good condition.
      </p>
    </Sheet>
  );
}

const underOf = ({ detail }: Hit, weight: string | undefined): string =>
  weight === undefined ? detail : `${detail} · ${weight} caution`;
