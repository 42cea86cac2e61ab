// The blocks that are shown: those that changed are put in, and a reader finds all else as it was.
import type { SheetShown } from '../sheet-messages';
import { keepFocus, keepScroll } from './keeping';
import { settleStops } from './going';
import type { Ticks } from './ticks';

/** The page brings these words in the editor’s language. */
const oldWords = (): string => document.getElementById('sheet-old')?.textContent ?? '';

export class ShownSheet {
  private readonly blocks = new Map<string, Element>();
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
    const putBack = [keepScroll(this.main), keepFocus(this.main), this.keepOpened()];
    this.put(sheet);
    if (sheet.blocks.length > 0) {
      settleStops(sheet.blocks.flatMap(({ id }) => this.blocks.get(id) ?? []));
      this.ticks.restore(sheet.uri);
    }
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

  private put({ order, blocks, whole }: SheetShown): void {
    const kept = new Set(order);
    for (const [id, element] of this.blocks)
      if (whole || !kept.has(id)) {
        element.remove();
        this.blocks.delete(id);
      }
    for (const { id, html } of blocks) {
      const element = elementOf(html);
      if (!element) continue;
      this.blocks.get(id)?.replaceWith(element);
      this.blocks.set(id, element);
    }
    let at: Element | null = this.main.firstElementChild;
    for (const id of order) {
      const element = this.blocks.get(id);
      if (element && element !== at) this.main.insertBefore(element, at);
      else at = at?.nextElementSibling ?? null;
    }
  }

  /** What was opened to be read stays open. */
  private keepOpened(): () => void {
    const opened = [...this.blocks].filter(([, one]) => one.querySelector('details[open]')).map(([id]) => id);
    return () => {
      for (const id of opened) this.blocks.get(id)?.querySelector('details')?.setAttribute('open', '');
    };
  }

  private say(words: string): void {
    if (this.status.textContent !== words) this.status.textContent = words;
  }
}

/** The one element of a block. Nothing in it runs: the page allows no script but this one. */
function elementOf(html: string): Element | null {
  const template = document.createElement('template');
  template.innerHTML = html;
  return template.content.firstElementChild;
}
