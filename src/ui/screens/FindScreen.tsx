import { useState } from 'preact/hooks';
import { SlabLink } from '../components/Slab.tsx';
import { useView } from '../model.ts';
import { Page } from './Page.tsx';

/** By name, position, gene or label code. */
export function FindScreen() {
  const [typed, setTyped] = useState('');
  const hits = useView('find', typed);
  return (
    <Page title="Find">
      <label>
        Name, position, gene or label code
        <input
          type="search"
          value={typed}
          autocomplete="off"
          onInput={({ currentTarget }) => setTyped(currentTarget.value)}
        />
      </label>
      <ul class="plain-list">
        {hits?.map((hit) => (
          <li key={hit.animal ?? hit.tub}>
            <a
              class="find-line"
              href={hit.animal ? `#/animal/${hit.animal}` : `#/tub/${hit.tub ?? ''}`}
            >
              <strong>{hit.title}</strong>
              <span class="small quiet">{hit.detail}</span>
            </a>
          </li>
        ))}
      </ul>
      {hits?.length === 0 && <p class="note">Nothing by that name. Try the start of a word.</p>}
      <SlabLink icon="add" href="#/add">
        Add snakes
      </SlabLink>
    </Page>
  );
}
