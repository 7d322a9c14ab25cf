import { useEffect, useRef } from 'preact/hooks';
import type { AnimalView } from '../../domain/views/animal-view.ts';
import type { WeightView } from '../../domain/views/weight-view.ts';
import { dateWords } from '../../domain/core/day-words.ts';
import { light } from '../light.ts';
import { showMass } from '../mass-unit.ts';

type Props = Pick<AnimalView, 'masses' | 'meals'> & {
  /** What the weights come to, once it is worked out. */
  readonly more: WeightView | undefined;
};

/** Mass over time, with a tick for each meal below. The same numbers stand in a table under it. */
export function WeightCurve({ masses, meals, more }: Props) {
  const box = useRef<HTMLDivElement>(null);
  const lit = light.value;
  useEffect(() => {
    const element = box.current;
    if (!element || masses.length < 2) return undefined;
    let remove: (() => void) | undefined;
    let isOver = false;
    void import('./draw-weights.ts').then(({ drawWeights }) => {
      if (!isOver) remove = drawWeights(element, masses, meals, more);
    });
    return () => {
      isOver = true;
      remove?.();
    };
  }, [masses, meals, more, lit]);

  const [first, last] = [masses[0], masses.at(-1)];
  if (!first || !last) return <p class="quiet">Not weighed yet.</p>;
  const caption =
    masses.length === 1
      ? `Weighed once: ${showMass(first.massG)} on ${dateWords(first.night)}. One weight is no curve.`
      : `${showMass(first.massG)} on ${dateWords(first.night)} to ${showMass(last.massG)} on ${dateWords(last.night)}, ${masses.length} weights.`;
  return (
    <figure class="curve">
      <h2>Weight</h2>
      {masses.length > 1 && <div class="curve-box" role="img" aria-label={caption} ref={box} />}
      <figcaption class="small quiet">
        {caption} {masses.length > 1 && 'Ticks below the line are meals: full eaten, half refused.'}
        {(more?.line.length ?? 0) > 0 && ' Dashed: the trend.'}
        {more?.target && ` Box: 80 % window to ${showMass(more.target.targetG)}.`}
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
                <td>{dateWords(night)}</td>
                <td class="number">{showMass(massG)}</td>
              </tr>
            ))}
          </tbody>
        </table>
        {more?.target && (
          <p class="small">
            {showMass(more.target.targetG)} between {dateWords(more.target.from)} and{' '}
            {dateWords(more.target.to)} (80 %), most likely {dateWords(more.target.likely)}.
          </p>
        )}
        {meals.length > 0 && (
          <p class="small number">
            {meals.filter(({ ate }) => ate).length} meals eaten and{' '}
            {meals.filter(({ ate }) => !ate).length} refused or left on this record.
          </p>
        )}
      </details>
    </figure>
  );
}
