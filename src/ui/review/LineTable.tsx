import type { ComponentChildren } from 'preact';
import { lineShares, type LineShare, type ReviewLine } from '../../domain/views/review-view.ts';
import { intervalText, shareText } from './figure-text.ts';

export const columnWords: Readonly<Record<LineShare, string>> = {
  laidOfPaired: 'Laid of paired',
  lockedOfVisits: 'Visits with a lock',
  goodOfEggs: 'Good of eggs',
  slugsOfEggs: 'Slugs of eggs',
  hatchedOfGood: 'Hatched of good',
  refusedOfOffers: 'Refused of offers',
};

/** One line for each; every share with what it is of and its interval. */
export function LineTable({
  what,
  lines,
  nameOf,
}: {
  readonly what: string;
  readonly lines: readonly ReviewLine[];
  /** The name as a way to more of it. */
  readonly nameOf: (line: ReviewLine) => ComponentChildren;
}) {
  return (
    <div class="review-table">
      <table class="numbers">
        <thead>
          <tr>
            <th scope="col">{what}</th>
            <th scope="col">Clutches</th>
            {lineShares.map((share) => (
              <th scope="col" key={share}>
                {columnWords[share]}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {lines.map((line) => (
            <tr key={line.id}>
              <th scope="row">{nameOf(line)}</th>
              <td class="number">{line.clutches}</td>
              {lineShares.map((share) => (
                <td class="number" key={share}>
                  {line.rates[share].of === 0 ? (
                    '–'
                  ) : (
                    <>
                      {line.rates[share].hits} of {line.rates[share].of},{' '}
                      {shareText(line.rates[share])}
                      <br />
                      <span class="quiet small">{intervalText(line.rates[share])}</span>
                    </>
                  )}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
