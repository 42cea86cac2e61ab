// A comparison for other programs: as SARIF, with what became of each finding, and as annotations of what it brings.
import { grades } from '../core/manifest/house-file';
import {
  changeKinds,
  isBrought,
  type ComparedFinding,
  type Comparison,
  type FindingChange,
} from '../review/comparison';
import { Annotations } from './annotations';
import { cautionLines, changeWord, isListed, sentenceOf, type CompareLook } from './compare-text';
import { toJson } from './json';
import { partialFingerprints } from './sarif';
import { artifact, levelOf, plainText, SarifLog, type LogFacts } from './sarif-log';

interface Placed {
  readonly change: FindingChange;
  readonly one: ComparedFinding;
  readonly title: string | undefined;
}

function* changesOf({ files }: Comparison): Iterable<Placed> {
  for (const { findings, title } of files)
    for (const change of findings) yield { change, one: (change.after ?? change.before)!, title };
}

/** What a change brings comes first, the worst before the rest. */
const rankOf = ({ change, one }: Placed): number =>
  one.unread && change.after ? -1 : changeKinds.indexOf(change.kind) * grades.length + grades.indexOf(one.grade);

/** What is not listed as a change stands as unchanged, where its grade is listed. */
export function comparisonSarif(comparison: Comparison, look: CompareLook, facts: LogFacts): string {
  const log = new SarifLog(facts);
  for (const placed of changesOf(comparison))
    if (isWanted(placed, look)) log.add(placed.one.id, rankOf(placed), () => toJson(resultOf(placed, look)));
  const { before, after, on, covers, troubles } = comparison;
  const notRead = troubles.map(({ side, path, trouble }) => ({
    path: side === 'after' ? path : '',
    trouble: side === 'after' ? trouble : `${before}: ${path}: ${trouble}`,
  }));
  return log.text({ before, after, on, from: look.from, covers }, notRead);
}

const isWanted = ({ change, one }: Placed, look: CompareLook): boolean =>
  isListed(change, look) || (change.kind === 'unchanged' && grades.indexOf(one.grade) <= grades.indexOf(look.from));

function resultOf({ change, one }: Placed, { language }: CompareLook): object {
  const { id, grade, subject, file, line, fingerprint, accepted, excess } = one;
  return {
    ruleId: id,
    ...(grade === 'unknown' ? { kind: 'open', level: 'none' } : { level: levelOf(grade) }),
    baselineState: stateOf(change),
    locations: [
      {
        physicalLocation: { artifactLocation: artifact(file), region: { startLine: line } },
        logicalLocations: [{ fullyQualifiedName: subject, kind: 'member' }],
      },
    ],
    message: { text: plainText([sentenceOf(change, language), ...cautionLines(change, language)].join('\n\n')) },
    partialFingerprints: partialFingerprints(file, fingerprint),
    suppressions:
      accepted === undefined ? [] : [{ kind: 'inSource', status: 'accepted', justification: plainText(accepted) }],
    properties: { grade, subject, change: change.kind, ...(excess ? { excess } : {}) },
  };
}

function stateOf({ kind, after }: FindingChange): 'new' | 'unchanged' | 'updated' | 'absent' {
  if (!after) return 'absent';
  return kind === 'new' || kind === 'unchanged' ? kind : 'updated';
}

/** Findings that a change brings, and those that it leaves undecided or silences: each where it stands now. */
export function comparisonAnnotations(comparison: Comparison, look: CompareLook): string {
  const annotations = new Annotations(look.language);
  const { language } = look;
  for (const { side, path, trouble } of comparison.troubles) if (side === 'after') annotations.notRead(path, trouble);
  for (const placed of changesOf(comparison)) {
    const { change, title } = placed;
    const { after } = change;
    if (!after || after.accepted !== undefined || !isListed(change, look) || !isShown(change)) continue;
    const at = { line: after.line - 1, character: 0 };
    annotations.add(after.grade, rankOf(placed), () => ({
      file: after.file,
      range: { start: at, end: at },
      title: `${after.id} (${after.grade}, ${changeWord(change.kind, language)})`,
      lines: [...(title ? [title] : []), sentenceOf(change, language), ...cautionLines(change, language)],
    }));
  }
  return annotations.text();
}

const isShown = (change: FindingChange): boolean =>
  isBrought(change) || change.after!.unread || change.kind === 'undecided' || change.kind === 'silenced';
