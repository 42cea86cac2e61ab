// In which order a file’s findings are handed over: a client shows those of one place in the order they come.
import { sourceOf, type Diagnostic } from './shapes';

/** The worst grade first; those of one grade as they stand. */
export const worstFirst = (found: readonly Diagnostic[]): Diagnostic[] =>
  [...found].sort((a, b) => rankOf(a) - rankOf(b));

/** Of the two grades that a client shows as errors, harm is the worse. */
const rankOf = ({ severity, source }: Diagnostic): number => (source === sourceOf('harm') ? 0 : severity);
