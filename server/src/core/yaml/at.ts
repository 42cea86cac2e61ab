// What stands at an offset, or would be typed there: for hover, completion and the like.
import { touches } from '../text/span';
import type { Span } from '../text/span';
import { columnAt, dashAt, lineStartAt } from './layout';
import type { Entry, ListNode, MapNode, Node, Parsed, ScalarNode } from './nodes';

/** What is found at an offset. */
export interface At {
  /** Keys and item numbers from the root; for a key or an entry's value with that key last. */
  readonly path: readonly (string | number)[];
  /**
   * On a key, on a value's own text, or in a gap. In a gap, `entry` or a list's `node` says whose
   * value would be typed; without them `map` says where a key would be, `list` where an item would.
   */
  readonly where: 'key' | 'value' | 'gap';
  /** The innermost map or list that decides: what is typed would belong to it. */
  readonly map?: MapNode;
  readonly list?: ListNode;
  readonly entry?: Entry;
  /** The value there; in a gap the empty one to be filled, or the one the gap trails. */
  readonly node?: Node;
  /** What is typed of the current word before the offset. */
  readonly prefix: string;
  /** What a completion would replace. */
  readonly replace: Span;
}

type Path = readonly (string | number)[];

/** Where a node stands: its path, and what holds it. */
interface Around {
  readonly path: Path;
  readonly entry?: Entry;
  readonly list?: ListNode;
  readonly map?: MapNode;
}

/** What stands at an offset; undefined inside a comment. */
export function nodeAt(doc: Parsed, offset: number): At | undefined {
  const finder = new Finder(doc.text, Math.min(Math.max(offset, 0), doc.text.length));
  const found = finder.find(doc.root);
  return found.where === 'gap' && finder.inComment() ? undefined : found;
}

/** A step down, or the answer. */
type Step = (Around & { readonly down: Node }) | At;

class Finder {
  private readonly lineStart: number;
  private readonly onBlankLine: boolean;
  private readonly column: number;
  // Where the last key or scalar before the offset ended: a comment can only begin after it.
  private textEnd = 0;

  constructor(
    private readonly text: string,
    private readonly offset: number,
  ) {
    this.lineStart = lineStartAt(text, offset);
    this.onBlankLine = text.slice(this.lineStart, offset).trim() === '';
    this.column = offset - this.lineStart;
  }

  find(root: Node | undefined): At {
    if (!root || this.offset < root.span.start) return this.gap([], root ? holder(root) : {});
    let step: Step = { down: root, path: [] };
    while ('down' in step) step = this.step(step.down, step);
    return step;
  }

  inComment(): boolean {
    const from = Math.max(this.lineStart, Math.min(this.textEnd, this.offset));
    return /(?:^|[ \t,[\]{}])#/.test(this.text.slice(from, this.offset));
  }

  private step(node: Node, at: Around): Step {
    if (node.type === 'scalar') return this.scalar(node, at);
    if (node.style === 'flow') {
      if (!this.isInsideFlow(node))
        return touches(node.span, this.offset)
          ? this.value(node, at)
          : this.gap(at.path, { entry: at.entry, list: at.list, map: at.map, node });
      return node.type === 'map' ? this.flowMap(node, at.path) : this.flowList(node, at.path);
    }
    return node.type === 'map' ? this.blockMap(node, at.path) : this.blockList(node, at.path);
  }

  private scalar(node: ScalarNode, at: Around): At {
    if (node.style !== 'empty' && touches(node.span, this.offset)) return this.value(node, at);
    return this.gap(at.path, { entry: at.entry, list: at.list, map: at.map, node });
  }

  private blockMap(map: MapNode, path: Path): Step {
    const entry = this.lastBefore(map);
    if (!entry) return this.gap(path, { map });
    if (touches(entry.keySpan, this.offset)) return this.key(map, entry, path);
    this.textEnd = Math.max(this.textEnd, entry.keySpan.end);
    return this.belowEntry(map, entry, path);
  }

  private belowEntry(map: MapNode, entry: Entry, path: Path): Step {
    const { value } = entry;
    const inner = [...path, entry.key];
    const isNested = value.type !== 'scalar' && value.style === 'block';
    const own = columnAt(this.text, map.span.start);
    const onKeyLine = this.lineStart <= entry.keySpan.end;
    if (!this.onBlankLine || onKeyLine || (!isNested && value.style !== 'empty' && touches(value.span, this.offset))) {
      return isNested && this.offset < value.span.start
        ? this.gap(inner, { map, entry, node: value })
        : { down: value, path: inner, entry, map };
    }
    if (this.column <= own) return this.gap(path, { map });
    if (!isNested) return this.gap(inner, { map, entry, node: value });
    // A line above the first of what stands below the key.
    if (this.offset < value.span.start) return this.gap(inner, holder(value));
    return this.column >= columnAt(this.text, value.span.start)
      ? { down: value, path: inner, entry, map }
      : this.gap(path, { map });
  }

  private blockList(list: ListNode, path: Path): Step {
    const index = this.itemBefore(list);
    const item = list.items[index];
    if (!item) return this.gap(path, { list });
    const own = columnAt(this.text, list.span.start);
    const isWritten = item.type === 'scalar' && item.style !== 'empty' && touches(item.span, this.offset);
    if (this.onBlankLine && !isWritten && this.column <= own) return this.gap(path, { list });
    const isNested = item.type !== 'scalar' && item.style === 'block';
    if (
      isNested &&
      (this.offset < item.span.start || (this.onBlankLine && this.column < columnAt(this.text, item.span.start)))
    ) {
      return this.gap(path, { list });
    }
    return { down: item, path: [...path, index], list };
  }

  private flowMap(map: MapNode, path: Path): Step {
    const entry = this.lastBefore(map);
    if (!entry) return this.gap(path, { map });
    if (touches(entry.keySpan, this.offset)) return this.key(map, entry, path);
    const isPast = this.offset > entry.span.end && this.hasComma(entry.span.end);
    this.textEnd = Math.max(this.textEnd, Math.min(entry.span.end, this.offset));
    return isPast ? this.gap(path, { map }) : { down: entry.value, path: [...path, entry.key], entry, map };
  }

  private flowList(list: ListNode, path: Path): Step {
    const index = list.items.findLastIndex(({ span }) => span.start <= this.offset);
    const item = list.items[index];
    if (!item || (this.offset > item.span.end && this.hasComma(item.span.end))) return this.gap(path, { list });
    return { down: item, path: [...path, index], list };
  }

  private hasComma(from: number): boolean {
    return this.text.slice(from, this.offset).replace(/#.*/g, '').includes(',');
  }

  private isInsideFlow({ span }: Node): boolean {
    const isClosed = /[}\]]/.test(this.text[span.end - 1] ?? '');
    return this.offset > span.start && (this.offset < span.end || !isClosed);
  }

  /** The last entry that starts at or before the offset. */
  private lastBefore(map: MapNode): Entry | undefined {
    return map.entries.findLast((entry) => !entry.merged && entry.keySpan.start <= this.offset);
  }

  /** The number of the last item whose dash stands before the offset. */
  private itemBefore(list: ListNode): number {
    const index = list.items.findLastIndex(({ span }) => span.start <= this.offset);
    const next = list.items[index + 1] && dashAt(this.text, list, index + 1);
    return next !== undefined && next < this.offset ? index + 1 : index;
  }

  private key(map: MapNode, entry: Entry, path: Path): At {
    return {
      path: [...path, entry.key],
      where: 'key',
      map,
      entry,
      node: entry.value,
      prefix: this.text.slice(entry.keySpan.start, this.offset),
      replace: entry.keySpan,
    };
  }

  private value(node: Node, { path, entry, list, map }: Around): At {
    return {
      path,
      where: 'value',
      map,
      list,
      entry,
      node,
      prefix: this.text.slice(node.span.start, this.offset),
      replace: node.span,
    };
  }

  private gap(path: Path, about: { map?: MapNode; list?: ListNode; entry?: Entry; node?: Node }): At {
    if (about.node?.type === 'scalar')
      this.textEnd = Math.max(this.textEnd, Math.min(about.node.span.end, this.offset));
    return { path, where: 'gap', ...about, prefix: '', replace: { start: this.offset, end: this.offset } };
  }
}

function holder(node: Node): { map?: MapNode; list?: ListNode } {
  return node.type === 'map' ? { map: node } : node.type === 'list' ? { list: node } : {};
}
