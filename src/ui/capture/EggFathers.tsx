import type { Draft } from '../../domain/events/event.ts';
import type { AnimalId } from '../../domain/core/ids.ts';
import { Slab } from '../components/Slab.tsx';
import { Unfolds } from '../components/Unfolds.tsx';
import { useView } from '../model.ts';

/** What states the fathers with the eggs: the clutch has its id once they are written. */
type Fathers = Extract<Draft, { type: 'paternity-stated' }>;

/** Whom the records point at as fathers of the eggs; a tap writes it with them. */
export function EggFathers({
  animal,
  stated,
  onState,
}: {
  readonly animal: AnimalId;
  readonly stated: Fathers | undefined;
  readonly onState: (fathers: Fathers | undefined) => void;
}) {
  const offers = useView('fathers', animal) ?? [];
  const likely = offers.filter(({ isLikely }) => isLikely);
  if (likely.length === 0) return null;
  const sires = likely.map(({ male, grounds }) => ({ male, grounds }));
  return (
    <>
      <Slab
        icon="male"
        pressed={stated !== undefined}
        onPress={() => onState(stated ? undefined : { type: 'paternity-stated', animal, sires })}
        under={stated ? 'written with the eggs' : 'by the records; tap to state it'}
      >
        {likely.length === 1 ? 'Father' : 'Fathers'}: {likely.map(({ name }) => name).join(' or ')}
      </Slab>
      <Unfolds summary="Why">
        {() => (
          <ul class="small">
            {offers.map(({ male, says }) => (
              <li key={male}>{says}</li>
            ))}
          </ul>
        )}
      </Unfolds>
    </>
  );
}
