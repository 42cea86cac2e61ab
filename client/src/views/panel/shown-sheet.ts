// The blocks that are shown: of those that changed, what differs is put in, and a reader finds all else as it was.
import type { SheetShown } from '../sheet-messages';
import { keepFocus, keepScroll } from './keeping';
import { settleStop } from './going';
import { isAlike, patch } from './patch';
import type { Ticks } from './ticks';

/** The page brings these words in the editor’s language. */
const oldWords = (): string => document.getElementById('sheet-old')?.textContent ?? '';

/** A block on the page, and what it was last made to say: the page’s own marks are in `shown` alone. */
interface Block {
  readonly shown: Element;
  readonly html: string;
  /** The same parsed, where none of it went into the page. */
  readonly said?: Element;
}

export class ShownSheet {
  private readonly blocks = new Map<string, Block>();
  private uri = '';

  constructor(
    private readonly main: HTMLElement,
    private readonly status: Element,
    private readonly ticks: Ticks,
  ) {}

  show(sheet: SheetShown): void {
    const isOther = this.uri !== sheet.uri;
    if (isOther) this.forget();
    this.uri = sheet.uri;
    const putBack = [keepScroll(this.main), keepFocus(this.main)];
    this.put(sheet);
    if (sheet.blocks.length > 0) this.ticks.restore(sheet.uri);
    for (const back of putBack) back();
    if (isOther) scrollTo(0, 0);
    this.main.toggleAttribute('data-old', sheet.old);
    this.say(sheet.old ? oldWords() : '');
  }

  clear(why: string): void {
    this.forget();
    this.main.removeAttribute('data-old');
    this.say(why);
  }

  private forget(): void {
    this.blocks.clear();
    this.main.replaceChildren();
    this.uri = '';
  }

  private put({ order, blocks }: SheetShown): void {
    const kept = new Set(order);
    for (const [id, { shown }] of this.blocks)
      if (!kept.has(id)) {
        shown.remove();
        this.blocks.delete(id);
      }
    for (const { id, html } of blocks) {
      const block = blockOf(html, this.blocks.get(id));
      if (block) this.blocks.set(id, block);
    }
    let at: Element | null = this.main.firstElementChild;
    for (const id of order) {
      const element = this.blocks.get(id)?.shown;
      if (element && element !== at) this.main.insertBefore(element, at);
      else at = at?.nextElementSibling ?? null;
    }
  }

  private say(words: string): void {
    if (this.status.textContent !== words) this.status.textContent = words;
  }
}

/** The block that says it: on the page it stays the one from before, wherever it can. */
function blockOf(html: string, before: Block | undefined): Block | undefined {
  const parsed = elementOf(html);
  if (!parsed) return undefined;
  const said = before && (before.said ?? elementOf(before.html));
  if (said && isAlike(said, parsed)) {
    const { shown } = before;
    if (!patch(shown, said, parsed)) return { shown, html, said: parsed };
    settleStop(shown);
    return { shown, html };
  }
  settleStop(parsed);
  before?.shown.replaceWith(parsed);
  return { shown: parsed, html };
}

/** The one element of a block. Nothing in it runs: the page allows no script but this one. */
function elementOf(html: string): Element | null {
  const template = document.createElement('template');
  template.innerHTML = html;
  return template.content.firstElementChild;
}
