import type { LocusOutcome } from '../../domain/review/outcomes.ts';
import type { PairLine, ReviewView } from '../../domain/views/review-view.ts';
import { Unfolds } from '../components/Unfolds.tsx';
import { useView } from '../model.ts';
import { chanceText } from './figure-text.ts';
import { Reason } from './Reason.tsx';

/** What hatched, held against the odds; pairs with too few young are named as silent. */
export function Outcomes({
  view: { pairs, silentPairs, fewestYoung },
}: {
  readonly view: Pick<ReviewView, 'pairs' | 'silentPairs' | 'fewestYoung'>;
}) {
  const silent =
    silentPairs === 0
      ? ''
      : `${silentPairs === 1 ? '1 pair has' : `${silentPairs} pairs have`} fewer than ${fewestYoung} young with a known father: nothing can be said of odds there.`;
  return (
    <section class="stack">
      <h2>Outcomes and odds</h2>
      <p class="small quiet">
        All seasons together, for pairs of which only one male can be the father.
      </p>
      {pairs.length === 0 && silentPairs === 0 && <p>No young with both parents known yet.</p>}
      {pairs.map((pair) => (
        <Unfolds
          key={`${pair.dam}${pair.sire}`}
          summary={`${pair.damName} and ${pair.sireName}: ${pair.young} young`}
        >
          {() => <OutcomesOf pair={pair} />}
        </Unfolds>
      ))}
      {silent !== '' && <p class="small">{silent}</p>}
      <Reason
        says={[
          'The odds are those of the parents by what they hatched with: what these young have told of them since is left out, or any outcome would fit.',
          'The last column is how likely an outcome is that is no likelier than this one (exact multinomial test; with two looks, the exact binomial). Under 0.05 is worth a question: is the father right, is a gene misread? Of 20 tests one falls there by chance alone. It proves no gene.',
          `Under ${fewestYoung} young nothing is said.`,
        ]}
        sources={['exactTest', 'carrierChances']}
      />
    </section>
  );
}

function OutcomesOf({ pair: { dam, sire } }: { readonly pair: PairLine }) {
  const view = useView('outcomes', { dam, sire });
  if (!view) return <p role="status">Reckoning…</p>;
  if (view.genes.length === 0) {
    return <p class="small">No gene on record at which their young can differ.</p>;
  }
  return (
    <div class="review-table">
      <table class="numbers">
        <caption>
          <a href={`#/pair/${dam}/${sire}`}>All that their young can be</a>
        </caption>
        <thead>
          <tr>
            <th scope="col">Gene</th>
            <th scope="col">Look</th>
            <th scope="col">Hatched</th>
            <th scope="col">Expected</th>
            <th scope="col">As unlikely</th>
          </tr>
        </thead>
        {view.genes.map((gene) => (
          <GeneRows key={gene.locus} gene={gene} />
        ))}
      </table>
    </div>
  );
}

const GeneRows = ({ gene: { name, of, kinds, p } }: { readonly gene: LocusOutcome }) => (
  <tbody>
    {kinds.map(({ look, seen, expected }, n) => (
      <tr key={look}>
        {n === 0 && (
          <th scope="rowgroup" rowSpan={kinds.length}>
            {name}
          </th>
        )}
        <td>{look === '' ? 'as wild type' : look}</td>
        <td class="number">
          {seen} of {of}
        </td>
        <td class="number">{expected.toFixed(1)}</td>
        {n === 0 && (
          <td class="number" rowSpan={kinds.length}>
            {p === undefined ? 'too few' : chanceText(p)}
          </td>
        )}
      </tr>
    ))}
  </tbody>
);
