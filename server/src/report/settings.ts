// The settings that hold for a file, as plain data and as text: each with the line that states it, or as the default.
import type { MarginName, WorkspaceConfig } from '../core/build/workspace-config';
import { checks } from '../core/checks/all';
import { isFirm } from '../core/checks/check';
import { show } from '../core/figures/sentence';
import { known } from '../core/figures/figure';
import { judgeFile } from '../core/judge/judge';
import { houseFile, margins } from '../core/manifest/house-file';
import { shownText, type Fact } from '../core/parts/fact';
import type { Language } from '../core/words/language';
import { block, columns, padded, safe } from './layout';

interface Row {
  /** As in the settings: `margins.clearance`. */
  readonly key: string;
  /** As it is written there, or the default; null where there is none. */
  readonly value: string | null;
  /** Where it stands, the line counted from one; absent for a default. */
  readonly at?: { readonly file: string; readonly line: number };
  /** What it changes, or that it changes nothing. */
  readonly remark?: string;
}

interface Problem {
  readonly file: string;
  readonly line: number;
  readonly id: string;
  readonly message: string;
}

export interface SettingsReport {
  readonly workspace: string;
  readonly because: string;
  readonly settings: readonly Row[];
  /** What of the settings is not read, or has no effect. */
  readonly problems: readonly Problem[];
}

interface Found {
  readonly settings: WorkspaceConfig;
  readonly markedBy: 'settings' | 'parts' | undefined;
}

/** `shown` gives a name below the root as people see it; the empty name is the root. */
export function settingsReport(
  { settings, markedBy }: Found,
  shown: (name: string) => string,
  language: Language,
): SettingsReport {
  const because =
    markedBy === 'settings'
      ? language.words`${shown('fettle.yaml')} makes it one`
      : markedBy === 'parts'
        ? language.word('its folder parts makes it one; no fettle.yaml holds here, so all is as by default')
        : language.word('no fettle.yaml and no folder parts above; all is as by default');
  const keys = Object.keys(houseFile) as (keyof typeof houseFile)[];
  return {
    workspace: shown(''),
    because,
    settings: keys.flatMap((key) => rowsOf(key, settings, shown, language)),
    problems: problemsIn(settings, shown, language),
  };
}

function rowsOf(
  key: keyof typeof houseFile,
  settings: WorkspaceConfig,
  shown: (name: string) => string,
  language: Language,
): Row[] {
  const file = settings.file;
  if (key === 'margins') return marginNames.map((name) => marginRow(name, settings, shown));
  if (key === 'grades')
    return [...(file?.grades.value ?? [])].map(([id, fact]) => gradeRow(id, fact, settings, shown, language));
  const fact = file?.[key] as Fact<unknown> | undefined;
  const standard = key === 'parts' ? settings.folders.join(', ') : null;
  return [fact?.node ? stated(key, fact, shown) : { key, value: standard }];
}

const marginNames = Object.keys(margins) as MarginName[];

function marginRow(name: MarginName, settings: WorkspaceConfig, shown: (name: string) => string): Row {
  const key = `margins.${name}`;
  const set = settings.margin(name);
  if ('fact' in set) return stated(key, set.fact, shown);
  const { standard, dimension, unit } = set;
  return { key, value: show(known(standard, dimension, name, { unit, source: '' })) };
}

/** A grade, beside the one that the check has of itself. */
function gradeRow(
  id: string,
  fact: Fact<unknown>,
  settings: WorkspaceConfig,
  shown: (name: string) => string,
  language: Language,
): Row {
  const row = stated(`grades.${id}`, fact, shown);
  const check = checks.find((one) => one.id === id);
  if (!check) return { ...row, remark: language.word('changes nothing: there is no such check') };
  const comesTo = settings.grade(id, check.grade, isFirm(check));
  if (comesTo !== fact.value) return { ...row, remark: language.words`changes nothing: it stays ${comesTo}` };
  const same = comesTo === check.grade;
  return { ...row, remark: same ? language.word('as without it') : language.words`${check.grade} without it` };
}

function stated(key: string, fact: Fact<unknown>, shown: (name: string) => string): Row {
  const { line } = fact.doc.lines.positionAt(fact.entry?.keySpan.start ?? fact.node!.span.start);
  return { key, value: shownText(fact), at: { file: shown(fact.doc.name), line: line + 1 } };
}

function problemsIn({ doc }: WorkspaceConfig, shown: (name: string) => string, language: Language): Problem[] {
  return (doc ? judgeFile(doc).findings : []).map(({ id, said, underline }) => ({
    file: shown(underline.doc.name),
    line: underline.doc.lines.positionAt(underline.span.start).line + 1,
    id,
    message: language.said(said),
  }));
}

export function settingsText(report: SettingsReport, language: Language): string {
  const { workspace, because, settings, problems } = report;
  const [standard, unstated] = [language.word('default'), language.word('not stated')];
  const widest = (texts: readonly string[]): number => Math.max(0, ...texts.map(columns));
  const from = ({ at, value }: Row): string => (at ? `${at.file}:${at.line}` : value === null ? '' : standard);
  const rows = settings.map((row) => ({ ...row, from: safe(from(row)), value: safe(row.value ?? unstated) }));
  const [keys, froms] = [widest(rows.map(({ key }) => safe(key))), widest(rows.map((row) => row.from))];
  const lines = rows.flatMap(({ key, value, from: place, remark }) =>
    block(
      remark === undefined ? value : `${value}  (${remark})`,
      0,
      `${padded(safe(key), keys)}  ${padded(place, froms)}  `,
    ),
  );
  const wrong = problems.flatMap(({ file, line, id, message }) => [
    '',
    ...block(`${message} (${id})`, 0, `${safe(file)}:${line}`),
  ]);
  return `${[...block(language.words`Workspace ${workspace}: ${because}.`, 0), '', ...lines, ...wrong].join('\n')}\n`;
}
