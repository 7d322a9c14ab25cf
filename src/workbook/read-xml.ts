import { Parser } from 'saxen';

/** What is heard of an XML text, in order. Names come without their namespace's prefix. */
export interface Heard {
  readonly open?: (name: string, attribute: (name: string) => string | undefined) => void;
  readonly close?: (name: string) => void;
  readonly text?: (text: string) => void;
}

const local = (name: string): string => name.slice(name.indexOf(':') + 1);

/** Errors: throws where the text is no XML, or ends before its last element does. */
export function readXml(xml: string, { open, close, text }: Heard): void {
  const parser = new Parser();
  parser.on('error', (error) => {
    throw error;
  });
  // Such as an attribute that stands twice: the file can still be read.
  parser.on('warn', () => undefined);
  parser.on('openTag', (name, attributes, decode) => {
    let read: Readonly<Record<string, string>> | undefined;
    open?.(local(name), (wanted) => {
      read ??= attributes();
      const found = read[wanted];
      return found === undefined ? undefined : decode(found);
    });
  });
  parser.on('closeTag', (name) => close?.(local(name)));
  if (text) {
    parser.on('text', (found, decode) => text(decode(found)));
    parser.on('cdata', text);
  }
  parser.parse(xml);
}
