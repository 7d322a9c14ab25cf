// @ts-check
import { openScanner } from '../../../src/scan/scanner.ts';

// The scanner with nothing around it, for tests to drive. It is built on its own and never shipped.

/** @type {{ text: string, atMs: number }[]} */
const read = [];
/** @type {Set<() => void>} */
const waiting = new Set();
/** @type {string[]} */
const violations = [];
document.addEventListener('securitypolicyviolation', (event) => {
  violations.push(`${event.effectiveDirective} ${event.blockedURI}`);
});

/** @param {string} text */
function onText(text) {
  read.push({ text, atMs: performance.now() });
  for (const look of waiting) look();
}

Object.assign(window, {
  scanPage: {
    read,
    violations,
    /** @param {Omit<import('../../../src/scan/scanner.ts').ScanOptions, 'onText'>} [options] */
    open: (options) =>
      openScanner(/** @type {HTMLElement} */ (document.querySelector('#box')), {
        ...options,
        onText,
      }),
    /**
     * @param {string} text
     * @param {number} withinMs
     */
    whenRead: (text, withinMs) =>
      new Promise((resolve) => {
        const look = () => {
          const found = read.find((each) => each.text === text);
          if (found) end(found.atMs);
        };
        /** @param {number} [atMs] */
        const end = (atMs) => {
          waiting.delete(look);
          clearTimeout(timer);
          resolve(atMs);
        };
        const timer = setTimeout(end, withinMs, undefined);
        waiting.add(look);
        look();
      }),
  },
});
