import { agoWords } from '../../domain/room/words.ts';
import type { LastReading, RoomView } from '../../domain/views/room-view.ts';
import { showTemp, showTempError, tempUnit } from './temp-unit.ts';

const clock = (minuteOfDay: number): string =>
  `${String(Math.floor(minuteOfDay / 60)).padStart(2, '0')}:${String(minuteOfDay % 60).padStart(2, '0')}`;

/** What was read last, and what the programme asks for now. */
export function RoomNow({ view }: { readonly view: RoomView }) {
  return (
    <section class="stack" aria-label="Now">
      {view.last.length === 0 && <p class="quiet">Not read yet.</p>}
      <ul class="room-last">
        {view.last.map((last) => (
          <Last key={last.where} last={last} errorC={view.errorC} />
        ))}
      </ul>
      <Target view={view} />
    </section>
  );
}

const standWords = {
  'in band': 'in band',
  below: 'below the programme',
  above: 'above the programme',
} as const;

function Last({ last, errorC }: { readonly last: LastReading; readonly errorC: number }) {
  const unit = tempUnit.value;
  const humidity = last.humidityPercent;
  return (
    <li>
      <span class="quiet">{last.where}</span>
      <strong class="room-temp number">{showTemp(last.tempC, unit)}</strong>
      <span class="small quiet">
        {showTempError(errorC, unit)}
        {humidity !== undefined && ` · ${humidity} % humidity`} · {last.by} ·{' '}
        {agoWords(last.ageMin)}
        {last.stands && (
          <>
            {' · '}
            <span class={last.stands === 'in band' ? undefined : 'overdue'}>
              {standWords[last.stands]}
            </span>
          </>
        )}
      </span>
    </li>
  );
}

function Target({ view }: { readonly view: RoomView }) {
  const unit = tempUnit.value;
  const { part, airC, hotSpotC, untilMin } = view.target;
  if (airC === undefined) {
    return <p class="quiet">No programme yet: nothing to hold readings against.</p>;
  }
  return (
    <p>
      {part === 'day' ? 'Day' : 'Night'} until {clock(untilMin)}: the programme asks for{' '}
      <strong class="number">{showTemp(airC, unit)}</strong> air
      {hotSpotC !== undefined && (
        <>
          {' '}
          and <strong class="number">{showTemp(hotSpotC, unit)}</strong> at the hot spot
        </>
      )}
      .
    </p>
  );
}
