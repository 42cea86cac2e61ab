// Two words of one clause, found in time that grows with the text alone.

/** Words of a text, and where they begin. */
export interface Stretch {
  readonly index: number;
  readonly words: string;
}

/**
 * The first stretch from `first` to the last `then` (a global expression) behind it, with no full stop or semicolon
 * between. Each clause is looked through once, where one expression with “anything between” would look again from
 * each `first`.
 */
export function inOneClause(text: string, first: RegExp, then: RegExp): Stretch | undefined {
  let at = 0;
  for (const clause of text.split(/[.;]/)) {
    const start = first.exec(clause);
    if (start) {
      const from = start.index + start[0].length;
      const last = [...clause.slice(from).matchAll(then)].at(-1);
      if (last)
        return { index: at + start.index, words: clause.slice(start.index, from + last.index + last[0].length) };
    }
    at += clause.length + 1;
  }
  return undefined;
}
