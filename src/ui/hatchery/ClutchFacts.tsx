import type { Day } from '../../domain/core/calendar.ts';
import type { ClutchView, Rate } from '../../domain/views/clutch-view.ts';
import { dateWords, dayAndMonthWords } from '../../domain/core/day-words.ts';
import { showMass } from '../mass-unit.ts';

const percent = (share: number): string => `${(100 * share).toFixed(1)} %`;
const whole = (share: number): string => `${Math.round(100 * share)} %`;

const rateWords = ({ hits, of, interval }: Rate): string =>
  `${hits} of ${of}, ${whole(hits / of)} (${whole(interval.low)} to ${whole(interval.high)} likely)`;

const fathersWords = ({ fathers: { isStated, says } }: ClutchView): string => {
  if (says.length === 0) return 'not said';
  return isStated ? says.join(', ') : `${says.join(', ')}; by the records, not stated`;
};

/** What is known of a clutch, each number with what it is of. */
export function ClutchFacts({ view }: { readonly view: ClutchView }) {
  const { counts, window, balance } = view;
  return (
    <dl class="hatchery-facts">
      <dt>Found</dt>
      <dd>
        {view.laid ? dateWords(view.laid) : 'not on record'}
        {view.notBefore &&
          `; none yet at the look of ${dayAndMonthWords(view.notBefore.slice(0, 10) as Day)}`}
      </dd>
      <dt>Eggs</dt>
      <dd>
        {counts.laid ?? '–'} laid: {counts.good ?? '–'} good, {counts.slugs} slugs
        {counts.dead > 0 && `, ${counts.dead} dead since`}
        {counts.inShell !== undefined && `; ${counts.inShell} in the shell now`}
      </dd>
      {view.goodRate && (
        <>
          <dt>Good</dt>
          <dd>{rateWords(view.goodRate)}</dd>
        </>
      )}
      {view.hatchRate && (
        <>
          <dt>Hatched</dt>
          <dd>{rateWords(view.hatchRate)} of the good</dd>
        </>
      )}
      {view.clutchG !== undefined && (
        <>
          <dt>Clutch</dt>
          <dd>
            {showMass(view.clutchG)}
            {view.relative.map(({ of, share }) => `; ${percent(share)} of ${of}`)}
          </dd>
        </>
      )}
      {balance && (
        <>
          <dt>Weights</dt>
          <dd>
            {showMass(view.beforeG ?? 0)}{' '}
            {view.beforeDays === 0 ? 'that night' : `${view.beforeDays} days before`},{' '}
            {showMass(view.afterG ?? 0)} after:{' '}
            {balance.agrees
              ? 'they agree with the eggs.'
              : `the eggs weigh ${showMass(Math.abs(Math.round(balance.overG)))} ${balance.overG > 0 ? 'more' : 'less'} than she lost. One weight is off, or she drank or fasted in between.`}
          </dd>
        </>
      )}
      <dt>Fathers</dt>
      <dd>{fathersWords(view)}</dd>
      <dt>Stands</dt>
      <dd>{view.incubator ?? (view.withHer ? 'with her' : 'not said')}</dd>
      {window && (
        <>
          <dt>First pip</dt>
          <dd>
            <strong>
              {dayAndMonthWords(window.from)} to {dayAndMonthWords(window.to)}
            </strong>
            , most likely {dayAndMonthWords(window.likely)}, with four chances in five. Day{' '}
            {view.day}; {window.developedDays.toFixed(1)} as at 31.5 °C, {whole(window.readShare)}{' '}
            of the time read.{' '}
            {window.ownClutches === 0
              ? 'By what keepers report.'
              : `${window.ownClutches} of your own clutches count.`}
            {window.beyondHours >= 1 &&
              ` ${Math.round(window.beyondHours)} h were hotter than anything development is known for.`}
            {window.isPast && ' Looks and dates leave no day: one of them is wrong.'}
          </dd>
        </>
      )}
      {view.withHer && (
        <>
          <dt>First pip</dt>
          <dd>She keeps them warm as she likes, and nobody reads it: look from day 52 on.</dd>
        </>
      )}
      {view.powerCuts.length > 0 && (
        <>
          <dt>Heat</dt>
          {view.powerCuts.map((words) => (
            <dd key={words}>{words}</dd>
          ))}
        </>
      )}
    </dl>
  );
}
