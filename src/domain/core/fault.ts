export type FaultCode =
  'storage-failed' | 'storage-full' | 'backup-too-large' | 'not-a-picture' | 'no-plan';

/**
 * The world outside the program let us down: a full disk, a damaged file.
 *
 * `message` says what happened and to what; `remedy` says what the person can do now.
 * Thrown by the outer layers and shown by the page. A broken promise inside the program is not a
 * Fault: that is a bug, and stays an ordinary Error.
 */
export class Fault extends Error {
  override readonly name = 'Fault';
  readonly code: FaultCode;
  readonly remedy: string;

  constructor(code: FaultCode, message: string, remedy: string, cause?: unknown) {
    super(message, { cause });
    this.code = code;
    this.remedy = remedy;
  }
}

/** Closes a switch over a union; adding a member turns this call into a type error. */
export function assertNever(value: never): never {
  throw new Error(`Unhandled case: ${JSON.stringify(value)}`);
}
