// What the library's nodes say of themselves: their range, and their tag as it is written.
import type { Scalar } from 'yaml';
import { clampSpan } from '../text/span';
import type { Span } from '../text/span';

/** The library's range of a node, without what trails it; beside broken text it may end inside a character. */
export function rangeOf(source: unknown, text: string): Span {
  const range = (source as { range?: [number, number, number] | null } | null)?.range;
  return range ? clampSpan(text, range[0], range[1]) : { start: 0, end: 0 };
}

/**
 * A scalar's decoded text. The library leaves the first half of a CRLF at the end of a text whose closing quote is
 * missing.
 */
export function textOf(source: Scalar, span: Span, text: string): string {
  const decoded = source.source ?? '';
  return decoded.endsWith('\r') && /[\r\n]/.test(text.charAt(span.end - 1)) ? decoded.slice(0, -1) : decoded;
}

/** A tag as people write it: `!!int` for `tag:yaml.org,2002:int`. */
export function tagName(tag: string): string {
  return tag.replace(/^tag:yaml\.org,2002:/, '!!');
}
