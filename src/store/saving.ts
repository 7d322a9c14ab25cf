import { Fault } from '../domain/core/fault.ts';

/**
 * Runs a write, and says in plain words what the device refused.
 *
 * Errors: throws a Fault, `storage-full` or `storage-failed`, that names what was to be saved.
 */
export async function saving<Answer>(what: string, work: () => Promise<Answer>): Promise<Answer> {
  try {
    return await work();
  } catch (cause) {
    const isFull = cause instanceof DOMException && cause.name === 'QuotaExceededError';
    throw new Fault(
      isFull ? 'storage-full' : 'storage-failed',
      isFull
        ? `This device is full: ${what} could not be saved.`
        : `Could not save ${what} on this device.`,
      isFull
        ? 'Free some space, then try again. What was saved before is safe.'
        : 'Try again. What was saved before is safe.',
      cause,
    );
  }
}
