/** A page that is not in view paints nothing, and its program must not wait for it. */
const PATIENCE_MS = 300;

/** Resolves once what the page holds now has been painted. */
export const painted = (): Promise<void> =>
  new Promise((resolve) => {
    setTimeout(resolve, PATIENCE_MS);
    requestAnimationFrame(() => {
      // A message sent from within a frame is heard once that frame has been laid out and painted.
      const { port1, port2 } = new MessageChannel();
      port1.addEventListener('message', () => resolve());
      port1.start();
      port2.postMessage(null);
    });
  });
