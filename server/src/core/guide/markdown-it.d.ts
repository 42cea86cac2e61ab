// The little of markdown-it that guides are read with; the package brings no types.
declare module 'markdown-it/lib/parser_block.mjs' {
  export interface Token {
    readonly type: string;
    readonly info: string;
    readonly content: string;
    /** The first line, and the one after the last. */
    readonly map: readonly [number, number] | null;
  }
  export default class ParserBlock {
    readonly ruler: { disable(names: readonly string[]): void };
    parse(text: string, md: object, env: object, tokens: Token[]): void;
  }
}
