import type { EventOf } from '../events/event.ts';
import type { Picture } from '../picture/picture.ts';

/** Who may be the father of a clutch, as the keeper stated it. */
export type StatedFathers = Pick<EventOf<'paternity-stated'>, 'clutch' | 'sires'>;

/** Of all clutches on record; the same records as long as none is added. */
export const statedFathers = ({ ledger }: Pick<Picture, 'ledger'>): readonly StatedFathers[] =>
  [...ledger.subjects.values()].flatMap((each) =>
    'kind' in each && each.kind === 'clutch' && each.paternity ? [each.paternity] : [],
  );

export const isSameStated = (a: readonly StatedFathers[], b: readonly StatedFathers[]): boolean =>
  a.length === b.length && a.every((each, n) => each === b[n]);

/**
 * What was stated of the clutch one hatched from, where its own parents say the same males: with them
 * a male that is not on record, or none at all, is a possible father of it as well.
 */
export function statedFor(
  {
    hatched,
    sires,
  }: {
    readonly hatched?: { readonly clutch: string } | undefined;
    readonly sires: readonly string[];
  },
  stated: readonly StatedFathers[],
): StatedFathers | undefined {
  const own = hatched && stated.find(({ clutch }) => clutch === hatched.clutch);
  const males = (own?.sires ?? []).flatMap(({ male }) =>
    male === 'unknown' || male === 'none' ? [] : [male],
  );
  const isSame = males.length === sires.length && males.every((male) => sires.includes(male));
  return own && isSame ? own : undefined;
}
