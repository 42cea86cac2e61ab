// Keys of missing facts as actions: the one that decides most by itself, and all that are missing at a place at once.
import type { Missing } from '../core/figures/figure';
import { FencedDoc } from '../core/guide/fenced';
import { fillIn, type FillIn, type Judged } from '../core/judge/fill-in';
import { waiting } from '../core/judge/waiting';
import type { Doc } from '../core/parts/doc';
import { visible } from '../core/text';
import type { Language } from '../core/words/language';
import type { Hint } from './hints';
import { Rewrite } from './rewrite';
import { documentEdit, type TextDocumentEdit, type View } from './shapes';

/** Putting a key in is judged, fact by fact. */
const mostFacts = 20;

interface Wanted {
  readonly hint: Hint;
  readonly lack: Missing;
}

/** Keys put in, as an action shows it. */
interface Made {
  readonly title: string;
  /** What it answers. */
  readonly hints: readonly Hint[];
  readonly edits: TextDocumentEdit[];
}

/** Puts the keys of hinted facts in, one after the other, each into what the ones before it have left. */
export class FillIns {
  tried = 0;
  private readonly wanted: readonly Wanted[];
  private readonly all: number;
  private readonly put: { readonly hint: Hint; readonly filled: FillIn }[] = [];
  private readonly texts = new Map<Doc, Rewrite>();
  private judged: Judged | undefined;

  /** Facts of other files are out of reach of a guide’s block: its edits stay within its fence. */
  constructor(
    private readonly view: View,
    hints: readonly Hint[],
  ) {
    const wanted = hints
      .flatMap((hint) => hint.facts.map(({ lack }) => ({ hint, lack })))
      .filter(({ lack }) => lack.doc === view.doc || !(view.doc instanceof FencedDoc));
    this.all = wanted.length;
    this.wanted = wanted.slice(0, mostFacts);
    this.judged = view.build && { build: view.build, judgement: view.judgement };
  }

  get isOpen(): boolean {
    return this.judged !== undefined && this.tried < this.wanted.length;
  }

  tryNext(): void {
    const wanted = this.wanted[this.tried++];
    const lack = wanted && this.lackNow(wanted.lack);
    const filled = lack && this.judged && fillIn(this.judged, lack);
    if (!wanted || !filled) return;
    const { doc } = wanted.lack;
    const text = this.texts.get(doc) ?? new Rewrite(doc.text);
    text.apply(filled.edits);
    this.texts.set(doc, text);
    this.put.push({ hint: wanted.hint, filled });
    this.judged = filled.after;
  }

  /** The fact in the texts as they stand with the keys before it. */
  private lackNow(lack: Missing): Missing | undefined {
    if (this.put.length === 0) return lack;
    const isSame = (one: Missing): boolean => one.doc.name === lack.doc.name && one.path === lack.path;
    return waiting(this.judged?.judgement.findings ?? []).find((one) => isSame(one.lack))?.lack;
  }

  /** The first key alone, and with the others. */
  made(language: Language): Made[] {
    const [first] = this.put;
    if (!first) return [];
    const { title, doc, edits } = first.filled;
    const single = {
      title: visible(language.plain(title)),
      hints: [first.hint],
      edits: [documentEdit(this.view, doc, edits)],
    };
    if (this.put.length === 1) return [single];
    const together = {
      title: visible(this.titleOfAll(language)),
      hints: [...new Set(this.put.map(({ hint }) => hint))],
      edits: [...this.texts].map(([doc, text]) => documentEdit(this.view, doc, text.edits())),
    };
    return [single, together];
  }

  private titleOfAll(language: Language): string {
    const { length } = this.put;
    const [doc] = this.texts.keys();
    if (this.texts.size > 1)
      return language.words`Add ${length} missing keys to ${this.texts.size} files, to be filled in`;
    return length === this.all
      ? language.words`Add all ${length} missing keys to ${doc?.name ?? ''}, to be filled in`
      : language.words`Add ${length} of ${this.all} missing keys to ${doc?.name ?? ''}, to be filled in`;
  }
}
