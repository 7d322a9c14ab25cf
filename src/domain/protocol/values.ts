import { appetiteValues } from './appetite-values.ts';
import { clutchValues } from './clutch-values.ts';
import { follicleValues } from './follicle-values.ts';
import { homeValues } from './home-values.ts';
import { layingValues } from './laying-values.ts';
import type { ProtocolValue } from './protocol-value.ts';
import { roomValues } from './room-values.ts';
import { seasonValues } from './season-values.ts';
import { weightValues } from './weight-values.ts';
import { windowValues } from './window-values.ts';

/**
 * Every number the rules and forecasts work with, by subject. Data: no rule holds a number of its
 * own.
 */
export const protocolValues = {
  ...homeValues,
  ...follicleValues,
  ...roomValues,
  ...seasonValues,
  ...layingValues,
  ...windowValues,
  ...clutchValues,
  ...weightValues,
  ...appetiteValues,
} as const satisfies Record<string, ProtocolValue>;

export type ProtocolKey = keyof typeof protocolValues;

/** The numbers alone, as rules read them. */
export type Protocol = Readonly<Record<ProtocolKey, number>>;

export const defaultProtocol = Object.fromEntries(
  Object.entries(protocolValues).map(([key, { value }]) => [key, value]),
) as Protocol;
