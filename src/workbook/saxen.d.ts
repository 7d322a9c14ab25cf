// The package brings no types; these are the parts of it in use.
declare module 'saxen' {
  type Decode = (text: string) => string;
  export class Parser {
    constructor(options?: { readonly proxy?: boolean });
    on(
      event: 'openTag',
      heard: (
        name: string,
        attributes: () => Readonly<Record<string, string>>,
        decode: Decode,
      ) => void,
    ): this;
    on(event: 'closeTag', heard: (name: string) => void): this;
    on(event: 'text', heard: (text: string, decode: Decode) => void): this;
    on(event: 'cdata', heard: (text: string) => void): this;
    on(event: 'error', heard: (error: Error) => void): this;
    on(event: 'warn', heard: (warning: Error) => void): this;
    parse(xml: string): void;
  }
}
