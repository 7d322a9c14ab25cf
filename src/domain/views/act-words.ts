import type { Act } from '../rules/rule.ts';

/** What stands behind the number of chores of a kind: "14 to feed". */
export const actWords: Readonly<Record<Act, string>> = {
  settle: 'left overnight',
  'take-out': 'to take out',
  'look-eggs': 'to look at for eggs',
  'look-ovulation': 'to look at for ovulation',
  feed: 'to feed',
  pair: 'to pair',
  scan: 'to scan',
  'nest-box': 'to give a nest box',
  weigh: 'to weigh',
  call: 'to call a vet about',
  check: 'to check',
  look: 'to look at',
};
