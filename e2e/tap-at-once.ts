import type { Page } from '@playwright/test';

export type Offer = 'ate' | 'refused';

/** One meal offered to a snake that lives in the collection. */
export interface Tap {
  readonly name: string;
  readonly offer: Offer;
}

/**
 * Presses the real buttons from inside the page, so that the next tap comes as soon as the last one
 * is confirmed. Resolves when the screen says that it is written, which must be in other words than
 * those that stood there before.
 */
export const tapAtOnce = (page: Page, route: string, { name, offer }: Tap): Promise<void> =>
  page.evaluate(
    async ([to, who, said, label]) => {
      const buttons = document.getElementsByTagName('button');
      const press = (words: string): boolean => {
        const button = [...buttons].find((each) => each.innerText.startsWith(words));
        button?.click();
        return button !== undefined;
      };
      const isWritten = () =>
        [...document.querySelectorAll('[role=status]')].some((each) =>
          each.textContent.includes(said),
        );
      location.hash = to;
      const steps = [
        () => document.querySelector('h1')?.textContent.startsWith(who) === true && press(label),
        // The second meal of a night is asked about first.
        () => isWritten() || press('Yes, write it'),
        isWritten,
      ];
      for (const isDone of steps) {
        await new Promise<void>((resolve) => {
          const watcher = new MutationObserver(() => tryIt());
          const tryIt = (): void => {
            if (!isDone()) return;
            watcher.disconnect();
            resolve();
          };
          watcher.observe(document.body, { subtree: true, childList: true, characterData: true });
          tryIt();
        });
      }
    },
    [route, name, `${name} ${offer} `, offer === 'ate' ? 'Ate' : 'Refused'] as const,
  );
