// What a reader is at while blocks are put in anew: what the keyboard is on, and what stands at the top of the window.

/** Remembers what the keyboard is on, by its block and its key; gives what puts it back. */
export function keepFocus(main: HTMLElement): () => void {
  const focused = document.activeElement;
  const block = focused?.closest('main > *');
  if (!focused || !block) return () => undefined;
  const alike = selectorOf(focused);
  const index = [...block.querySelectorAll(alike)].indexOf(focused);
  const { id } = block;
  return () => {
    if (main.contains(focused)) return;
    const now = document.getElementById(id);
    const found = now ? [...now.querySelectorAll<HTMLElement>(alike)] : [];
    (found[index] ?? found.at(-1) ?? main).focus({ preventScroll: true });
  };
}

function selectorOf(one: Element): string {
  const key = one.getAttribute('data-place');
  return key === null ? one.tagName.toLowerCase() : `[data-place="${CSS.escape(key)}"]`;
}

/** Remembers what stands at the top of the window; gives what scrolls so that it stands there again. */
export function keepScroll(main: HTMLElement): () => void {
  if (scrollY === 0) return () => undefined;
  const first = [...main.children].find((block) => block.getBoundingClientRect().bottom > 0);
  if (!first) return () => undefined;
  const { id } = first;
  const { top } = first.getBoundingClientRect();
  return () => {
    const now = document.getElementById(id)?.getBoundingClientRect().top;
    if (now !== undefined && Math.abs(now - top) > 1) scrollBy(0, now - top);
  };
}
