import type { AnimalId, ClutchId, Minter, PhotoId, TubId } from '../core/ids.ts';
import { ok, refuse, type Result } from '../core/result.ts';
import type { Draft, EventOf } from '../events/event.ts';
import type { Sex } from '../events/life.ts';
import type { Picture } from '../picture/picture.ts';
import { clutchFathers, malesAmong } from '../rotation/paternity.ts';
import type { Clutch } from '../state/clutch.ts';
import { freshCodes } from './new-rack.ts';

/** One that came out, as it is written down beside its egg box. */
export interface NewHatchling {
  readonly clutch: ClutchId;
  readonly name: string;
  readonly sex: Sex;
  readonly sexedBy?: EventOf<'identified'>['sexedBy'];
  readonly massG?: number | undefined;
  /** How it looks, as the keeper writes it. */
  readonly traits?: string | undefined;
  readonly defects: EventOf<'hatched'>['defects'];
  readonly tub?: TubId | undefined;
  /** Laid by already. */
  readonly picture?: { readonly photo: PhotoId; readonly bytes: number } | undefined;
}

/**
 * The records that make a hatchling an animal of its clutch: arrival, parents, sex, weight, tub and the
 * code of its label. `chance` gives numbers from 0 up to 1.
 *
 * Errors: refuses a clutch that is not known, a name that another living animal has, and a tub that is
 * taken.
 */
export function newHatchlingDrafts(
  { clutch: id, name, sex, sexedBy, massG, traits, defects, tub, picture: kept }: NewHatchling,
  picture: Picture,
  mint: Minter,
  chance: () => number,
): Result<{ readonly animal: AnimalId; readonly drafts: readonly Draft[] }> {
  const clutch = picture.ledger.subjects.get(id) as Clutch | undefined;
  if (!clutch) return refuse('no-such-clutch', 'That clutch is not on record.');
  if (picture.living().some((each) => each.name === name)) {
    return refuse('name-taken', `There is a ${name} already.`);
  }
  if (tub !== undefined && picture.ownersOf(tub).length > 0) {
    return refuse('position-taken', `${picture.position(tub) ?? 'That tub'} is taken.`);
  }
  const animal = mint.animal();
  const { dam } = clutch;
  const males = [...malesAmong(clutchFathers(clutch, picture).sires)];
  const [code] = freshCodes(1, picture, chance);
  return ok({
    animal,
    drafts: [
      {
        type: 'arrived',
        animal,
        name,
        sex,
        hatchedDay: picture.facts.night,
        origin: 'own',
        ...(traits === undefined ? {} : { traits }),
      },
      { type: 'hatched', animal, clutch: id, defects: [...defects] },
      ...(dam === undefined
        ? []
        : [{ type: 'parents-stated', animal, dam, sires: males } as const]),
      ...(sexedBy === undefined ? [] : [{ type: 'identified', animal, sex, sexedBy } as const]),
      ...(massG === undefined ? [] : [{ type: 'weighed', animal, massG } as const]),
      ...(kept === undefined ? [] : [{ type: 'photo-kept', animal, ...kept } as const]),
      ...(tub === undefined ? [] : [{ type: 'moved', animal, tub } as const]),
      ...(code === undefined
        ? []
        : [{ type: 'label-assigned', code, to: { kind: 'animal', animal } } as const]),
    ],
  });
}
