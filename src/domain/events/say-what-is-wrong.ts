import * as z from 'zod/mini';

/**
 * Gives the checker its words. The small build of zod comes without any, and only those who read
 * another's records need them: forms of this app cannot be filled in wrongly in these ways.
 */
export const sayWhatIsWrong = (): void => {
  z.config(z.locales.en());
};
