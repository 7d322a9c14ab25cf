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
  link,
  shares = lineShares,
}: {
  readonly what: string;
  readonly lines: readonly ReviewLine[];
  readonly link?: ((id: string) => string) | undefined;
  readonly shares?: readonly LineShare[];
}) {
  return (
    <div class="review-table" tabIndex={0} role="region" aria-label={`${what}, table`}>
      <table class="numbers">
        <thead>
          <tr>
            <th scope="col">{what}</th>
            <th scope="col">Clutches</th>
            {shares.map((share) => (
              <th scope="col" key={share}>
                {columnWords[share]}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {lines.map(({ id, name, clutches, rates }) => (
            <tr key={id}>
              <th scope="row">{link ? <a href={link(id)}>{name}</a> : name}</th>
              <td class="number">{clutches}</td>
              {shares.map((share) => (
                <td class="number" key={share}>
                  {rates[share].of === 0 ? (
                    '–'
                  ) : (
                    <>
                      {rates[share].hits} of {rates[share].of}, {shareText(rates[share])}
                      <br />
                      <span class="quiet small">{intervalText(rates[share])}</span>
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
