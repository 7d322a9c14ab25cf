import { SlabLink } from '../components/Slab.tsx';
import { Icon } from '../components/Icon.tsx';
import { useView } from '../model.ts';
import { Page } from './Page.tsx';

/** Every rack of every room. */
export function RacksScreen() {
  const view = useView('racks', null);
  return (
    <Page title="Racks">
      <div class="stack">
        {view?.racks.map((rack) => (
          <SlabLink
            key={rack.id}
            icon={rack.quarantine ? 'quarantine' : 'racks'}
            href={`#/rack/${rack.id}`}
            under={`${rack.room} · ${rack.tubs} tubs, ${rack.snakes} snakes${
              rack.open > 0 ? ` · ${rack.open} to do` : ''
            }`}
          >
            Rack {rack.name}
          </SlabLink>
        ))}
        {view?.racks.length === 0 && (
          <p class="note">No rack yet. Draw the first one: it takes a minute.</p>
        )}
        {view?.rooms.map(({ id, name }) => (
          <SlabLink key={id} icon="heat" href={`#/room/${id}`} under="temperature and programme">
            {name}
          </SlabLink>
        ))}
        <SlabLink icon="eggs" href="#/season" under="all females on one time axis">
          The season
        </SlabLink>
        <SlabLink icon="add" href="#/new-rack">
          New rack
        </SlabLink>
      </div>
      {(view?.homeless.length ?? 0) > 0 && (
        <section class="stack">
          <h2>In no tub</h2>
          <ul class="plain-list">
            {view?.homeless.map(({ id, name }) => (
              <li key={id}>
                <a class="row-link" href={`#/snake/${id}`}>
                  <Icon name="alarm" /> {name}
                </a>
              </li>
            ))}
          </ul>
        </section>
      )}
    </Page>
  );
}
