import type { Draft } from '../../domain/events/event.ts';
import { addDays, type Day } from '../../domain/core/calendar.ts';
import type { PlannedVisit } from '../../domain/views/plan-view.ts';
import { Unfolds } from '../components/Unfolds.tsx';

import { useModel } from '../model.ts';
import { nightWords } from '../night.ts';
import { MoveVisit } from './MoveVisit.tsx';

type Rule = Extract<Draft, { type: 'visit-ruled' }>['rule'];

/** One visit of the plan, in words, and what the keeper may do with it. */
export function PlanLine({ visit }: { readonly visit: PlannedVisit }) {
  const { write } = useModel();
  const { male, female, maleName, femaleName } = visit;
  const rule = (next: Rule, words: string) =>
    void write({
      drafts: [{ type: 'visit-ruled', male, female, rule: next }],
      words: `${maleName} with ${femaleName}: ${words}`,
    });
  const pin = (by: number): Rule => ({
    kind: 'pinned',
    in: addDays(visit.in, by),
    out: addDays(visit.out, by),
  });
  return (
    <li class="board-row">
      <p class="board-head">
        <strong>
          {maleName} to {femaleName}
        </strong>
        {visit.isPinned && <span class="quiet small">pinned</span>}
      </p>
      <p class="number">{spanWords(visit.in, visit.out, visit.isUnderWay)}</p>
      <p class="small quiet number">
        {visit.isUnderWay
          ? `${visit.femalePosition ?? '–'} · there now`
          : `${visit.malePosition ?? '–'} → ${visit.femalePosition ?? '–'}`}{' '}
        · {visit.choice}
      </p>
      {!visit.isUnderWay && <MoveVisit visit={visit} />}
      {!visit.isUnderWay && (
        <Unfolds summary="Change">
          {() => (
            <div class="chips">
              {visit.isPinned ? (
                <button
                  type="button"
                  class="pill"
                  onClick={() => rule({ kind: 'free' }, 'unpinned')}
                >
                  Unpin
                </button>
              ) : (
                <button type="button" class="pill" onClick={() => rule(pin(0), 'pinned')}>
                  Pin
                </button>
              )}
              <button type="button" class="pill" onClick={() => rule(pin(-1), 'moved')}>
                One evening sooner
              </button>
              <button type="button" class="pill" onClick={() => rule(pin(1), 'moved')}>
                One evening later
              </button>
              <button
                type="button"
                class="pill"
                onClick={() => rule({ kind: 'apart' }, 'kept apart')}
              >
                Keep apart
              </button>
            </div>
          )}
        </Unfolds>
      )}
    </li>
  );
}

const spanWords = (from: Day, to: Day, isUnderWay: boolean): string =>
  `${isUnderWay ? 'In since' : 'In on'} ${nightWords(from)}, out on ${nightWords(to)}`;
