import type { DeskStatus, Views } from '../domain/desk.ts';
import type { Picture } from '../domain/picture/picture.ts';
import { captureAnimal, captureTub, findByCode } from '../domain/views/capture-view.ts';

/** One pure function for each view of a part of the desk; a view without one is a type error. */
export type PartShowers<Part extends keyof Views> = {
  readonly [Kind in Part]: (
    ask: Views[Kind]['ask'],
    picture: Picture,
    status: DeskStatus,
  ) => Views[Kind]['view'];
};

/** What comes right after them, with all rules: `whole-night.ts`. */
export type NightKind = 'tonight' | 'moveCounts';

/** What can be shown before anything more is loaded: the capture screen of a label. */
export const firstShowers: PartShowers<'status' | 'code' | 'tub' | 'snake'> = {
  status: (_ask, _picture, status) => status,
  code: findByCode,
  tub: captureTub,
  snake: captureAnimal,
};
