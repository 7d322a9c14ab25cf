import { useState } from 'preact/hooks';
import { citesSources } from '../../domain/core/trade-words.ts';
import type { PapersView } from '../../domain/views/papers-view.ts';
import { citesWords } from '../../domain/views/papers-words.ts';
import { Cite } from '../components/Cite.tsx';
import { Sheet } from '../components/Sheet.tsx';
import { Slab } from '../components/Slab.tsx';
import { useModel } from '../model.ts';

/** Where it comes from, in the letters of CITES. */
export function SourceForm({
  view,
  onClose,
}: {
  readonly view: PapersView;
  readonly onClose: () => void;
}) {
  const model = useModel();
  const [permit, setPermit] = useState(view.source?.permit ?? '');
  const { id: animal, name } = view;
  const numbered = permit.trim() === '' ? {} : { permit: permit.trim() };
  return (
    <Sheet title={`Where ${name} comes from`} onClose={onClose}>
      <p class="small">
        Ball pythons stand in Appendix II of CITES. You state the source; an authority may see it
        otherwise. Check local rules.
      </p>
      <label>
        Number of a permit or certificate, if there is one
        <input
          value={permit}
          maxLength={60}
          autocomplete="off"
          onInput={({ currentTarget }) => setPermit(currentTarget.value)}
        />
      </label>
      {citesSources.map((code) => (
        <Slab
          key={code}
          pressed={view.source?.code === code}
          under={citesWords[code]}
          onPress={() =>
            void model.write({
              drafts: [{ type: 'source-stated', animal, code, ...numbered }],
              words: `${name}: CITES source ${code}`,
              after: onClose,
            })
          }
        >
          {code}
        </Slab>
      ))}
      <Cite source="citesSource" />
    </Sheet>
  );
}
