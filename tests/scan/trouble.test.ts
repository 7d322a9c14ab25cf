import { describe, expect, test } from 'vitest';
import { troubleBefore, troubleOf } from '../../src/scan/trouble.ts';

// The sentences are those of html5-qrcode 2.3.8, src/strings.ts; the names those of
// https://www.w3.org/TR/mediacapture-streams/#dom-mediadevices-getusermedia (from memory).
describe('an error from opening a camera', () => {
  test.each([
    ['NotAllowedError', 'not-allowed'],
    ['SecurityError', 'not-allowed'],
    ['NotFoundError', 'no-camera'],
    ['OverconstrainedError', 'no-camera'],
    ['NotReadableError', 'busy'],
    ['AbortError', 'busy'],
    ['NotSupportedError', 'unsupported'],
    // What Chromium 62 said: https://blog.addpipe.com/common-getusermedia-errors/
    ['PermissionDeniedError', 'not-allowed'],
    ['TrackStartError', 'busy'],
  ])('%s is %s, as an exception and in a sentence', (name, trouble) => {
    const error = new DOMException('Nothing to read here.', name);
    expect(troubleOf(error)).toBe(trouble);
    expect(troubleOf(`Error getting userMedia, error = ${String(error)}`)).toBe(trouble);
    expect(troubleOf(`Error getting userMedia, error = ${name}`)).toBe(trouble);
  });

  test('is read from an object that only tells its kind', () => {
    // Constraint errors were no exceptions once, and print like any object.
    const sentence = 'Error getting userMedia, error = [object OverconstrainedError]';
    expect(troubleOf(sentence)).toBe('no-camera');
  });

  test('is "unsupported" when there is nothing to ask for a camera', () => {
    expect(troubleOf('Camera streaming not supported by the browser.')).toBe('unsupported');
  });

  test.each([[new TypeError('x')], ['HTML Element with id=camera not found'], [undefined], [{}]])(
    'is "failed" when it is not known: %s',
    (error) => {
      expect(troubleOf(error)).toBe('failed');
    },
  );
});

describe('before asking', () => {
  test('a page from an unsafe place has no camera', () => {
    // Such pages have no mediaDevices either; the place is what the keeper can change.
    expect(troubleBefore({ isSecureContext: false, navigator: {} })).toBe('insecure');
  });

  test('a browser without cameras is unsupported', () => {
    expect(troubleBefore({ isSecureContext: true, navigator: {} })).toBe('unsupported');
  });

  test('nothing is in the way otherwise', () => {
    const page = { isSecureContext: true, navigator: { mediaDevices: {} } };
    expect(troubleBefore(page)).toBeUndefined();
  });
});
