import { appetiteReasons } from './appetite-reasons.ts';
import { clutchReasons } from './clutch-reasons.ts';
import { follicleReasons } from './follicle-reasons.ts';
import { homeReasons } from './home-reasons.ts';
import { layingReasons } from './laying-reasons.ts';
import type { ReasonsFor } from './protocol-value.ts';
import { roomReasons } from './room-reasons.ts';
import { seasonReasons } from './season-reasons.ts';
import { weightReasons } from './weight-reasons.ts';
import type { protocolValues } from './values.ts';
import { windowReasons } from './window-reasons.ts';

/** Why each number of the protocol is as it is, and where it comes from. */
export const valueReasons: ReasonsFor<typeof protocolValues> = {
  ...homeReasons,
  ...follicleReasons,
  ...roomReasons,
  ...seasonReasons,
  ...layingReasons,
  ...windowReasons,
  ...clutchReasons,
  ...weightReasons,
  ...appetiteReasons,
};
