/**
 * A script to be put before another one's, or before a page's: the clock it reads starts elsewhere.
 *
 * `start` is an expression for milliseconds since 1970, such as `Date.parse('2026-03-28T23:40Z')`.
 */
const clockAhead = (start: string): string => `{
  const RealDate = Date;
  const aheadMs = ${start} - RealDate.now();
  globalThis.Date = class extends RealDate {
    constructor(...given) {
      super(...(given.length === 0 ? [RealDate.now() + aheadMs] : given));
    }
    static now() {
      return RealDate.now() + aheadMs;
    }
  };
}`;

/** From a moment on. */
export const clockFrom = (iso: string): string => clockAhead(String(Date.parse(iso)));

/** From eight in the evening of this day on, wherever the browser is. */
export const clockFromEvening = (): string => clockAhead('new Date().setHours(20, 0, 0, 0)');
