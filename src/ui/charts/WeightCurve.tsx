import { useEffect, useRef } from 'preact/hooks';
import type { AnimalView } from '../../domain/views/animal-view.ts';
import { dayWords } from '../night.ts';
import { light } from '../light.ts';
import { showGrams } from '../../domain/core/units.ts';

type Props = Pick<AnimalView, 'masses' | 'meals'>;

/** Mass over time, with a tick for each meal below. The same numbers stand in a table under it. */
export function WeightCurve({ masses, meals }: Props) {
  const box = useRef<HTMLDivElement>(null);
  const lit = light.value;
  useEffect(() => {
    const element = box.current;
    if (!element || masses.length < 2) return undefined;
    let remove: (() => void) | undefined;
    let isOver = false;
    void import('./draw-weights.ts').then(({ drawWeights }) => {
      if (!isOver) remove = drawWeights(element, masses, meals);
    });
    return () => {
      isOver = true;
      remove?.();
    };
  }, [masses, meals, lit]);

  const [first, last] = [masses[0], masses.at(-1)];
  if (!first || !last) return <p class="quiet">Not weighed yet.</p>;
  const caption =
    masses.length === 1
      ? `Weighed once: ${showGrams(first.massG)} on ${dayWords(first.night)}. One weight is no curve.`
      : `${showGrams(first.massG)} on ${dayWords(first.night)} to ${showGrams(last.massG)} on ${dayWords(last.night)}, ${masses.length} weights.`;
  return (
    <figure class="curve">
      <h2>Weight</h2>
      {masses.length > 1 && <div class="curve-box" role="img" aria-label={caption} ref={box} />}
      <figcaption class="small quiet">
        {caption} {masses.length > 1 && 'Ticks below the line are meals: full eaten, half refused.'}
      </figcaption>
      <details>
        <summary>The same as a table</summary>
        <table class="numbers">
          <thead>
            <tr>
              <th scope="col">Night</th>
              <th scope="col">Mass</th>
            </tr>
          </thead>
          <tbody>
            {masses.toReversed().map(({ id, night, massG }) => (
              <tr key={id}>
                <td>{dayWords(night)}</td>
                <td class="number">{showGrams(massG)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </details>
    </figure>
  );
}
