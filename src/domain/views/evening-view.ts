import type { Day } from '../core/calendar.ts';
import type { Picture } from '../picture/picture.ts';
import { acts } from '../rules/rule.ts';
import { actWords } from './act-words.ts';
import { tonightView } from './tonight-view.ts';

/** Tonight in two lines, for a notification on a locked screen and the number on the app's icon. */
export interface EveningView {
  readonly night: Day;
  readonly title: string;
  readonly body: string;
  /** Everything the two lines count together; 0 on a free evening. */
  readonly count: number;
  readonly alarms: number;
}
/**
 * What tonight asks, from the same list the screen shows. Strangers read locked screens: it holds
 * counts and what an alarm asks, and no rule's alarm may name a person.
 */
export function eveningView(picture: Picture): EveningView {
  const { night, rooms, alarms: ofSnakes, counts } = tonightView(picture);
  const alarms = [
    ...rooms.map(({ name, asks }) => `${name}: ${asks}`),
    ...ofSnakes.map(({ asks }) => asks),
  ];
  const chores = acts.reduce((sum, act) => sum + counts[act], 0);
  const alarmWords =
    alarms.length === 0 ? '' : alarms.length === 1 ? '1 alarm' : `${alarms.length} alarms`;
  const choreWords = chores === 0 ? '' : `${chores} to do`;
  const lines = [
    ...alarms,
    acts
      .filter((act) => counts[act] > 0)
      .map((act) => `${counts[act]} ${actWords[act]}`)
      .join(', '),
  ];
  return {
    night,
    title: `Tonight: ${[alarmWords, choreWords].filter((words) => words !== '').join(', ') || 'nothing to do'}`,
    body: lines.filter((line) => line !== '').join('\n'),
    count: chores + alarms.length,
    alarms: alarms.length,
  };
}
