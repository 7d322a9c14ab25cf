import { useState } from 'preact/hooks';
import type { Draft } from '../../domain/events/event.ts';
import type { RoomView } from '../../domain/views/room-view.ts';
import { NumberPad } from '../components/NumberPad.tsx';
import { Sheet } from '../components/Sheet.tsx';
import { useDraft, useModel } from '../model.ts';
import { PlaceSelect, placeOf } from './PlaceSelect.tsx';
import { fromUnit, showTemp, tempUnit, type TempUnit } from './temp-unit.ts';
import { UnitSwitch } from './UnitSwitch.tsx';

const fields = [
  ['temp', 'Now'],
  ['humidity', 'Humid'],
  ['low', 'Lowest'],
  ['high', 'Highest'],
] as const;
type Field = (typeof fields)[number][0];

const numberIn = (text: string): number | undefined => (text === '' ? undefined : Number(text));

/** One reading by hand: what the thermometer shows, and what it noted since it was set back. */
export function ReadForm({
  view,
  onClose,
}: {
  readonly view: RoomView;
  readonly onClose: () => void;
}) {
  const model = useModel();
  const [place, setPlace] = useState('air');
  const [field, setField] = useState<Field>('temp');
  const [temp, setTemp] = useDraft(`room.${view.id}.temp`);
  const [humidity, setHumidity] = useDraft(`room.${view.id}.humidity`);
  const [low, setLow] = useDraft(`room.${view.id}.low`);
  const [high, setHigh] = useDraft(`room.${view.id}.high`);
  const unit = tempUnit.value;
  const typed: Record<Field, string> = { temp, humidity, low, high };
  const setters: Record<Field, (value: string) => void> = {
    temp: setTemp,
    humidity: setHumidity,
    low: setLow,
    high: setHigh,
  };

  const draftIn = (as: TempUnit): Draft => {
    const { spot, rack } = placeOf(place);
    const [lowest, highest] = [numberIn(low), numberIn(high)];
    return {
      type: 'room-read',
      room: view.id,
      spot,
      ...(rack === undefined ? {} : { rack }),
      tempC: fromUnit(Number(temp), as),
      ...(humidity === '' ? {} : { humidityPercent: Number(humidity) }),
      ...(lowest === undefined ? {} : { lowC: fromUnit(lowest, as) }),
      ...(highest === undefined ? {} : { highC: fromUnit(highest, as) }),
      ...(as === '°C'
        ? {}
        : {
            entered: {
              unit: '°F' as const,
              temp: Number(temp),
              ...(lowest === undefined ? {} : { low: lowest }),
              ...(highest === undefined ? {} : { high: highest }),
            },
          }),
    };
  };

  const save = () => {
    void model.write({
      drafts: [draftIn(unit)],
      words: `${view.name}: ${temp} ${unit}`,
      // The other unit was meant: what was typed stands, and is read as that.
      instead: () => [draftIn(unit === '°C' ? '°F' : '°C')],
      after: () => {
        for (const set of Object.values(setters)) set('');
        onClose();
      },
    });
  };

  const last = view.last.find(({ where }) => place === 'air' && where === 'Air');
  return (
    <Sheet title={`Read ${view.name}`} onClose={onClose}>
      <div class="room-place">
        <PlaceSelect racks={view.racks} place={place} onPick={setPlace} />
        <UnitSwitch />
      </div>
      <div class="room-fields" role="group" aria-label="What you read">
        {fields.map(([name, words]) => (
          <button
            type="button"
            key={name}
            class="pill"
            aria-pressed={field === name}
            onClick={() => setField(name)}
          >
            {words}
            {name !== field && typed[name] !== '' && <small>{typed[name]}</small>}
          </button>
        ))}
      </div>
      <NumberPad
        key={field}
        label={fields.find(([name]) => name === field)?.[1] ?? ''}
        unit={field === 'humidity' ? '%' : unit}
        decimals
        before={field === 'temp' && last ? `last ${showTemp(last.tempC, unit)}` : undefined}
        typed={typed[field]}
        onType={setters[field]}
        doneLabel={temp === '' ? 'Type what it shows now' : `Write ${temp} ${unit}`}
        canBeDone={temp !== ''}
        onDone={save}
      />
    </Sheet>
  );
}
