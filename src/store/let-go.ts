/**
 * Gives the memory of bytes back at once; they are empty from then on. The browser's own clearing-up
 * waits for hundreds of megabytes of them, which a phone does not have.
 */
export function letGo(bytes: Uint8Array): void {
  // Some browsers cannot do it yet; there they wait to be cleared up.
  (bytes.buffer as { transfer?: (bytes: number) => unknown }).transfer?.(0);
}
