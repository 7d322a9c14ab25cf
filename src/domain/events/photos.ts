import * as z from 'zod/mini';
import { AnimalId, EventId, PhotoId } from './fields.ts';
import { event, remark } from './envelope.ts';

/** The largest picture that is kept; one of 1,280 px takes about a twentieth of it. */
const MOST_BYTES = 4_000_000;

export const photoEvents = [
  /**
   * A picture was kept on this device, apart from the log: the log of ten years must stay small
   * enough to read and to carry. On another device the record stands, and the picture is missing.
   */
  event('photo-kept', 1, {
    animal: AnimalId,
    photo: PhotoId,
    /** The record it shows. */
    about: z.optional(EventId),
    bytes: z.int().check(z.gte(1), z.lte(MOST_BYTES)),
    remark,
  }),
] as const;
