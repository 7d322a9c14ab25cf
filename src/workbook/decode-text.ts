/** A text and the encoding it was written in. */
export interface Decoded {
  readonly text: string;
  readonly encoding: 'UTF-8' | 'UTF-16' | 'Windows-1252';
}

/** So many bytes tell whether every other one is zero. */
const LOOKED_AT = 1_024;

/**
 * The text of a file that does not say how it is encoded: by its byte order mark, by zero bytes as
 * UTF-16 has them, as UTF-8 where all of it is valid, else as Windows-1252, in which every byte is
 * a letter. Source: WHATWG Encoding Standard.
 */
export function decodeText(bytes: Uint8Array): Decoded {
  const utf16 = utf16Order(bytes);
  if (utf16) return { text: new TextDecoder(utf16).decode(bytes), encoding: 'UTF-16' };
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(bytes), encoding: 'UTF-8' };
  } catch {
    return { text: new TextDecoder('windows-1252').decode(bytes), encoding: 'Windows-1252' };
  }
}

function utf16Order(bytes: Uint8Array): 'utf-16le' | 'utf-16be' | undefined {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'utf-16le';
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return 'utf-16be';
  const zeros = [0, 0];
  const looked = bytes.subarray(0, LOOKED_AT - (LOOKED_AT % 2));
  for (const [i, byte] of looked.entries()) if (byte === 0) zeros[i % 2] = (zeros[i % 2] ?? 0) + 1;
  const [even = 0, odd = 0] = zeros;
  const many = looked.length / 4;
  if (odd > many && even < many / 8) return 'utf-16le';
  return even > many && odd < many / 8 ? 'utf-16be' : undefined;
}
