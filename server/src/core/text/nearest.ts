// The nearest known word to one that is not known.
import { distance } from 'fastest-levenshtein';

const longestWord = 100;

/**
 * The known word that `word` is plausibly a slip of: at most a third of its letters differ (one
 * always may), and two neighbouring letters changed about count as one. Case counts as a difference.
 * Of equally near words the one with the same first letter wins, then the first in code unit order.
 */
export function nearest(word: string, known: Iterable<string>): string | undefined {
  if (word.length === 0 || word.length > longestWord) return undefined;
  const allowed = Math.max(1, Math.floor(word.length / 3));
  let best: string | undefined;
  let bestDistance = allowed;
  for (const candidate of known) {
    if (Math.abs(candidate.length - word.length) > bestDistance) continue;
    const apart = slips(word, candidate);
    if (apart > bestDistance) continue;
    if (best === undefined || apart < bestDistance || isPreferred(word, candidate, best)) best = candidate;
    bestDistance = apart;
  }
  return best;
}

function slips(word: string, candidate: string): number {
  return isNeighbourSwap(word, candidate) ? 1 : distance(word, candidate);
}

function isNeighbourSwap(a: string, b: string): boolean {
  if (a.length !== b.length) return false;
  let i = 0;
  while (i < a.length && a[i] === b[i]) i++;
  return a[i] === b[i + 1] && a[i + 1] === b[i] && i + 1 < a.length && a.slice(i + 2) === b.slice(i + 2);
}

function isPreferred(word: string, candidate: string, best: string): boolean {
  const sameStart = candidate[0] === word[0];
  if (sameStart !== (best[0] === word[0])) return sameStart;
  return candidate < best;
}
