// Missing facts with the findings that wait for them.
import type { Missing } from '../figures/figure';
import type { Gap } from '../parts/fact';
import type { Span } from '../text';
import type { Finding } from './finding';

/** A missing fact with all findings that wait for it. */
export interface Waiting {
  readonly lack: Missing;
  readonly findings: readonly Finding[];
}

/**
 * Findings by the facts they wait for, in the order in which the facts are first asked for; one that waits for
 * several stands at each.
 */
export function waiting(findings: readonly Finding[]): Waiting[] {
  const byFact = new Map<string, { lack: Missing; findings: Finding[] }>();
  for (const finding of findings) {
    for (const lack of finding.missing) {
      const key = factKey(lack);
      const group = byFact.get(key) ?? { lack, findings: [] };
      group.findings.push(finding);
      byFact.set(key, group);
    }
  }
  return [...byFact.values()];
}

/** What a missing fact is known by; also an order that depends on files and places alone. */
export const factKey = ({ doc, path }: Missing): string => `${doc.name}\n${path}`;

/**
 * Where a missing fact would be written: the value that does not tell it, or the map nearest to it; undefined where
 * its file has none.
 */
export function spanOfMissing({ fact }: Missing): Span | undefined {
  let gap: Gap | undefined = fact?.gap;
  while (gap && !gap.map) gap = gap.parent;
  return (fact?.node ?? fact?.holder ?? gap?.map)?.span;
}
