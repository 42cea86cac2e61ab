// The limits of reading, and the measuring of a text against them before anything is built.
import { Lexer, Parser } from 'yaml';
import type { CST } from 'yaml';
import type { Problem } from './nodes';

/**
 * What one document may hold: `tokens` are its words, signs, blanks and line ends; `nodes` the values
 * that its aliases repeat; `syntaxProblems` how many are told one by one.
 */
export const limits = {
  bytes: 2_000_000,
  tokens: 300_000,
  depth: 64,
  nodes: 200_000,
  aliases: 100,
  syntaxProblems: 100,
} as const;

/** The first document's tokens; `extra` is where a second document begins; `refused` if past a limit. */
export interface Tokens {
  readonly tokens: readonly CST.Token[];
  readonly extra: number | undefined;
  readonly refused: Problem | undefined;
}

/**
 * Reads the tokens of the first document. The lexer does not recurse, and the depth is measured
 * after each of its steps, so that no later step can run out of stack.
 */
export function readTokens(text: string): Tokens {
  if (passesBytes(text)) {
    const refused = refusal(
      0,
      `The file is larger than ${withCommas(limits.bytes)} bytes, so Fettle does not read it; split it.`,
    );
    return { tokens: [], extra: undefined, refused };
  }
  const parser = new Parser();
  const tokens: CST.Token[] = [];
  let count = 0;
  const take = (produced: Iterable<CST.Token>) => {
    for (const token of produced) {
      if (token.type === 'document' && tokens.some((earlier) => earlier.type === 'document')) return token.offset;
      tokens.push(token);
    }
    return undefined;
  };
  // Behind a byte order mark the lexer misreads block texts on the first line, so it is not shown one.
  if (text.startsWith('\uFEFF')) parser.offset = 1;
  for (const lexeme of new Lexer().lex(withPlainLineEnds(text.slice(parser.offset)))) {
    const extra = take(parser.next(lexeme));
    if (extra !== undefined) return { tokens, extra, refused: undefined };
    const refused = overLimit(parser, ++count);
    if (refused) return { tokens: [], extra: undefined, refused };
  }
  return { tokens, extra: take(parser.end()), refused: undefined };
}

/** YAML 1.2 (5.4) and LSP take a lone CR as a line end, the library does not. Offsets stay the same. */
function withPlainLineEnds(text: string): string {
  return text.includes('\r') ? text.replace(/\r(?!\n)/g, '\n') : text;
}

function overLimit(parser: Parser, count: number): Problem | undefined {
  if (count > limits.tokens) {
    return refusal(
      parser.offset,
      `The file holds more than ${withCommas(limits.tokens)} words, signs and line ends, so Fettle does not ` +
        'read it; split it.',
    );
  }
  if (parser.stack.length <= limits.depth || depthOf(parser.stack) <= limits.depth) return undefined;
  return refusal(
    parser.offset,
    `Maps and lists stand more than ${limits.depth} deep here, so Fettle does not read the file; make it flatter.`,
  );
}

function depthOf(stack: readonly CST.Token[]): number {
  let depth = 0;
  for (const { type } of stack) {
    if (type === 'block-map' || type === 'block-seq' || type === 'flow-collection') depth++;
  }
  return depth;
}

/** A count as messages show it, the same in any locale: 2,000,000. */
export function withCommas(count: number): string {
  const digits = String(count);
  const first = digits.length % 3 || 3;
  return [digits.slice(0, first), ...(digits.slice(first).match(/\d{3}/g) ?? [])].join(',');
}

function refusal(offset: number, message: string): Problem {
  return { code: 'limits-reached', message, span: { start: offset, end: offset + 1 } };
}

function passesBytes(text: string): boolean {
  if (text.length > limits.bytes) return true;
  if (text.length * 3 <= limits.bytes) return false;
  let bytes = 0;
  for (let i = 0; i < text.length; i++) {
    const unit = text.charCodeAt(i);
    // Each half of a surrogate pair stands for two of the pair's four bytes.
    bytes += unit < 0x80 ? 1 : unit < 0x800 || (unit >= 0xd800 && unit <= 0xdfff) ? 2 : 3;
  }
  return bytes > limits.bytes;
}
