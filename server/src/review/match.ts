// Which findings of two judgements are the same: by what they are about, never by their lines.

/** What a finding is known by, whether it was judged just now or recorded once. */
export interface KnownFinding {
  readonly id: string;
  readonly subject: string;
  readonly fingerprint: string;
  readonly text: string;
}

export interface Matched<A, B> {
  readonly pairs: readonly (readonly [A, B])[];
  readonly gone: readonly A[];
  readonly come: readonly B[];
}

/** Ways to be the same, the surest first. A subject that counts (`fans[1]`) shifts when one is put before it. */
const ways: readonly ((finding: KnownFinding) => string | undefined)[] = [
  ({ id, subject, fingerprint, text }) => [id, subject, fingerprint, text].join('\n'),
  ({ id, subject, fingerprint }) => [id, subject, fingerprint].join('\n'),
  ({ id, subject }) => (subject.includes('[') ? undefined : `${id}\n${subject}`),
  ({ fingerprint }) => fingerprint,
  ({ id, subject }) => `${id}\n${subject}`,
];

/** Pairs the findings of one file before and after; each is in one pair at most. */
export function matchFindings<A extends KnownFinding, B extends KnownFinding>(
  before: readonly A[],
  after: readonly B[],
): Matched<A, B> {
  const pairs: (readonly [A, B])[] = [];
  let gone = before;
  let come = after;
  for (const way of ways) {
    const waiting = new Map<string, A[]>();
    for (const one of [...gone].reverse()) {
      const key = way(one);
      if (key === undefined) continue;
      const alike = waiting.get(key);
      if (alike) alike.push(one);
      else waiting.set(key, [one]);
    }
    const paired = new Set<A>();
    come = come.filter((one) => {
      const key = way(one);
      const other = key === undefined ? undefined : waiting.get(key)?.pop();
      if (!other) return true;
      pairs.push([other, one]);
      paired.add(other);
      return false;
    });
    gone = gone.filter((one) => !paired.has(one));
  }
  return { pairs, gone, come };
}
