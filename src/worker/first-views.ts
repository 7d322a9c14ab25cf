import type { DeskStatus, Views } from '../domain/desk.ts';
import type { Picture } from '../domain/picture/picture.ts';
import { captureAnimal, captureTub, findByCode } from '../domain/views/capture-view.ts';
import { tonightView } from '../domain/views/tonight-view.ts';

type FirstKind = 'status' | 'tonight' | 'code' | 'tub' | 'snake';

type FirstShower<Kind extends FirstKind> = (
  ask: Views[Kind]['ask'],
  picture: Picture,
  status: DeskStatus,
) => Views[Kind]['view'];

/** What a start can need at once: the list of tonight, and the capture screen of a label. */
export const firstShowers: { readonly [Kind in FirstKind]: FirstShower<Kind> } = {
  status: (_ask, _picture, status) => status,
  tonight: (_ask, picture) => tonightView(picture),
  code: findByCode,
  tub: captureTub,
  snake: captureAnimal,
};
