import type { Day } from '../../domain/core/calendar.ts';
import type { ComingWindow } from '../../domain/views/window-words.ts';

const HEIGHT = 18;
/** Without a margin, the first and last day would lie on the edge. */
const MARGIN_DAYS = 2;

const dayOf = (day: Day): number => Date.parse(`${day}T00:00:00Z`) / 86_400_000;

/** The time axis that the windows of one snake share, from tonight to the last of them. */
export function axisOf(
  night: Day,
  windows: readonly ComingWindow[],
): { readonly from: number; readonly days: number; readonly tonight: number } {
  const from = Math.min(dayOf(night), ...windows.map((each) => dayOf(each.from))) - MARGIN_DAYS;
  const to = Math.max(dayOf(night), ...windows.map((each) => dayOf(each.to))) + MARGIN_DAYS;
  return { from, days: to - from + 1, tonight: dayOf(night) };
}

/** One window on that axis: a low roof, highest over the likeliest day. The words beside it say the same. */
export function WindowBar({
  window: { from, likely, to },
  axis,
}: {
  readonly window: ComingWindow;
  readonly axis: ReturnType<typeof axisOf>;
}) {
  const [left, ridge, right] = [dayOf(from), dayOf(likely) + 0.5, dayOf(to) + 1].map(
    (day) => day - axis.from,
  );
  const tonight = axis.tonight + 0.5 - axis.from;
  return (
    <svg
      class="window-bar"
      viewBox={`0 0 ${axis.days} ${HEIGHT}`}
      preserveAspectRatio="none"
      aria-hidden="true"
    >
      <path class="strip-month" d={`M0 ${HEIGHT - 1}H${axis.days}`} />
      <path class="tent tent-solid" d={`M${left} ${HEIGHT}V9L${ridge} 2L${right} 9V${HEIGHT}Z`} />
      <path class="strip-tonight" stroke-width={2} d={`M${tonight} 0V${HEIGHT}`} />
    </svg>
  );
}
