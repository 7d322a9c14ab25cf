import { protocolValues, type ProtocolKey } from './values.ts';

/** Values of which none may be more than the next: a plan that has them otherwise says nothing. */
const told: readonly (readonly ProtocolKey[])[] = [
  ['hatchlingBelowG', 'adultFromG'],
  ['maleStayDays', 'maleForgottenDays'],
  ['maleRestDays', 'maleThinRestDays'],
  ['youngMaleFemales', 'maleFemales'],
  ['maleLossWatchShare', 'maleLossStopShare'],
  ['paceLossShare', 'lossActShare'],
  ['hatchlingLossWatchShare', 'hatchlingLossActShare'],
  ['fastLossLowShare', 'fastLossHighShare'],
  ['arrivalRefusalDays', 'arrivalRefusalActDays'],
  ['pairFromMm', 'pairStopMm'],
  ['largeFromMm', 'dailyLooksFromMm'],
  ['feltSmallMm', 'feltRoundMm', 'feltLargeMm', 'feltEggMm'],
  ['ovulationToShedFromDays', 'ovulationToShedUntilDays'],
  ['eggLookFromShedDays', 'layLateFromShedDays', 'layUrgentFromShedDays'],
  ['eggTooColdC', 'eggLowC', 'eggHighC', 'eggTooHotC', 'eggHotAtOnceC'],
  ['pipLookFromDays', 'pipOverdueDays'],
  ['boxAirLateDays', 'boxAirDays'],
  ['eggsLeftCallHours', 'eggsLeftUrgentHours'],
  ['eggLookFromOvulationDays', 'layLateFromOvulationDays', 'layUrgentFromOvulationDays'],
];

const isKey = (key: string): key is ProtocolKey => Object.hasOwn(protocolValues, key);

/** The five numbers of each link of a season, shortest first. */
const links = Object.keys(protocolValues)
  .filter((key) => key.endsWith('NeverBeforeDays'))
  .map((key) => key.replace('NeverBeforeDays', ''))
  .map((link) =>
    ['NeverBefore', 'Early', 'Likely', 'Late', 'NeverAfter']
      .map((part) => `${link}${part}Days`)
      .filter(isKey),
  );

export const valueOrders: readonly (readonly ProtocolKey[])[] = [...told, ...links];
