// Which findings a build accepts: by id and place, with a reason, until a day; harm only with a name.
import type { Build } from '../build/build';
import type { Accepted, Finding } from './finding';

/** The acceptance that covers a finding; undefined where there is none that counts. */
export function acceptedFor(build: Build, finding: Finding): Accepted | undefined {
  for (const line of build.file.accept.value ?? []) {
    const because = line.because.value;
    const until = line.until.value;
    const by = line.by.value;
    if (line.finding.value !== finding.id || (line.at.value !== undefined && line.at.value !== finding.place.path)) continue;
    if (!because || (until !== undefined && until <= build.today) || (finding.grade === 'harm' && !by)) continue;
    return { because, ...(until ? { until } : {}), ...(by ? { by } : {}) };
  }
  return undefined;
}
