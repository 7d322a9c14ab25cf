/** Why there is no scanner, so far as a keeper can do something about it. */
export type ScanTrouble =
  /** The keeper, the browser or a policy said no. */
  | 'not-allowed'
  /** There is none, or none of the kind that was asked for. */
  | 'no-camera'
  /** Another program has it, or it does not start. */
  | 'busy'
  /** Browsers give a camera only to pages from https or from this device itself. */
  | 'insecure'
  /** This browser has no way to ask for a camera. */
  | 'unsupported'
  /** Something else; trying again may help. */
  | 'failed';

/**
 * What each name of a DOMException from `getUserMedia` comes to.
 *
 * Source: https://www.w3.org/TR/mediacapture-streams/#dom-mediadevices-getusermedia (from memory).
 * The last four are what older Chromium said instead:
 * https://blog.addpipe.com/common-getusermedia-errors/
 */
const BY_NAME: Readonly<Record<string, ScanTrouble>> = {
  NotAllowedError: 'not-allowed',
  SecurityError: 'not-allowed',
  NotFoundError: 'no-camera',
  OverconstrainedError: 'no-camera',
  NotReadableError: 'busy',
  AbortError: 'busy',
  NotSupportedError: 'unsupported',
  PermissionDeniedError: 'not-allowed',
  DevicesNotFoundError: 'no-camera',
  ConstraintNotSatisfiedError: 'no-camera',
  TrackStartError: 'busy',
};

/** Says html5-qrcode 2.3.8 (its strings.js), when `navigator.mediaDevices` is missing. */
const NO_STREAMING = 'Camera streaming not supported';

/**
 * What an error from opening a camera comes to, `failed` when nothing in it is known.
 *
 * html5-qrcode throws away the error it got and rejects with a sentence that has its name inside,
 * so the name is looked for in the text as well.
 */
export function troubleOf(error: unknown): ScanTrouble {
  const said = error instanceof Error ? `${error.name}: ${error.message}` : String(error);
  if (said.includes(NO_STREAMING)) return 'unsupported';
  const [name = ''] = /\w+Error\b(?=[\]:]|$)/.exec(said) ?? [];
  return BY_NAME[name] ?? 'failed';
}

/** What can be known to be in the way before anyone is asked for permission. */
export function troubleBefore(page: {
  readonly isSecureContext: boolean;
  readonly navigator: { readonly mediaDevices?: unknown };
}): ScanTrouble | undefined {
  if (!page.isSecureContext) return 'insecure';
  return page.navigator.mediaDevices === undefined ? 'unsupported' : undefined;
}
