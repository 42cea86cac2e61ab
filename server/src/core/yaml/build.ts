// Turns the library's document into our nodes, by an explicit stack: maps, lists, scalars, aliases.
import { isAlias, isMap, isScalar, isSeq } from 'yaml';
import type { Alias, Document, Pair, Scalar, YAMLMap, YAMLSeq } from 'yaml';
import type { Span } from '../text/span';
import { quoted } from '../text/escape';
import { Anchors } from './anchors';
import { entriesOf, isMergeKey, keyBelowFault, readKey, repeatedKeys } from './entries';
import type { Draft, Key } from './entries';
import { EntryMap } from './nodes';
import type { Node, Problem, ScalarNode } from './nodes';
import { rangeOf, tagName, textOf } from './source';

type Source = YAMLMap | YAMLSeq;

// One collection being built. `inherited`: what stands below it may be fixed, as far as it decides.
interface Frame {
  readonly source: Source;
  readonly inherited: boolean;
  readonly drafts: Draft[];
  readonly items: Node[];
  readonly repeated: ReadonlySet<unknown>;
  unsure: boolean;
  next: number;
}

/** The root node, or undefined where the document holds nothing. Adds what it finds to `problems`. */
export function buildNodes(
  document: Document.Parsed,
  text: string,
  broken: readonly Span[],
  problems: Problem[],
): Node | undefined {
  const { contents } = document;
  if (!contents || (isScalar(contents) && isEmptyScalar(contents) && !contents.anchor && !contents.tag))
    return undefined;
  return new Builder(text, broken, problems).build(contents);
}

class Builder {
  private readonly anchors: Anchors;
  private readonly stack: Frame[] = [];

  constructor(
    private readonly text: string,
    private readonly broken: readonly Span[],
    private readonly problems: Problem[],
  ) {
    this.anchors = new Anchors(problems);
  }

  build(contents: unknown): Node {
    let done = this.begin(contents, true);
    for (;;) {
      const frame = this.stack.at(-1);
      if (!frame) return done!;
      if (done) this.add(frame, done);
      done = frame.next < frame.source.items.length ? this.descend(frame) : this.finish();
    }
  }

  /** Starts on a source node: a scalar or alias is done at once, a collection goes on the stack. */
  private begin(source: unknown, inherited: boolean): Node | undefined {
    if (isMap(source) || isSeq(source)) {
      this.push(source, inherited);
      return undefined;
    }
    if (isAlias(source)) return this.alias(source);
    return this.scalar(source as Scalar, inherited);
  }

  private push(source: Source, inherited: boolean): void {
    const span = rangeOf(source, this.text);
    this.noteTag(source.tag, span);
    if (source.anchor) this.anchors.open(source.anchor);
    const sure = inherited && !source.anchor && !source.tag && !(source.flow && this.isBroken(span));
    const repeated = isMap(source) ? repeatedKeys(source) : noKeys;
    this.stack.push({ source, inherited: sure, drafts: [], items: [], repeated, unsure: false, next: 0 });
  }

  private descend(frame: Frame): Node | undefined {
    const item = frame.source.items[frame.next++];
    if (!isMap(frame.source)) return this.begin(item, frame.inherited);
    const pair = item as Pair;
    const below = frame.source.flow ? undefined : keyBelowFault(pair.key, this.text);
    const key = below ?? readKey(pair.key, this.text, this.anchors, this.problems);
    if (!key || below) frame.unsure = true;
    const sure = frame.inherited && key?.sure === true && !frame.repeated.has(key.text) && !isMergeKey(pair.key);
    frame.drafts.push({ key, pair, sure, value: undefined });
    if (pair.value) return (key && this.beside(key, pair.value)) ?? this.begin(pair.value, sure);
    const at = key ? key.span.end : rangeOf(pair.key, this.text).end;
    return { type: 'scalar', text: '', style: 'empty', span: { start: at, end: at }, fixable: false };
  }

  /** A map that begins on the line of its key is none: of what stands there, that line is the key’s value. */
  private beside(key: Key, value: unknown): ScalarNode | undefined {
    if (!isMap(value) || value.flow) return undefined;
    const { start, end } = rangeOf(value, this.text);
    if (/[\r\n]/.test(this.text.slice(key.span.end, start)) || !this.isBroken({ start, end: start })) return undefined;
    const [line = ''] = this.text.slice(start, end).split(/[\r\n]/, 1);
    const comment = line.search(/[ \t]#/);
    const text = (comment < 0 ? line : line.slice(0, comment)).trimEnd();
    return { type: 'scalar', text, style: 'plain', span: { start, end: start + text.length }, fixable: false };
  }

  private add(frame: Frame, node: Node): void {
    const draft = frame.drafts.at(-1);
    if (draft) draft.value = node;
    else frame.items.push(node);
  }

  private finish(): Node {
    const frame = this.stack.pop()!;
    const node = isMap(frame.source) ? this.map(frame, frame.source) : this.list(frame, frame.source as YAMLSeq);
    if (frame.source.anchor) this.anchors.close(frame.source.anchor, node);
    return node;
  }

  private map(frame: Frame, source: YAMLMap): Node {
    const { entries, merges } = entriesOf(frame.drafts, this.problems, (span) => this.isBroken(span));
    const own = entries.filter((entry) => !entry.merged);
    const range = rangeOf(source, this.text);
    const span =
      source.flow || own.length === 0 || merges || frame.unsure
        ? this.trimmed(range)
        : { start: own[0]!.keySpan.start, end: own.at(-1)!.span.end };
    const fixable = frame.inherited && !merges && !frame.unsure && !(!source.flow && this.isBrokenBetween(span, own));
    return new EntryMap(span, fixable, source.flow ? 'flow' : 'block', entries);
  }

  private list(frame: Frame, source: YAMLSeq): Node {
    const range = rangeOf(source, this.text);
    const last = frame.items.at(-1);
    const span =
      source.flow || !last ? this.trimmed(range) : { start: range.start, end: Math.max(last.span.end, range.start) };
    const fixable = frame.inherited && !(!source.flow && this.isBrokenBetween(span, frame.items));
    return { type: 'list', span, fixable, style: source.flow ? 'flow' : 'block', items: frame.items };
  }

  private alias(alias: Alias): Node {
    const span = rangeOf(alias, this.text);
    const target = this.anchors.resolve(alias.source, span, this.stack.length);
    const inMerge = isMergeKey(this.stack.findLast((frame) => isMap(frame.source))?.drafts.at(-1)?.pair.key);
    if (target && !inMerge) {
      this.problems.push({
        code: 'alias-or-merge-used',
        message:
          `Fettle reads what the alias ${quoted(alias.source)} stands for, but makes no fixes there; write ` +
          'the value out to have them.',
        span,
      });
    }
    if (target?.type === 'map') return new EntryMap(span, false, target.style, target.entries);
    if (target) return { ...target, span, fixable: false };
    return { type: 'scalar', text: '', style: 'empty', span, fixable: false };
  }

  private scalar(source: Scalar, inherited: boolean): ScalarNode {
    const style = styleOf(source);
    const range = rangeOf(source, this.text);
    const span = style === 'empty' ? this.beforeBlanks(range.start) : style === 'block' ? this.trimmed(range) : range;
    this.noteTag(source.tag, span);
    const fixable = inherited && !source.anchor && !source.tag && !this.isBroken(span);
    const node: ScalarNode = { type: 'scalar', text: textOf(source, range, this.text), style, span, fixable };
    if (source.anchor) this.anchors.close(source.anchor, node);
    return node;
  }

  private noteTag(tag: string | undefined, span: Span): void {
    if (!tag) return;
    this.problems.push({
      code: 'tag-used',
      message:
        `The tag ${quoted(tagName(tag))} has no meaning here and the value is read as it is written; take ` +
        'the tag out.',
      span,
    });
  }

  private isBroken(span: Span): boolean {
    return this.broken.some(({ start, end }) => start <= span.end && end >= span.start);
  }

  /** Broken inside the span, but not inside one of the parts, which answer for themselves. */
  private isBrokenBetween(span: Span, parts: readonly { span: Span }[]): boolean {
    return this.broken.some(
      ({ start, end }) =>
        start <= span.end &&
        end >= span.start &&
        !parts.some((part) => start >= part.span.start && start <= part.span.end),
    );
  }

  private trimmed({ start, end }: Span): Span {
    let at = end;
    while (at > start + 1 && isSpace(this.text.charCodeAt(at - 1))) at--;
    return { start, end: at };
  }

  private beforeBlanks(offset: number): Span {
    let at = offset;
    while (at > 0 && (this.text[at - 1] === ' ' || this.text[at - 1] === '\t')) at--;
    return { start: at, end: at };
  }
}

const noKeys: ReadonlySet<unknown> = new Set();

function isSpace(unit: number): boolean {
  return unit === 0x20 || unit === 0x09 || unit === 0x0a || unit === 0x0d;
}

function isEmptyScalar(scalar: Scalar): boolean {
  return styleOf(scalar) === 'empty';
}

function styleOf(scalar: Scalar): ScalarNode['style'] {
  switch (scalar.type) {
    case 'QUOTE_SINGLE':
      return 'single';
    case 'QUOTE_DOUBLE':
      return 'double';
    case 'BLOCK_FOLDED':
    case 'BLOCK_LITERAL':
      return 'block';
    default:
      return scalar.source ? 'plain' : 'empty';
  }
}
