// Missing facts with the findings that wait for them.
import type { Build, Placed } from '../build/build';
import type { Missing } from '../figures/figure';
import type { Gap } from '../parts/fact';
import type { Span } from '../text';
import { grades, type Grade } from '../manifest/house-file';
import type { Finding } from './finding';

/** A missing fact with all findings that wait for it. */
export interface Waiting {
  readonly lack: Missing;
  readonly findings: readonly Finding[];
}

/**
 * Findings by the facts they wait for, in the order in which the facts are first asked for; one that waits for
 * several stands at each. Of a part of the build of which nothing at all is known, everything is one fact.
 */
export function waiting(findings: readonly Finding[], build?: Build): Waiting[] {
  const silent = build ? silentParts(build) : [];
  const byFact = new Map<string, { lack: Missing; findings: Finding[] }>();
  for (const finding of findings) {
    for (const missing of finding.missing) {
      const lack = silent.find(({ covers }) => covers(missing))?.lack ?? missing;
      const key = factKey(lack);
      const group = byFact.get(key) ?? { lack, findings: [] };
      if (!group.findings.includes(finding)) group.findings.push(finding);
      byFact.set(key, group);
    }
  }
  return [...byFact.values()];
}

/**
 * What a fact decides of each grade, the heaviest first; below zero, so that most comes first. Of what waits for
 * several facts each has its part.
 */
export function weightsOf({
  decides,
  helps,
}: {
  readonly decides: readonly Finding[];
  readonly helps: readonly Finding[];
}): readonly number[] {
  const of = (grade: Grade, findings: readonly Finding[]): readonly Finding[] =>
    findings.filter(({ atWorst }) => atWorst === grade);
  return grades.flatMap((grade) => [
    -Math.sign(of(grade, decides).length + of(grade, helps).length),
    -of(grade, decides).length,
    -of(grade, helps).reduce((sum, { missing }) => sum + 1 / missing.length, 0),
  ]);
}

/** A part of which no file states anything: its file is not there or cannot be read, or it is not named yet. */
interface SilentPart {
  readonly lack: Missing;
  readonly covers: (lack: Missing) => boolean;
}

function silentParts(build: Build): SilentPart[] {
  return build.all().flatMap((placed) => {
    const { used, path, label, doc, at } = placed;
    const file = used?.file;
    if (used ? file?.parsed.root !== undefined : states(placed)) return [];
    const why = file ? 'whose file cannot be read' : 'whose file is not found';
    const what = used
      ? `everything about ${used.name}, ${why}`
      : `everything about the ${label}, which is not named yet`;
    const lack = { doc, path: at.use.path, fact: at.use, what };
    return [{ lack, covers: (one) => one.doc === file || (one.doc === doc && one.path.startsWith(`${path}.`)) }];
  });
}

/** Whether the build itself states any fact of a part that it does not name. */
const states = ({ part, map }: Placed): boolean =>
  map?.entries.some(({ key, value }) => key in part && !(value.type === 'scalar' && value.style === 'empty')) ?? false;

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
