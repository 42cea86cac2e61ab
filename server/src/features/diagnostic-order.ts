// In which order a file’s findings are handed over: a client shows those of one place in the order they come.
import { severities, type Diagnostic, type Position } from './shapes';

/** The worst grade first; those of one grade as they stand. */
export const worstFirst = (found: readonly Diagnostic[]): Diagnostic[] =>
  [...found].sort((a, b) => rankOf(a) - rankOf(b));

/** Of the two grades that a client shows as errors, harm is the worse. */
const rankOf = ({ severity, source }: Diagnostic): number => (source === 'fettle · harm' ? 0 : severity);

/**
 * The same for a client that draws a hint as short as it can and shows what begins first, and of that the shortest,
 * above the rest: a hint where something worse begins is to begin one character behind it.
 */
export function hintsBehind(found: readonly Diagnostic[]): Diagnostic[] {
  const worse = new Set(
    found.filter(({ severity }) => severity < severities.hint).map(({ range }) => key(range.start)),
  );
  return found.map((one) => {
    const { start, end } = one.range;
    const isLong = end.line > start.line || end.character > start.character + 1;
    if (one.severity !== severities.hint || !isLong || !worse.has(key(start))) return one;
    return { ...one, range: { start: { ...start, character: start.character + 1 }, end } };
  });
}

const key = ({ line, character }: Position): string => `${line}:${character}`;
