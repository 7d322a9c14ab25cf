import { useState } from 'preact/hooks';
import { presets, type Preset } from '../../domain/room/presets.ts';
import { sources } from '../../domain/sources.ts';
import type { RoomView } from '../../domain/views/room-view.ts';
import { Sheet } from '../components/Sheet.tsx';
import { Slab } from '../components/Slab.tsx';
import { dateWords } from '../../domain/core/day-words.ts';
import { ProgrammeEditor, type Begun } from './ProgrammeEditor.tsx';

/** The room's programme: begin from a school's or from the present one, then change any step. */
export function ProgrammeForm({
  view,
  onClose,
}: {
  readonly view: RoomView;
  readonly onClose: () => void;
}) {
  const [begun, setBegun] = useState<Begun>();
  const { programme, next } = view;
  return (
    <Sheet title={begun ? begun.name : 'Programme'} onClose={onClose}>
      {begun ? (
        <ProgrammeEditor view={view} begun={begun} onClose={onClose} />
      ) : (
        <>
          {programme && (
            <Slab
              kind="main"
              under={`since ${dateWords(programme.from)}`}
              onPress={() => setBegun(programme)}
            >
              Change “{programme.name}”
            </Slab>
          )}
          {next && (
            <p class="note">
              “{next.name}” begins on {dateWords(next.from)}.
            </p>
          )}
          <p class="quiet">Three schools of the trade to begin from. Every step can be changed.</p>
          {presets.map((preset) => (
            <PresetChoice key={preset.name} preset={preset} onPick={() => setBegun(preset)} />
          ))}
          <p class="small quiet">
            Never cool a snake with any sign at its breathing, a hatchling, or one that was just
            fed. If in doubt, ask a reptile vet first.
          </p>
        </>
      )}
    </Sheet>
  );
}

const PresetChoice = ({
  preset,
  onPick,
}: {
  readonly preset: Preset;
  readonly onPick: () => void;
}) => (
  <div>
    <Slab under={preset.says} onPress={onPick}>
      {preset.name}
    </Slab>
    <details>
      <summary>
        Where from<span class="hidden-words">: {preset.name}</span>
      </summary>
      <p class="because">{sources[preset.source].cite}</p>
    </details>
  </div>
);
