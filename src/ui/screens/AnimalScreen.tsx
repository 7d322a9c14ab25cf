import type { AnimalId } from '../../domain/core/ids.ts';
import type { AnimalView } from '../../domain/views/animal-view.ts';
import { Because } from '../components/Because.tsx';
import { Icon } from '../components/Icon.tsx';
import { SexMark } from '../components/SexMark.tsx';
import { SlabLink } from '../components/Slab.tsx';
import { useView } from '../model.ts';
import { dateWords } from '../../domain/core/day-words.ts';
import { WeightSection } from '../feeding/WeightSection.tsx';
import { GenesSection } from '../genes/GenesSection.tsx';
import { SeasonSection } from '../season/SeasonSection.tsx';
import { History } from './History.tsx';
import { Page } from './Page.tsx';

/** One snake's whole page: what it is, its curve, and every record, struck ones too. */
export function AnimalScreen({ id }: { readonly id: AnimalId }) {
  const view = useView('animal', id);
  if (!view) return <Page title="Snake" back />;
  return (
    <Page title={view.name} beside={view.position ?? view.gone?.how} back>
      <Facts view={view} />
      {view.chores.map((chore) => (
        <div class="note" key={chore.rule}>
          <strong>{chore.asks}</strong>
          {chore.blocked !== undefined && <p class="small">Not tonight: {chore.blocked}</p>}
          <Because chore={chore} />
        </div>
      ))}
      <SlabLink icon="round" kind="main" href={`#/snake/${id}`}>
        Write something down
      </SlabLink>
      <SeasonSection id={id} />
      <GenesSection id={id} />
      <a class="row-link" href={`#/lineage/${id}`}>
        <Icon name="pair" /> Lineage: parents, siblings, young
      </a>
      <a class="row-link" href={`#/papers/${id}`}>
        <Icon name="out" /> Sale and papers
      </a>
      <WeightSection view={view} />
      <History lines={view.history} isWhole={view.isWhole} />
    </Page>
  );
}

function Facts({ view }: { readonly view: AnimalView }) {
  const parents = [view.dam, ...view.sires].filter((parent) => parent !== undefined);
  const rows: readonly (readonly [string, string | undefined])[] = [
    ['Sex', view.sexedBy ? `${view.sex}, ${view.sexedBy}` : view.sex],
    ['Hatched', view.hatchedDay && dateWords(view.hatchedDay)],
    ['Length', view.lengthCm === undefined ? undefined : `${view.lengthCm} cm`],
    ['Condition', view.condition === undefined ? undefined : `${view.condition} of 5`],
    ['Quarantine', view.quarantine && `since ${dateWords(view.quarantine.since)}`],
    ['Kept back', view.heldBack ? 'yes' : undefined],
    ['Gone', view.gone && `${view.gone.how}, ${dateWords(view.gone.night)}`],
  ];
  return (
    <dl class="facts">
      {rows
        .filter(([, value]) => value !== undefined)
        .map(([term, value]) => (
          <div key={term}>
            <dt>{term}</dt>
            <dd>
              {value} {term === 'Sex' && <SexMark sex={view.sex} />}
            </dd>
          </div>
        ))}
      {parents.length > 0 && (
        <div>
          <dt>Parents, stated</dt>
          <dd>
            {parents.map((parent, i) => (
              <span key={parent.id}>
                {i > 0 && ' × '}
                <a href={`#/animal/${parent.id}`}>{parent.name}</a>
              </span>
            ))}
          </dd>
        </div>
      )}
    </dl>
  );
}
