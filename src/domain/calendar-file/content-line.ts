// Lines of an iCalendar file as RFC 5545 wants them.

const LINE_OCTETS = 75;

/**
 * A text as the value of a property.
 *
 * Control characters have no place in such a file and are left out, and half a surrogate pair, which
 * UTF-8 cannot carry, becomes U+FFFD. Source: RFC 5545 §3.3.11.
 */
export const textValue = (text: string): string =>
  text
    .replaceAll(/\r\n?/g, '\n')
    .replaceAll(/[^\P{Cc}\t\n\u0080-\u009f]/gu, '')
    .replaceAll(/\p{Cs}/gu, '\u{fffd}')
    .replaceAll(/[\\;,]/g, (mark) => `\\${mark}`)
    .replaceAll('\n', '\\n');

/**
 * One property, folded and ended.
 *
 * No line is longer than 75 octets of UTF-8 without its line break, the space that begins a
 * continuation counted in; no character is torn apart. Source: RFC 5545 §3.1.
 */
export function contentLine(name: string, value: string): string {
  let folded = '';
  let octets = 0;
  for (const character of `${name}:${value}`) {
    const size = octetsOf(character);
    if (octets + size > LINE_OCTETS) {
      folded += '\r\n ';
      octets = 1;
    }
    folded += character;
    octets += size;
  }
  return `${folded}\r\n`;
}

/** How many octets UTF-8 takes for a character. Source: RFC 3629 §3. */
function octetsOf(character: string): number {
  const point = character.codePointAt(0) ?? 0;
  if (point < 0x80) return 1;
  if (point < 0x800) return 2;
  return point < 0x10000 ? 3 : 4;
}
