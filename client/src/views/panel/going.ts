// By click and by key to the text: every thing with a key of a place leads there; the tab key stops at one a block.

const places = '[data-place]';
/** What does something of its own when it is clicked: a box is ticked by itself, not by its words. */
const own = 'a, input, summary';

/** Says where a reader wants to go. */
export function goOnAsked(main: HTMLElement, go: (place: string) => void): void {
  const goFrom = (from: Element): boolean => {
    const place = from.closest(places)?.getAttribute('data-place');
    if (place === null || place === undefined) return false;
    go(place);
    return true;
  };
  main.addEventListener('click', (event) => {
    const target = event.target as Element;
    const link = target.closest('a');
    if (link) {
      event.preventDefault();
      return showAddressed(link);
    }
    // Who marks text wants to read or copy it.
    if (target.closest(own) || getSelection()?.isCollapsed === false) return;
    if (goFrom(target)) event.preventDefault();
  });
  main.addEventListener('keydown', (event) => {
    const target = event.target as Element;
    if (event.ctrlKey || event.altKey || event.metaKey || target.matches('a, summary')) return;
    const isDone =
      event.key === 'Enter'
        ? goFrom(target)
        : (event.key === 'ArrowDown' || event.key === 'ArrowUp') && step(main, target, event.key === 'ArrowDown');
    if (isDone) event.preventDefault();
  });
  main.addEventListener('focusin', ({ target }) => {
    if ((target as Element).matches(places)) stopAt(target as Element);
  });
}

/** Shows what a reference on the sheet leads to, and has the keyboard go on from there. */
function showAddressed(link: HTMLAnchorElement): void {
  const target = document.getElementById(link.getAttribute('href')?.replace(/^#/, '') ?? '');
  if (!target) return;
  target.scrollIntoView({ block: 'start' });
  if (!target.hasAttribute('tabindex')) target.setAttribute('tabindex', '-1');
  target.focus({ preventScroll: true });
}

/** From one place to the next, by the arrow keys. */
function step(main: HTMLElement, from: Element, isDown: boolean): boolean {
  if (!from.matches(places)) return false;
  const all = [...main.querySelectorAll<HTMLElement>(places)].filter((one) => one.checkVisibility());
  const next = all[all.indexOf(from as HTMLElement) + (isDown ? 1 : -1)];
  next?.focus();
  return next !== undefined;
}

/** The tab key stops at one place of each block: where it stopped before, else at the first. */
export function settleStop(block: Element): void {
  const all = [...(block.matches(places) ? [block] : []), ...block.querySelectorAll(places)];
  const stop = all.find((one) => one.hasAttribute('data-stop')) ?? all[0];
  for (const one of all) if (one !== stop) one.setAttribute('tabindex', '-1');
  if (stop) stopAt(stop);
}

function stopAt(place: Element): void {
  for (const one of place.closest('main > *')?.querySelectorAll('[data-stop]') ?? []) {
    if (one === place) continue;
    one.removeAttribute('data-stop');
    one.setAttribute('tabindex', '-1');
  }
  place.setAttribute('data-stop', 'true');
  place.setAttribute('tabindex', '0');
}
