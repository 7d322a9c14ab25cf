import type { Lane, LaneMark } from '../../domain/views/lanes-view.ts';
import { dateWords } from '../../domain/core/day-words.ts';

/** What comes next, in a few words; where nothing is forecast, where she stands. */
export function nextWords({ windows, stage }: Lane): string {
  const [next] = windows;
  if (!next) return stage;
  if (next.isPast) return `${next.event}: dates clash`;
  return next.isOverdue ? `${next.event} overdue, ${next.span}` : `${next.event} ${next.span}`;
}

/** "scan 12.3 mm, 3 Nov 2026" */
export function markWords({ kind, night, mm }: LaneMark): string {
  const size = mm === undefined ? '' : ` ${mm} mm`;
  return `${kind === 'none seen' ? 'scan: none seen' : kind}${size}, ${dateWords(night)}`;
}
