import { useState } from 'preact/hooks';
import type { Draft, EventOf } from '../../domain/events/event.ts';
import type { IncubatorView } from '../../domain/views/incubator-view.ts';
import { NumberPad } from '../components/NumberPad.tsx';
import { Sheet } from '../components/Sheet.tsx';
import { Slab } from '../components/Slab.tsx';
import { useDraft, useModel } from '../model.ts';
import { fromUnit, showTemp, tempUnit, type TempUnit } from '../room/temp-unit.ts';
import { UnitSwitch } from '../room/UnitSwitch.tsx';

type Spot = EventOf<'incubator-read'>['spot'];

const spots: readonly (readonly [Spot, string])[] = [
  ['egg level', 'Between the eggs'],
  ['air', 'Air'],
];

/**
 * A reading: one tap where it shows what it is set to or what it showed last, another to write it;
 * else its digits.
 */
export function ReadIncubator({
  view,
  onClose,
}: {
  readonly view: IncubatorView;
  readonly onClose: () => void;
}) {
  const model = useModel();
  const [temp, setTemp] = useDraft(`incubator.${view.id}.temp`);
  const [humidity, setHumidity] = useDraft(`incubator.${view.id}.humidity`);
  const [field, setField] = useState<'temp' | 'humidity'>('temp');
  const [spot, setSpot] = useState<Spot>('egg level');
  const unit = tempUnit.value;

  const draftIn = (as: TempUnit): Draft => ({
    type: 'incubator-read',
    incubator: view.id,
    spot,
    tempC: fromUnit(Number(temp), as),
    ...(humidity === '' ? {} : { humidityPercent: Number(humidity) }),
    ...(as === '°C' ? {} : { entered: { unit: '°F' as const, temp: Number(temp) } }),
  });
  const save = () =>
    void model.write({
      drafts: [draftIn(unit)],
      words: `${view.name}: ${temp} ${unit}`,
      instead: () => [draftIn(unit === '°C' ? '°F' : '°C')],
      after: () => {
        setTemp('');
        setHumidity('');
        onClose();
      },
    });
  const likely = [...new Set([view.tempC, view.targetC].filter((each) => each !== undefined))];
  return (
    <Sheet title={`Read ${view.name}`} onClose={onClose}>
      <div class="room-place">
        {spots.map(([each, words]) => (
          <button
            type="button"
            class="pill"
            key={each}
            aria-pressed={spot === each}
            onClick={() => setSpot(each)}
          >
            {words}
          </button>
        ))}
        <UnitSwitch />
      </div>
      <div class="two">
        {likely.map((tempC) => (
          <Slab
            key={tempC}
            onPress={() => {
              setField('temp');
              setTemp(showTemp(tempC, unit).split(' ')[0] ?? '');
            }}
          >
            {showTemp(tempC, unit)}
          </Slab>
        ))}
      </div>
      <div class="room-fields" role="group" aria-label="What you read">
        {(['temp', 'humidity'] as const).map((each) => (
          <button
            type="button"
            class="pill"
            key={each}
            aria-pressed={field === each}
            onClick={() => setField(each)}
          >
            {each === 'temp' ? 'Warmth' : 'Humidity'}
          </button>
        ))}
      </div>
      <NumberPad
        key={field}
        label={field === 'temp' ? 'Warmth' : 'Humidity'}
        unit={field === 'temp' ? unit : '%'}
        decimals
        typed={field === 'temp' ? temp : humidity}
        onType={field === 'temp' ? setTemp : setHumidity}
        doneLabel={temp === '' ? 'Type what it shows' : `Write ${temp} ${unit}`}
        canBeDone={temp !== ''}
        onDone={save}
      />
    </Sheet>
  );
}
