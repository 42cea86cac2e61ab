// What a report leaves out, and why: checks switched off or regraded, accepted findings, lighter ones, files not read.
import type { WorkspaceConfig } from '../core/build/workspace-config';
import { checks } from '../core/checks/all';
import { isFirm } from '../core/checks/check';
import type { Grade } from '../core/manifest/house-file';
import { listed } from '../core/text';
import { plural } from './layout';

/** Checks by id that settings switch off, or give another grade. */
export interface SettingsUsed {
  readonly off: Set<string>;
  readonly regraded: Map<string, Grade>;
}

const checkById = new Map(checks.map((check) => [check.id, check]));

/** Adds what some settings do; a line for no check, or one without effect, does nothing. */
export function addSettings(used: SettingsUsed, settings: WorkspaceConfig): void {
  for (const [id] of settings.regraded) {
    const check = checkById.get(id);
    if (!check) continue;
    const grade = settings.grade(id, check.grade, isFirm(check));
    if (grade === 'off') used.off.add(id);
    else if (grade !== check.grade) used.regraded.set(id, grade);
  }
}

const mostNamed = 6;

const named = (names: readonly string[]): string =>
  names.length > mostNamed
    ? `${names.slice(0, mostNamed).join(', ')} and ${names.length - mostNamed} more`
    : listed(names, 'and');

/** The settings in a sentence each, for the end of a report. */
export function settingsText({ off, regraded }: SettingsUsed, offFindings: number): string[] {
  const lines: string[] = [];
  if (off.size > 0)
    lines.push(
      `${plural(off.size, 'check is', 'checks are')} switched off by fettle.yaml, with ` +
        `${plural(offFindings, 'finding', 'findings')}: ${named([...off].sort())}.`,
    );
  if (regraded.size > 0)
    lines.push(
      `${plural(regraded.size, 'check has', 'checks have')} another grade by fettle.yaml: ` +
        `${named([...regraded].sort().map(([id, grade]) => `${id} (${grade})`))}.`,
    );
  return lines;
}
