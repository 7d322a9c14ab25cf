import type { Picture } from '../domain/picture/picture.ts';
import { rules } from '../domain/rules/all.ts';
import { moveCounts } from '../domain/views/move-counts.ts';
import { tonightView } from '../domain/views/tonight-view.ts';
import type { NightKind, PartShowers } from './first-views.ts';

// What a night asks for in full. A capture screen stands without it: its buttons hang on the rules
// that the desk has from the start.

export const askByAllRules = (picture: Picture): void => picture.askBy(rules);

/** The list of tonight, and all that stands on its screen. */
export const nightShowers: PartShowers<NightKind> = {
  tonight(_ask, picture) {
    askByAllRules(picture);
    return tonightView(picture);
  },
  moveCounts: (_ask, picture) => moveCounts(picture),
};
