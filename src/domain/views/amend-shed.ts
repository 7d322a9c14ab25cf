import type { Draft, EventOf } from '../events/event.ts';
import type { Picture } from '../picture/picture.ts';
import { preLayShed } from '../season/pre-lay.ts';

/** A correction of one tap, and how it is asked for. */
export interface Amendment {
  /** "It was not the pre-lay shed" */
  readonly asks: string;
  readonly draft: Draft;
}

/**
 * What was or was not the pre-lay shed shows only later. The same shed is written once more, with
 * its own date, and stands in for the first; undefined where the question makes no sense.
 */
export function amendShed(shed: EventOf<'shed'>, picture: Picture): Amendment | undefined {
  const animal = picture.animal(shed.animal);
  if (animal?.sex !== 'female') return undefined;
  const { season } = animal;
  if (!season?.sheds.some(({ id }) => id === shed.id)) return undefined;
  const { protocol, nightOf } = picture.facts;
  const taken = preLayShed(season, protocol, nightOf);
  const was = shed.preLay ?? taken?.shed.id === shed.id;
  const reason = was ? 'not the pre-lay shed' : 'the pre-lay shed';
  const { type, quality, remark, at, precision, notBefore, place } = shed;
  return {
    asks: `It was ${reason}`,
    draft: {
      type,
      animal: shed.animal,
      quality,
      preLay: !was,
      at,
      precision,
      ...(remark === undefined ? {} : { remark }),
      ...(notBefore === undefined ? {} : { notBefore }),
      ...(place === undefined ? {} : { place }),
      replaces: { id: shed.id, reason: `It was ${reason}` },
    },
  };
}
