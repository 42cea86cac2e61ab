// What the library's nodes say of themselves: their range, and their tag as it is written.
import type { Span } from '../text/span';

/** The library's range of a node, without what trails it. */
export function rangeOf(source: unknown): Span {
  const range = (source as { range?: [number, number, number] | null } | null)?.range;
  return range ? { start: range[0], end: range[1] } : { start: 0, end: 0 };
}

/** A tag as people write it: `!!int` for `tag:yaml.org,2002:int`. */
export function tagName(tag: string): string {
  return tag.replace(/^tag:yaml\.org,2002:/, '!!');
}
