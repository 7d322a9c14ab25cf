import type { RackId } from '../../domain/core/ids.ts';
import type { RoomView } from '../../domain/views/room-view.ts';

const HOT_SPOT = 'hot spot';

/** The place that an option stands for. */
export const placeOf = (
  option: string,
): { readonly spot: 'air' | 'hot spot'; readonly rack?: RackId } =>
  option === 'air'
    ? { spot: 'air' }
    : option === HOT_SPOT
      ? { spot: HOT_SPOT }
      : { spot: HOT_SPOT, rack: option as RackId };

/** Where it is measured: the air, or under the heat of one rack. */
export const PlaceSelect = ({
  racks,
  place,
  onPick,
}: {
  readonly racks: RoomView['racks'];
  readonly place: string;
  readonly onPick: (place: string) => void;
}) => (
  <label>
    <span class="hidden-words">Measured</span>
    <select value={place} onChange={({ currentTarget }) => onPick(currentTarget.value)}>
      <option value="air">Air of the room</option>
      {racks.map(({ id, name }) => (
        <option key={id} value={id}>
          Hot spot, rack {name}
        </option>
      ))}
      {racks.length === 0 && <option value={HOT_SPOT}>Hot spot</option>}
    </select>
  </label>
);
