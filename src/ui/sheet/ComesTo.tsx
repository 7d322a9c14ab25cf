import type { SheetPreview } from '../../domain/sheet/preview.ts';
import { count } from './count-words.ts';

/** What taking it in would add, in numbers. */
export function ComesTo({ preview }: { readonly preview: SheetPreview }) {
  const { newAnimals, knownAnimals, records, known, openCount, leftOutCount } = preview;
  return (
    <section aria-labelledby="sheet-comes-to">
      <h2 id="sheet-comes-to">What it comes to</h2>
      <ul class="summary number sheet-numbers" aria-label="What would be added">
        <li>
          <strong>{newAnimals.toLocaleString('en')}</strong>{' '}
          {newAnimals === 1 ? 'new snake' : 'new snakes'}
        </li>
        <li>
          <strong>{knownAnimals.toLocaleString('en')}</strong> known here
        </li>
        {records.map(({ what, count: n }) => (
          <li key={what}>
            <strong>{n.toLocaleString('en')}</strong> {what}
          </li>
        ))}
      </ul>
      <p class="number">
        {count(known, 'record is', 'records are')} here already,{' '}
        {count(openCount, 'question is', 'questions are')} open,{' '}
        {count(leftOutCount, 'cell or row is', 'cells and rows are')} left out.
      </p>
    </section>
  );
}
