// Items as they are listed in a sentence.

/** `a, b and c`, or with another last word: `a, b or c`; empty for no items. */
export function listed(items: readonly string[], last: 'and' | 'or' = 'and'): string {
  return items.length > 1 ? `${items.slice(0, -1).join(', ')} ${last} ${items.at(-1)!}` : items.join('');
}
