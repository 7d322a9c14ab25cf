import type { DeskStatus, Views } from '../domain/desk.ts';
import type { Picture } from '../domain/picture/picture.ts';
import { captureAnimal, captureTub, findByCode } from '../domain/views/capture-view.ts';

type FirstKind = 'status' | 'code' | 'tub' | 'snake';

type FirstShower<Kind extends FirstKind> = (
  ask: Views[Kind]['ask'],
  picture: Picture,
  status: DeskStatus,
) => Views[Kind]['view'];

/** What can be shown before anything more is loaded: the capture screen of a label. */
export const firstShowers: { readonly [Kind in FirstKind]: FirstShower<Kind> } = {
  status: (_ask, _picture, status) => status,
  code: findByCode,
  tub: captureTub,
  snake: captureAnimal,
};
