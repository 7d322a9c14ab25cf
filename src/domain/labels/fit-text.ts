import { textWidth } from './text-width.ts';

/** `text` cut with an ellipsis where it would be wider than `width` mm. */
export function truncate(text: string, width: number, size: number, bold: boolean): string {
  if (textWidth(text, size, bold) <= width) return text;
  const signs = Array.from(text);
  while (signs.length > 0 && textWidth(`${signs.join('').trimEnd()}…`, size, bold) > width) {
    signs.pop();
  }
  return signs.length === 0 ? '' : `${signs.join('').trimEnd()}…`;
}

/** The longest start of `text` that fits in `width` mm, at least one sign of it. */
function headOf(text: string, width: number, size: number, bold: boolean): string {
  let head = '';
  for (const sign of text) {
    if (head !== '' && textWidth(head + sign, size, bold) > width) break;
    head += sign;
  }
  return head;
}

/** Breaks text at spaces that are not protected, and inside a word only where the word alone is too wide. Unit: mm. */
export function wrap(text: string, width: number, size: number, bold: boolean): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/[ \t\n]+/).filter(Boolean)) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (textWidth(longer, size, bold) <= width) {
      line = longer;
      continue;
    }
    if (line !== '') lines.push(line);
    let rest = word;
    while (textWidth(rest, size, bold) > width && Array.from(rest).length > 1) {
      const head = headOf(rest, width, size, bold);
      lines.push(head);
      rest = rest.slice(head.length);
    }
    line = rest;
  }
  if (line !== '') lines.push(line);
  return lines;
}

/** `wrap`, with what goes beyond `most` lines cut off behind an ellipsis. */
export function wrapAtMost(
  text: string,
  most: number,
  width: number,
  size: number,
  bold: boolean,
): readonly string[] {
  const lines = wrap(text, width, size, bold);
  if (lines.length <= most) return lines;
  const last = lines.slice(most - 1).join(' ');
  return [...lines.slice(0, most - 1), truncate(last, width, size, bold)];
}

/** The largest size in mm, up to `most`, at which the text is one line of `width` mm. */
export const oneLineSize = (text: string, width: number, most: number, bold: boolean): number =>
  Math.min(most, width / Math.max(textWidth(text, 1, bold), 1e-9));
