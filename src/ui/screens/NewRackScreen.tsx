import { useState } from 'preact/hooks';
import type { RoomId } from '../../domain/core/ids.ts';
import { positionText } from '../../domain/picture/walk.ts';
import { useModel, useView } from '../model.ts';
import { go } from '../route.ts';
import { Page } from './Page.tsx';

const NEW_ROOM = 'new';

/** A rack drawn once: its tubs and their label codes come with it. */
export function NewRackScreen() {
  const { desk, fail, failWith } = useModel();
  const racks = useView('racks', null);
  const [name, setName] = useState('');
  const [rows, setRows] = useState('10');
  const [columns, setColumns] = useState('4');
  const [walk, setWalk] = useState<'rows' | 'serpentine' | 'columns'>('rows');
  const [room, setRoom] = useState<string>();
  const [roomName, setRoomName] = useState('Snake room');
  const [quarantine, setQuarantine] = useState(false);
  const chosenRoom = room ?? racks?.rooms[0]?.id ?? NEW_ROOM;
  const shape = { name: name.trim().toUpperCase(), columns: Number(columns) };
  const position = (row: number, column: number) => positionText({ row, column }, shape);

  const make = async (submitted: Event) => {
    submitted.preventDefault();
    try {
      const made = await desk.tell('makeRack', {
        room:
          chosenRoom === NEW_ROOM ? { name: roomName, quarantine } : { id: chosenRoom as RoomId },
        name,
        rows: Number(rows),
        columns: Number(columns),
        walk,
      });
      if (made.ok) go(`/rack/${made.value}`);
      else fail(made.problem.message, 'Nothing was made.');
    } catch (error) {
      failWith(error);
    }
  };

  return (
    <Page title="New rack" back>
      <form class="stack" onSubmit={(submitted) => void make(submitted)}>
        <label>
          Letter on the rack
          <input
            value={name}
            maxLength={4}
            required
            autocomplete="off"
            autocapitalize="characters"
            placeholder="B"
            onInput={({ currentTarget }) => setName(currentTarget.value)}
          />
        </label>
        <div class="field-row">
          <label>
            Rows, top to bottom
            <input
              type="number"
              inputMode="numeric"
              min="1"
              max="40"
              required
              value={rows}
              onInput={({ currentTarget }) => setRows(currentTarget.value)}
            />
          </label>
          <label>
            Tubs in a row
            <input
              type="number"
              inputMode="numeric"
              min="1"
              max="20"
              required
              value={columns}
              onInput={({ currentTarget }) => setColumns(currentTarget.value)}
            />
          </label>
        </div>
        <label>
          How you walk it
          <select
            value={walk}
            onChange={({ currentTarget }) => setWalk(currentTarget.value as typeof walk)}
          >
            <option value="rows">each row from the left</option>
            <option value="serpentine">rows back and forth</option>
            <option value="columns">down each column</option>
          </select>
        </label>
        <label>
          Room
          <select value={chosenRoom} onChange={({ currentTarget }) => setRoom(currentTarget.value)}>
            {racks?.rooms.map((each) => (
              <option key={each.id} value={each.id}>
                {each.name}
              </option>
            ))}
            <option value={NEW_ROOM}>a new room</option>
          </select>
        </label>
        {chosenRoom === NEW_ROOM && (
          <>
            <label>
              Name of the room
              <input
                value={roomName}
                maxLength={40}
                required
                onInput={({ currentTarget }) => setRoomName(currentTarget.value)}
              />
            </label>
            <label class="tick">
              <input
                type="checkbox"
                checked={quarantine}
                onChange={({ currentTarget }) => setQuarantine(currentTarget.checked)}
              />
              Quarantine: always walked last
            </label>
          </>
        )}
        {shape.name !== '' && (
          <p class="quiet">
            Tubs {position(1, 1)} to {position(Number(rows), Number(columns))}, each with its own
            label.
          </p>
        )}
        <button type="submit" class="slab slab-main">
          Make {Number(rows) * Number(columns)} tubs
        </button>
      </form>
    </Page>
  );
}
