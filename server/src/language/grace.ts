// Grace: findings of what someone is just writing wait until the place is left, a pause is made, or the file is saved.
import { TextDocumentSaveReason } from 'vscode-languageserver/node';
import type { Doc } from '../core/parts/doc';
import { endOf, meet, shiftedRange, type Change, type Span } from '../core/text';
import { writingAt } from '../core/yaml';
import { worstFirst } from '../features/diagnostic-order';
import type { Diagnostic, Position, Range } from '../features/shapes';
import {
  isBegun,
  moved,
  settledBeside,
  shownStill,
  steadied,
  type Steadied,
  type WritingRanges,
} from '../features/steady';
import type { AnalyzedFile } from '../session/session';

/** Calls back after so many milliseconds; what it gives takes that back. */
export type After = (ms: number, done: () => void) => () => void;

/** What is shown of an open file, and what holds. */
interface Shown {
  readonly judged: AnalyzedFile;
  readonly fresh: readonly Diagnostic[];
  readonly shown: Diagnostic[];
  /** What was shown when the place of writing changed: of the rest only what still holds comes to be shown. */
  readonly before?: readonly Diagnostic[];
  /** Whether something waits, or is no more and still shown. */
  readonly holds: boolean;
  /** Names what is shown: another name, another list. Undefined where it is to be worked out again. */
  readonly id?: string;
}

export interface Taken {
  readonly shown: Diagnostic[];
  /** What holds. */
  readonly fresh: readonly Diagnostic[];
  /** Names what is shown. */
  readonly id: string;
}

interface Typing {
  readonly uri: string;
  readonly writing: WritingRanges;
}

export class Grace {
  private typing: Typing | undefined;
  private readonly files = new Map<string, Shown>();
  private takeBack: () => void = () => undefined;
  private count = 0;
  /** Files that are being saved because some time has passed. */
  private readonly byDelay = new Set<string>();

  constructor(
    private readonly after: After,
    /** Milliseconds without a key after which everything is shown; 0: at once. */
    private readonly pauseMs: () => number,
    /** Told when there is something else to show of these files. */
    private readonly changed: (uris: readonly string[]) => void,
  ) {}

  get isTyping(): boolean {
    return this.typing !== undefined;
  }

  /** A text was changed; `doc` is what it is now. */
  edited(uri: string, changes: readonly Change[], doc: Doc): void {
    const last = changes.at(-1);
    if (this.pauseMs() === 0 || !last) return;
    if (this.typing && this.typing.uri !== uri) this.settle();
    this.write(uri, endOf(last), doc, changes);
    this.takeBack();
    this.takeBack = this.after(this.pauseMs(), () => this.settle());
  }

  /** The cursor went somewhere without a change; no position: out of the file. */
  went(uri: string, position: Position | undefined, doc: Doc | undefined): void {
    if (!this.typing) return;
    if (this.typing.uri !== uri || !position || !doc) this.settle();
    else if (!this.write(uri, position, doc, [])) this.changed(this.holding());
  }

  /** Everything is shown as it is: a pause was made, the file saved or closed. */
  settle(): void {
    this.takeBack();
    if (!this.typing) return;
    this.typing = undefined;
    this.changed(this.holding());
  }

  /** A file is about to be saved; a client that tells so says why. */
  willSave(uri: string, reason: TextDocumentSaveReason): void {
    if (reason === TextDocumentSaveReason.AfterDelay) this.byDelay.add(uri);
    else this.byDelay.delete(uri);
  }

  /** A save ends the writing in that file, unless the editor saves by itself after a while: nobody asked for that. */
  saved(uri: string): void {
    if (!this.byDelay.delete(uri) && this.typing?.uri === uri) this.settle();
  }

  closed(uri: string): void {
    this.files.delete(uri);
    this.byDelay.delete(uri);
    if (this.typing?.uri === uri) this.settle();
  }

  /** What was shown counts no more: it was made under other settings. */
  forget(): void {
    this.files.clear();
  }

  /** What is shown of a file as it was judged now. */
  take(uri: string, judged: AnalyzedFile, diagnostics: () => Diagnostic[]): Taken {
    const before = this.files.get(uri);
    if (before?.judged === judged && before.id !== undefined)
      return { shown: before.shown, fresh: before.fresh, id: before.id };
    const fresh = before?.judged === judged ? before.fresh : diagnostics();
    const id = `${++this.count}`;
    const now = this.steadied(uri, before && shownStill(before.shown, before.before, fresh), fresh);
    const shown = worstFirst(now.shown);
    this.files.set(uri, { judged, fresh, ...now, shown, id });
    return { shown, fresh, id };
  }

  private steadied(uri: string, before: readonly Diagnostic[] | undefined, fresh: readonly Diagnostic[]): Steadied {
    const { typing } = this;
    const isHere = typing?.uri === uri;
    if (!typing || (!before && !isHere)) return { shown: [...fresh], holds: false };
    return steadied(before ?? [], fresh, (found) => isHere && isBegun(found, typing.writing));
  }

  /** The files of which something else is shown than holds; that is to be worked out again. */
  private holding(): string[] {
    const held = [...this.files].filter(([, { holds }]) => holds);
    for (const [uri, { id: _, ...file }] of held) this.files.set(uri, file);
    return held.map(([uri]) => uri);
  }

  /** Takes the place of writing over; whether it is in the same entry as before. */
  private write(uri: string, position: Position, doc: Doc, changes: readonly Change[]): boolean {
    const before = this.typing;
    const writing = rangesOf(doc, position);
    const isSame = before !== undefined && meet(changes.reduce(shiftedRange, before.writing.span), writing.span);
    this.typing = { uri, writing };
    const file = this.files.get(uri);
    if (file) {
      const [shown, fresh] = [moved(file.shown, uri, changes), moved(file.fresh, uri, changes)];
      const isLeft = before !== undefined && !isSame;
      const then = file.before ? moved(file.before, uri, changes) : isLeft && changes.length > 0 ? shown : undefined;
      const left = isLeft ? settledBeside(shown, fresh, writing) : shown;
      this.files.set(uri, { ...file, fresh, shown: left, ...(then ? { before: then } : {}) });
    }
    if (before && !isSame)
      for (const [other, one] of this.files)
        if (other !== uri) this.files.set(other, { ...one, shown: [...one.fresh] });
    return isSame;
  }
}

function rangesOf(doc: Doc, position: Position): WritingRanges {
  const { span, begun, thing } = writingAt(doc.parsed, doc.lines.offsetAt(position));
  const range = (of: Span): Range => doc.lines.rangeOf(of);
  return { span: range(span), begun: begun.map(range), ...(thing ? { thing: range(thing) } : {}) };
}
