// One tree of elements made to say what another says: only what differs is touched, and what a reader did to the rest,
// and is at in it, stays.

/**
 * Has a shown element, made as `before` and since then changed in attributes alone, say what `after` says. Returns
 * whether elements were put in: they are taken out of `after`, since the page’s policy does not hold for copies.
 */
export function patch(shown: Element, before: Element, after: Element): boolean {
  patchAttributes(shown, before, after);
  return patchChildren(shown, before, after);
}

/** Whether one may become the other: who is at one thing is not to find another in its place. */
export function isAlike(one: Node, other: Node): boolean {
  if (one.nodeName !== other.nodeName) return false;
  return !(one instanceof Element && other instanceof Element) || keys.every((key) => isSame(one, other, key));
}

const keys = ['id', 'data-place'] as const;

const isSame = (one: Element, other: Element, name: string): boolean =>
  one.getAttribute(name) === other.getAttribute(name);

/** By name alone: each attribute asked for as an object would be made one. */
function patchAttributes(shown: Element, before: Element, after: Element): void {
  for (const name of after.getAttributeNames())
    if (!isSame(before, after, name)) shown.setAttribute(name, after.getAttribute(name) ?? '');
  for (const name of before.getAttributeNames()) if (!after.hasAttribute(name)) shown.removeAttribute(name);
}

/** Children are told apart from both ends; those between that have no like are others. */
function patchChildren(shown: Node, before: Node, after: Node): boolean {
  const [live, old, anew] = [[...shown.childNodes], [...before.childNodes], [...after.childNodes]];
  const most = Math.min(old.length, anew.length);
  let head = 0;
  while (head < most && isAlike(old[head]!, anew[head]!)) head++;
  let tail = 0;
  while (tail < most - head && isAlike(old.at(-1 - tail)!, anew.at(-1 - tail)!)) tail++;
  let isPutIn = false;
  const each = (at: number, then: number): void => {
    if (patchNode(live[at]!, old[at]!, anew[then]!)) isPutIn = true;
  };
  for (let i = 0; i < head; i++) each(i, i);
  for (let i = 1; i <= tail; i++) each(old.length - i, anew.length - i);
  const rest = live[old.length - tail] ?? null;
  for (const one of live.slice(head, old.length - tail)) shown.removeChild(one);
  for (const one of anew.slice(head, anew.length - tail)) {
    shown.insertBefore(one, rest);
    isPutIn = true;
  }
  return isPutIn;
}

function patchNode(shown: Node, before: Node, after: Node): boolean {
  if (before.isEqualNode(after)) return false;
  if (shown instanceof Element) return patch(shown, before as Element, after as Element);
  shown.nodeValue = after.nodeValue;
  return false;
}
