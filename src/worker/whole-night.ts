import type { Picture } from '../domain/picture/picture.ts';
import { rules } from '../domain/rules/all.ts';
import { tonightView, type TonightView } from '../domain/views/tonight-view.ts';

// What a night asks for in full. A capture screen stands without it: its buttons hang on the rules
// that the desk has from the start.

export const askByAllRules = (picture: Picture): void => picture.askBy(rules);

export function wholeNight(picture: Picture): TonightView {
  askByAllRules(picture);
  return tonightView(picture);
}
