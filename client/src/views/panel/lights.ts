// Lights up what stands for the cursor’s line. It scrolls only where none of that can be seen.
import type { Lit } from '../sheet-messages';

export class Lights {
  private last: Pick<Lit, 'on' | 'around'> = { on: [], around: [] };

  constructor(private readonly main: HTMLElement) {}

  set(lit: Lit): void {
    this.last = lit;
    const shown = this.again();
    // Who reads on the sheet is not moved about on it.
    if (shown.length === 0 || document.hasFocus() || shown.some(isSeen)) return;
    shown[0]!.scrollIntoView({ block: 'center' });
  }

  /** Lights up the same once more, where blocks were put in; returns what is lit. */
  again(): readonly Element[] {
    const shown = this.found();
    const wanted = new Set<Element>(shown);
    for (const one of this.main.querySelectorAll('.here')) if (!wanted.has(one)) mark(one, false);
    for (const one of shown) mark(one, true);
    return shown;
  }

  private found(): readonly Element[] {
    const all = [...this.main.querySelectorAll('[data-place]')];
    const of = (keys: readonly string[]): Element[] => {
      const wanted = new Set(keys);
      return all.filter((one) => wanted.has(one.getAttribute('data-place')!));
    };
    const on = of(this.last.on);
    if (on.length > 0) return on;
    for (const key of this.last.around) {
      const around = of([key]);
      if (around.length > 0) return around;
    }
    return [];
  }
}

function mark(one: Element, isHere: boolean): void {
  one.classList.toggle('here', isHere);
  if (isHere) one.setAttribute('aria-current', 'true');
  else one.removeAttribute('aria-current');
}

function isSeen(one: Element): boolean {
  const { top, bottom } = one.getBoundingClientRect();
  return bottom > 0 && top < innerHeight;
}
