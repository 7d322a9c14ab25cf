import type { Html5Qrcode } from 'html5-qrcode';

/** The lamp beside a camera. */
export interface Torch {
  readonly on: boolean;
  /** Returns whether it is as asked now; never rejects. */
  set(on: boolean): Promise<boolean>;
}

/**
 * The torch of the running camera, or undefined where it has none that a page may use.
 *
 * A camera may list the torch only to say that it has none, so the value counts and not the key: a
 * boolean in some browsers, a list of the possible states in others.
 * Source: https://www.w3.org/TR/image-capture/#dom-mediatrackcapabilities-torch (from memory).
 */
export function torchOf(opener: Html5Qrcode): Torch | undefined {
  const offered: unknown = Reflect.get(capabilitiesOf(opener), 'torch');
  const works = Array.isArray(offered) ? offered.includes(true) : offered === true;
  if (!works) return undefined;
  let isOn = false;
  return {
    get on() {
      return isOn;
    },
    async set(on) {
      try {
        await opener.getRunningTrackCameraCapabilities().torchFeature().apply(on);
        isOn = on;
        return true;
      } catch {
        return false;
      }
    },
  };
}

/** What the running camera can do: nothing, in browsers that do not tell. */
export function capabilitiesOf(opener: Html5Qrcode): object {
  try {
    return opener.getRunningTrackCapabilities();
  } catch {
    return {};
  }
}
