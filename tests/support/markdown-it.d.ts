// The little of markdown-it that the tests use; the package brings no types.
declare module 'markdown-it' {
  export interface Token {
    readonly type: string;
    readonly content: string;
    readonly children: readonly Token[] | null;
  }
  export default class MarkdownIt {
    constructor(options?: { html?: boolean; linkify?: boolean });
    parse(text: string, env: object): Token[];
  }
}
