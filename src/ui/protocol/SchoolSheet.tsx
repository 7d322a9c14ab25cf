import { useState } from 'preact/hooks';
import type { ProtocolChanges } from '../../domain/protocol/own-protocol.ts';
import type { SchoolRow } from '../../domain/views/protocol-view.ts';
import { Sheet } from '../components/Sheet.tsx';
import { Slab } from '../components/Slab.tsx';
import { useModel } from '../model.ts';
import { WhatChanges } from './WhatChanges.tsx';

/** A school of practice: each number it would change, and what that would do tonight. */
export function SchoolSheet({
  school,
  onClose,
}: {
  readonly school: SchoolRow;
  readonly onClose: () => void;
}) {
  const { write } = useModel();
  const [taken, setTaken] = useState<readonly string[]>([]);
  const values = valuesOf(school, taken);
  const count = Object.keys(values).length;
  const toWrite = count === 1 ? '1 number' : `${count} numbers`;
  return (
    <Sheet title={`School: ${school.name}`} onClose={onClose}>
      <p>{school.says}</p>
      <p class="quiet small">{school.source}</p>
      {school.keeps.length > 0 && (
        <fieldset class="keeps">
          <legend>Your own numbers stay as they are, unless you tick them</legend>
          {school.keeps.map(({ key, name, own, school: theirs }) => (
            <label class="tick" key={key}>
              <input
                type="checkbox"
                checked={taken.includes(key)}
                onChange={({ currentTarget }) =>
                  setTaken(
                    currentTarget.checked ? [...taken, key] : taken.filter((each) => each !== key),
                  )
                }
              />
              <span>
                {name}: yours {own}, here {theirs}
              </span>
            </label>
          ))}
        </fieldset>
      )}
      {count > 0 && <WhatChanges changes={values} withValues />}
      {school.isChosen && count === 0 ? (
        <p class="note">You follow this school.</p>
      ) : (
        <Slab
          kind="main"
          under={count === 0 ? 'Your numbers stay as they are' : `writes ${toWrite}`}
          onPress={() =>
            void write({
              drafts: [{ type: 'protocol-set', school: school.id, values }],
              words: `School ${school.name}: ${toWrite}`,
              after: onClose,
            })
          }
        >
          Follow {school.name}
        </Slab>
      )}
    </Sheet>
  );
}

const valuesOf = ({ sets, keeps }: SchoolRow, taken: readonly string[]): ProtocolChanges => ({
  ...sets,
  ...Object.fromEntries(
    keeps.filter(({ key }) => taken.includes(key)).map(({ key, value }) => [key, value]),
  ),
});
