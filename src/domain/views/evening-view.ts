import type { Day } from '../core/calendar.ts';
import type { Picture } from '../picture/picture.ts';
import { acts } from '../rules/rule.ts';
import { actWords } from './act-words.ts';
import { hatcheryView, type EggChore } from './hatchery-view.ts';
import { tonightView } from './tonight-view.ts';

/** Tonight in a few lines, for a notification on a locked screen and the number on the app's icon. */
export interface EveningView {
  readonly night: Day;
  readonly title: string;
  readonly body: string;
  /** Everything the lines count together; 0 on a free evening. */
  readonly count: number;
  readonly alarms: number;
}

/** More lines than this a locked screen does not show. */
const MOST_LINES = 5;

/**
 * What tonight asks, from the same lists the screen shows, the most urgent first: eggs without heat
 * have hours. Strangers read locked screens: it holds counts and what an alarm asks, and no rule's
 * alarm may name a person.
 */
export function eveningView(picture: Picture): EveningView {
  const { night, rooms, alarms: ofSnakes, counts } = tonightView(picture);
  const eggs = eggWords(picture);
  const alarms = [
    ...eggs.incubators,
    ...rooms.map(({ name, asks }) => `${name}: ${asks}`),
    ...ofSnakes.map(({ asks }) => asks),
    ...eggs.clutches,
  ];
  const chores = acts.reduce((sum, act) => sum + counts[act], 0) + eggs.chores;
  const alarmWords =
    alarms.length === 0 ? '' : alarms.length === 1 ? '1 alarm' : `${alarms.length} alarms`;
  const choreWords = chores === 0 ? '' : `${chores} to do`;
  const unsaid = alarms.length - MOST_LINES;
  const lines = [
    ...alarms.slice(0, MOST_LINES),
    ...(unsaid > 0 ? [`and ${unsaid} more`] : []),
    [
      ...acts.filter((act) => counts[act] > 0).map((act) => `${counts[act]} ${actWords[act]}`),
      ...(eggs.chores > 0 ? [`${eggs.chores} for eggs`] : []),
    ].join(', '),
  ];
  return {
    night,
    title: `Tonight: ${[alarmWords, choreWords].filter((words) => words !== '').join(', ') || 'nothing to do'}`,
    body: lines.filter((line) => line !== '').join('\n'),
    count: chores + alarms.length,
    alarms: alarms.length,
  };
}

/** Young that pipped and do not follow have no more time than an alarm. */
const isUrgent = ({ alarm, rule }: EggChore): boolean => alarm || rule === 'C4';

function eggWords(picture: Picture) {
  const { incubators, open } = hatcheryView(picture);
  const warming = incubators.flatMap(({ chores }) => chores);
  const laid = open.flatMap(({ dam, chores }) => chores.map((chore) => ({ dam, chore })));
  return {
    incubators: warming.filter(isUrgent).map(({ asks }) => asks),
    clutches: laid
      .filter(({ chore }) => isUrgent(chore))
      .map(({ dam, chore }) => `Eggs of ${dam}: ${chore.asks}`),
    chores: [...warming, ...laid.map(({ chore }) => chore)].filter((each) => !isUrgent(each))
      .length,
  };
}
