// The nodes of a YAML document as Fettle reads it: every value is text, and knows where it stands.
import type { Edit } from '../text/edit';
import type { Span } from '../text/span';

export type Node = MapNode | ListNode | ScalarNode;

interface NodeBase {
  /** The value's own text, without trailing blanks or comments. For an alias, the alias itself. */
  readonly span: Span;
  /** False where a change could mean two things: anchor, alias, merge, tag, key twice, broken text. */
  readonly fixable: boolean;
}

export interface ScalarNode extends NodeBase {
  readonly type: 'scalar';
  /** The decoded text; '' for an empty value, which stands right after its colon or dash. */
  readonly text: string;
  readonly style: 'plain' | 'single' | 'double' | 'block' | 'empty';
}

export interface Entry {
  readonly key: string;
  readonly keySpan: Span;
  readonly value: Node;
  /** From the key's start to the value's end. */
  readonly span: Span;
  readonly fixable: boolean;
  /** Set on the second and later entries with the same key; `get` gives the first. */
  readonly repeated?: true;
  /** Set on an entry that a merge brought in: its spans lie outside the map. */
  readonly merged?: true;
}

export interface MapNode extends NodeBase {
  readonly type: 'map';
  readonly style: 'block' | 'flow';
  readonly entries: readonly Entry[];
  get(key: string): Entry | undefined;
}

export interface ListNode extends NodeBase {
  readonly type: 'list';
  readonly style: 'block' | 'flow';
  readonly items: readonly Node[];
}

export type ProblemCode =
  | 'yaml-syntax'
  | 'key-twice'
  | 'yaml-1.1-asked-for'
  | 'alias-or-merge-used'
  | 'alias-unknown'
  | 'limits-reached'
  | 'key-not-text'
  | 'tag-used'
  | 'several-documents';

export interface Problem {
  readonly code: ProblemCode;
  /** One sentence: what it is, and what to do. */
  readonly message: string;
  readonly span: Span;
  /** Tabs indent here: what stands below what cannot be told. */
  readonly tabs?: true;
  /** What is to stand there, where that has one reading, and the edit that writes it. */
  readonly meant?: { readonly text: string; readonly edit: Edit };
}

export interface Parsed {
  readonly text: string;
  /** Undefined for an empty file, and for one past a limit. */
  readonly root: Node | undefined;
  readonly problems: readonly Problem[];
}

// Below this many entries a plain search is quicker than building an index.
const indexFrom = 9;

/** A map node over its entries; keys such as `__proto__` are names like any other. */
export class EntryMap implements MapNode {
  readonly type = 'map';
  private index: Map<string, Entry> | undefined;

  constructor(
    readonly span: Span,
    readonly fixable: boolean,
    readonly style: 'block' | 'flow',
    readonly entries: readonly Entry[],
  ) {}

  /** The entry of that key; where a key stands twice, the first. */
  get(key: string): Entry | undefined {
    if (this.entries.length < indexFrom) return this.entries.find((entry) => entry.key === key);
    this.index ??= indexed(this.entries);
    return this.index.get(key);
  }
}

function indexed(entries: readonly Entry[]): Map<string, Entry> {
  const index = new Map<string, Entry>();
  for (const entry of entries) if (!index.has(entry.key)) index.set(entry.key, entry);
  return index;
}

/** The nodes directly below a node, in order. */
export function children(node: Node): readonly Node[] {
  if (node.type === 'map') return node.entries.map((entry) => entry.value);
  return node.type === 'list' ? node.items : [];
}
