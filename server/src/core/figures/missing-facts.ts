// Lists of missing facts joined, each fact once.
import type { Missing } from './figure';

export const noneMissing: readonly Missing[] = [];

/** Missing facts of several figures, each once; each list by itself names a fact once. */
export function uniqueMissing(of: readonly { readonly missing: readonly Missing[] }[]): readonly Missing[] {
  let first = noneMissing;
  let later: (readonly Missing[])[] | undefined;
  for (const { missing: missingFacts } of of) {
    if (missingFacts.length === 0 || missingFacts === first) continue;
    if (first.length === 0) first = missingFacts;
    else (later ??= []).push(missingFacts);
  }
  return later ? merged(first, later) : first;
}

/** The first list where the later ones name nothing else, so that long lists are shared and not copied. */
function merged(first: readonly Missing[], later: readonly (readonly Missing[])[]): readonly Missing[] {
  let unique: Missing[] | undefined;
  const isShort = later.reduce((sum, { length }) => sum + length, 0) * first.length < shortPairs;
  const keys = isShort ? undefined : new Set(first.map(keyOf));
  // In long lists the very same ones come again and again; those need no key to be known by.
  const met = isShort ? undefined : new Set(first);
  for (const missingFacts of later)
    for (const lack of missingFacts) {
      const among = unique ?? first;
      if (met ? met.has(lack) : among.includes(lack)) continue;
      met?.add(lack);
      if (keys ? keys.has(keyOf(lack)) : among.some((one) => one.path === lack.path && one.doc.name === lack.doc.name))
        continue;
      keys?.add(keyOf(lack));
      (unique ??= [...first]).push(lack);
    }
  return unique ?? first;
}

/** Up to so many pairs it is quicker to compare one by one than to make keys. */
const shortPairs = 1_000;
const keyOf = ({ doc, path }: Missing): string => `${doc.name}\n${path}`;

/** A list in which each fact stands once. */
export function eachOnce(all: readonly Missing[]): readonly Missing[] {
  return all.length < 2 ? all : uniqueMissing(all.map((lack) => ({ missing: [lack] })));
}
