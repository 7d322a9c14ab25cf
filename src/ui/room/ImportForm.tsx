import { useState } from 'preact/hooks';
import type { Commands } from '../../domain/desk.ts';
import type { ColumnMap } from '../../domain/room/csv/columns.ts';
import type { ReadingsPreview } from '../../domain/room/csv/look-into.ts';
import { Icon } from '../components/Icon.tsx';
import { Sheet } from '../components/Sheet.tsx';
import { Slab } from '../components/Slab.tsx';
import { useModel } from '../model.ts';
import { ColumnPicker } from './ColumnPicker.tsx';
import { ImportPreview } from './ImportPreview.tsx';
import type { NamedPlace } from './room-places.ts';

type Ask = Commands['lookIntoReadings']['ask'];

/** Takes in a sensor's file: look first, at columns and at every line left out, then take in. */
export function ImportForm({
  sensors,
  places,
  onClose,
}: {
  /** Heard of before, the latest used first. */
  readonly sensors: readonly string[];
  readonly places: readonly NamedPlace[];
  readonly onClose: () => void;
}) {
  const { desk, failWith, said } = useModel();
  const [sensor, setSensor] = useState(sensors[0] ?? 'Sensor 1');
  const [place, setPlace] = useState(0);
  const [preview, setPreview] = useState<ReadingsPreview>();
  const [refusal, setRefusal] = useState<string>();
  const [isBusy, setIsBusy] = useState(false);

  const look = async (changed: Partial<Pick<Ask, 'file' | 'map'>>, name = sensor, at = place) => {
    const where = places[at]?.where;
    if (!where) return;
    setIsBusy(true);
    setRefusal(undefined);
    try {
      const looked = await desk.tell('lookIntoReadings', {
        ...where,
        sensor: name.trim() || 'Sensor 1',
        ...changed,
      });
      if (looked.ok) setPreview(looked.value);
      else {
        setPreview(undefined);
        setRefusal(looked.problem.message);
      }
    } catch (error) {
      failWith(error);
    }
    setIsBusy(false);
  };
  const lookAgain = (map: ColumnMap | undefined = preview?.map, name = sensor, at = place) => {
    if (preview) void look(map ? { map } : {}, name, at);
  };

  const takeIn = async () => {
    setIsBusy(true);
    try {
      const taken = await desk.tell('takeInReadings', null);
      if (taken.ok) {
        const { readings, ids } = taken.value;
        said(`${readings.toLocaleString('en')} readings of ${sensor} taken in`, ids);
        onClose();
        return;
      }
      setRefusal(taken.problem.message);
    } catch (error) {
      failWith(error);
    }
    setIsBusy(false);
  };

  return (
    <Sheet title="A sensor’s file" onClose={onClose}>
      <p class="quiet small">
        The CSV that a sensor’s program exports. Nothing is written before you say so.
      </p>
      <label>
        <span class="quiet small">Measured</span>
        <select
          value={place}
          onChange={({ currentTarget }) => {
            const next = Number(currentTarget.value);
            setPlace(next);
            lookAgain(undefined, sensor, next);
          }}
        >
          {places.map(({ words }, n) => (
            <option key={words} value={n}>
              {words}
            </option>
          ))}
        </select>
      </label>
      <label>
        <span class="quiet small">Name of the sensor; the same one each time</span>
        <input
          value={sensor}
          maxLength={40}
          list="room-sensors"
          onInput={({ currentTarget }) => setSensor(currentTarget.value)}
          onChange={() => lookAgain()}
        />
      </label>
      <datalist id="room-sensors">
        {sensors.map((name) => (
          <option key={name} value={name}>
            {name}
          </option>
        ))}
      </datalist>
      <label>
        <span class="quiet small">File</span>
        <input
          type="file"
          accept=".csv,.txt,.tsv,text/csv,text/plain"
          onChange={({ currentTarget }) => {
            const file = currentTarget.files?.[0];
            if (file) void look({ file });
          }}
        />
      </label>
      <div role="status">{isBusy && 'Reading…'}</div>
      {refusal !== undefined && (
        <div class="note note-warn" role="alert">
          <Icon name="alarm" /> {refusal} Nothing was written.
        </div>
      )}
      {preview && (
        <>
          <ColumnPicker preview={preview} onPick={(map) => lookAgain(map)} />
          <ImportPreview preview={preview} sensor={sensor} />
          <Slab kind="main" disabled={isBusy || preview.fresh === 0} onPress={() => void takeIn()}>
            {preview.fresh === 0
              ? 'Nothing new in it'
              : `Take in ${preview.fresh.toLocaleString('en')} readings`}
          </Slab>
        </>
      )}
    </Sheet>
  );
}
