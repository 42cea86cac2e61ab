// A file as the core sees it: its name, its text, and what was read from the text.
import { Lines, type Span } from '../text';
import { parse, type Node, type Parsed, type ScalarNode } from '../yaml';

/** `output`: what a tool printed of a machine, which is read by `core/machine` and never written. */
export type DocKind = 'build' | 'part' | 'house' | 'known' | 'asbuilt' | 'guide' | 'output';

/** By field, then by text: see `readNode`. */
export type KnownScalars = Map<unknown, Map<string, unknown>>;

export class Doc {
  private linesRead?: Lines;
  private parsedRead?: Parsed;
  /** What was worked out from this text, by what it was asked for: see `kept`. */
  readonly memo = new Map<unknown, unknown>();

  /**
   * `scalars`: what texts of scalars were read as, by field; a session hands one to all its documents, since the same
   * words stand in many. `name` is the path below the workspace's root, with `/` between folders on every platform.
   */
  constructor(
    readonly name: string,
    readonly kind: DocKind,
    readonly text: string,
    readonly scalars: KnownScalars = new Map(),
  ) {}

  /** A guide is no YAML: what stands in it is read by `core/guide`. An output may be JSON, which YAML holds. */
  get parsed(): Parsed {
    return (this.parsedRead ??= parse(this.kind === 'guide' ? '' : this.text));
  }

  get lines(): Lines {
    return (this.linesRead ??= new Lines(this.text));
  }

  /** What stands under a key at the top; undefined where the text is no map, or has no such key. */
  topValue(key: string): Node | undefined {
    const { root } = this.parsed;
    return root?.type === 'map' ? root.get(key)?.value : undefined;
  }

  /** The same where it is a text that is not empty. */
  topText(key: string): ScalarNode | undefined {
    const value = this.topValue(key);
    return value?.type === 'scalar' && value.text !== '' ? value : undefined;
  }

  /** What `work` makes of this text, worked out once: it belongs to the text, and lives and dies with it. */
  kept<T extends object | string | null>(key: unknown, work: () => T): T {
    let kept = this.memo.get(key) as T | undefined;
    if (kept === undefined) this.memo.set(key, (kept = work()));
    return kept;
  }

  /** How a text is written that is put into this one. */
  written(text: string): string {
    return text;
  }
}

/** A piece of a file: where something is written, or where a finding shows. */
export interface SourceLocation {
  readonly doc: Doc;
  readonly span: Span;
}

/** Where a fact is written, with its path in that file. */
export interface StatedAt extends SourceLocation {
  readonly path: string;
}

/** Which of our files a path names, by its ending alone; undefined for any other file. */
export function kindOfFile(path: string): DocKind | undefined {
  const file = path.slice(path.lastIndexOf('/') + 1);
  if (file.endsWith('.pcbuild.yaml')) return 'build';
  if (file.endsWith('.part.yaml')) return 'part';
  if (file.endsWith('.known.yaml')) return 'known';
  if (file.endsWith('.asbuilt.yaml')) return 'asbuilt';
  if (/\.(?:md|markdown)$/i.test(file)) return 'guide';
  return file === 'fettle.yaml' ? 'house' : undefined;
}

/** The record of the finished machine lies beside its build. */
export const recordName = (build: string): string | undefined =>
  build.endsWith('.pcbuild.yaml') ? build.replace(/\.pcbuild\.yaml$/, '.asbuilt.yaml') : undefined;
