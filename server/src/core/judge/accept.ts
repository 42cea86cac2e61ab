// Which findings a build accepts: by id and subject, with a reason, until a day, and no worse than was weighed; harm
// only with a name.
import type { Build } from '../build/build';
import { isWeighed } from '../checks/text/accepted-kit';
import { memo } from '../figures/memo';
import type { Accepted, Finding } from './finding';

type Line = NonNullable<Build['file']['accept']['value']>[number];

/** The lines of a build by the id they accept, so that many of them are not gone through for each of many findings. */
const linesFor = memo((build: Build): ReadonlyMap<string, readonly Line[]> => {
  const lines = new Map<string, Line[]>();
  for (const line of build.file.accept.value ?? []) {
    const id = line.finding.value;
    if (id !== undefined) lines.set(id, [...(lines.get(id) ?? []), line]);
  }
  return lines;
});

/** The acceptance that covers a finding; undefined where there is none that counts, as for what was not read. */
export function acceptedFor(build: Build, finding: Finding): Accepted | undefined {
  if (finding.check.unread) return undefined;
  for (const line of linesFor(build).get(finding.id) ?? []) {
    const because = line.because.value;
    const until = line.until.value;
    const by = line.by.value;
    if (line.at.value !== undefined && line.at.value !== finding.subject) continue;
    if (!because || (until !== undefined && until <= build.today) || (finding.grade === 'harm' && !by)) continue;
    if (!isWeighed(line, finding)) continue;
    const atMost = line['at-most'].text;
    return { because, ...(atMost ? { atMost } : {}), ...(until ? { until } : {}), ...(by ? { by } : {}) };
  }
  return undefined;
}
