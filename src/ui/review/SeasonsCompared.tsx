import { useState } from 'preact/hooks';
import { lineShares, type LineShare, type ReviewLine } from '../../domain/views/review-view.ts';
import { Unfolds } from '../components/Unfolds.tsx';
import { intervalText, shareText } from './figure-text.ts';
import { columnWords, LineTable } from './LineTable.tsx';
import { ShareStrip } from './strips.tsx';

/** One share through the seasons, one strip for each. */
export function SeasonsCompared({
  seasons,
  onPick,
}: {
  readonly seasons: readonly ReviewLine[];
  readonly onPick: (season: string) => void;
}) {
  const [share, setShare] = useState<LineShare>('laidOfPaired');
  if (seasons.length === 0) return <p class="quiet">No season with pairs on record yet.</p>;
  return (
    <>
      <label>
        Share
        <select
          value={share}
          onChange={({ currentTarget }) => setShare(currentTarget.value as LineShare)}
        >
          {lineShares.map((each) => (
            <option key={each} value={each}>
              {columnWords[each]}
            </option>
          ))}
        </select>
      </label>
      <ol class="review-seasons" aria-label={`${columnWords[share]}, by season`}>
        {seasons.map(({ id, name, rates }) => (
          <li key={id}>
            <strong class="number">{name}</strong>
            <ShareStrip figure={rates[share]} />
            <span class="small number">
              {rates[share].of === 0
                ? 'none counted'
                : `${shareText(rates[share])}, ${rates[share].hits} of ${rates[share].of}, ${intervalText(rates[share])} likely`}
            </span>
          </li>
        ))}
      </ol>
      <p class="small quiet">From 0 to 100 %. Where bands overlap, the seasons may be alike.</p>
      <Unfolds summary="All shares as a table">
        {() => (
          <LineTable
            what="Season"
            lines={seasons}
            nameOf={({ id, name }) => (
              <button type="button" class="pill" onClick={() => onPick(id)}>
                {name}
              </button>
            )}
          />
        )}
      </Unfolds>
    </>
  );
}
