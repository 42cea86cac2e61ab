// What a report leaves out, and why: checks switched off or regraded, accepted findings, lighter ones, files not read.
import type { WorkspaceConfig } from '../core/build/workspace-config';
import { checks } from '../core/checks/all';
import { isFirm } from '../core/checks/check';
import type { Grade } from '../core/manifest/house-file';
import type { Language } from '../core/words/language';

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

const named = (names: readonly string[], language: Language): string =>
  names.length > mostNamed
    ? language.words`${names.slice(0, mostNamed).join(', ')} and ${names.length - mostNamed} more`
    : language.listed(names);

/** The settings in a sentence each, for the end of a report. */
export function settingsText({ off, regraded }: SettingsUsed, offFindings: number, language: Language): string[] {
  const lines: string[] = [];
  const offNames = named([...off].sort(), language);
  const findings = offFindings === 1 ? language.word('1 finding') : language.words`${offFindings} findings`;
  if (off.size === 1)
    lines.push(language.words`1 check is switched off by fettle.yaml, with ${findings}: ${offNames}.`);
  if (off.size > 1)
    lines.push(language.words`${off.size} checks are switched off by fettle.yaml, with ${findings}: ${offNames}.`);
  const own = [...regraded].sort().map(([id, grade]) => `${id} (${grade})`);
  if (own.length === 1) lines.push(language.words`1 check has another grade by fettle.yaml: ${own[0]!}.`);
  if (own.length > 1)
    lines.push(language.words`${own.length} checks have another grade by fettle.yaml: ${named(own, language)}.`);
  return lines;
}
