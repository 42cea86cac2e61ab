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
    for (const one of shown) if (!one.matches('.here')) mark(one, true);
    return shown;
  }

  /** What stands for the line itself, else for the innermost that it lies in; in a picture at any rate. */
  private found(): readonly Element[] {
    const { on, around } = this.last;
    if (on.length + around.length === 0) return [];
    const wanted = new Set([...on, ...around]);
    const all = [...this.main.querySelectorAll('[data-place]')].filter((one) => wanted.has(placeOf(one)));
    const firstOf = (some: readonly Element[]): readonly Element[] =>
      around.map((key) => some.filter((one) => placeOf(one) === key)).find(({ length }) => length > 0) ?? [];
    const own = all.filter((one) => on.includes(placeOf(one)));
    const shown = own.length > 0 ? own : firstOf(all);
    if (shown.some((one) => one.matches(drawn))) return shown;
    return [...shown, ...firstOf(all.filter((one) => one.matches(drawn)))];
  }
}

const placeOf = (one: Element): string => one.getAttribute('data-place') ?? '';

/** A thing in a picture. */
const drawn = '.p-thing';

function mark(one: Element, isHere: boolean): void {
  one.classList.toggle('here', isHere);
  if (isHere) one.setAttribute('aria-current', 'true');
  else one.removeAttribute('aria-current');
}

function isSeen(one: Element): boolean {
  const { top, bottom } = one.getBoundingClientRect();
  return bottom > 0 && top < innerHeight;
}
