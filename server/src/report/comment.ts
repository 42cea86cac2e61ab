// A comparison as the comment of a pull request: before → after and what it is now, file by file.
import { grades } from '../core/manifest/house-file';
import {
  alters,
  altersAnything,
  changeKinds,
  movesOf,
  type ComparedFinding,
  type Comparison,
  type FileComparison,
  type FindingChange,
  type Movement,
} from '../review/comparison';
import { code, commentText, firstOf, mostRows, prose, table } from './comment-parts';
import {
  cautionLines,
  changeWord,
  coverage,
  factWords,
  gradeWords,
  recordLead,
  recordSentence,
  recordWord,
  isListed,
  sentenceOf,
  stateText,
  verdict,
  type Cautioned,
  type CompareLook,
} from './compare-text';
import { plural } from './layout';

/** Empty where the change alters nothing that is judged or reckoned, and everything was read. */
export function comparisonComment(comparison: Comparison, look: CompareLook): string {
  const { before, after, files, troubles } = comparison;
  if (!altersAnything(comparison) && troubles.length === 0) return '';
  const altered = files.filter((file) => alters(file) && hasAny(file, look));
  const rows = altered.slice(0, mostRows).map((file) => rowOf(file, look));
  const more = altered.length - rows.length;
  return commentText({
    heading: `Fettle: ${prose(verdict(comparison, look))}`,
    seen: [
      `Compared: ${code(before)} → ${code(after)}`,
      ...(rows.length > 0 ? [table(['Build or file', 'Findings', 'What changes', 'What moves'], rows)] : []),
      ...(more > 0 ? [`${plural(more, 'file', 'files')} more ${more === 1 ? 'is' : 'are'} folded below.`] : []),
      coverage(comparison, look).map(prose).join(' '),
    ],
    summary: 'Findings and figures, file by file',
    folded: [
      ...troubleBlocks(comparison).map((block) => () => block),
      ...altered.map((file) => () => blockOf(file, look)),
    ],
  });
}

/** Whether there is anything of it to show under a look. */
const hasAny = (file: FileComparison, look: CompareLook): boolean =>
  file.findings.some((change) => isListed(change, look)) || movesOf(file) > 0;

function rowOf(file: FileComparison, look: CompareLook): string[] {
  const moved = [
    ...[...file.moved].sort((a, b) => weight(a) - weight(b)).map(movementText),
    ...(file.record?.changes ?? []).map((one) => prose(`${recordWord(one)} ${recordSentence(one)}`)),
  ];
  const [was, now] = [
    counted(file.findings.map(({ before }) => before)),
    counted(file.findings.map(({ after }) => after)),
  ];
  return [
    `**${prose(file.title ?? file.file)}**${prose(stateText(file))}`,
    was === now ? `${now}, as before` : `${was} → ${now}`,
    changesText(file.findings.filter((change) => isListed(change, look))),
    firstOf(moved, mostMoved).join('; '),
  ];
}

const mostMoved = 3;

/** What got worse first, then what hides behind a figure that stayed. */
const weight = ({ isBetter, cancels }: Movement): number => (isBetter === false ? 0 : cancels ? 1 : 2);

/** `1 stop, 2 note`; what waits for facts and what is accepted is not among them. */
function counted(findings: readonly (ComparedFinding | undefined)[]): string {
  const open = findings.filter((one) => one && !one.accepted);
  const byGrade = grades.flatMap((grade) => {
    const count = open.filter((one) => one!.grade === grade).length;
    return grade === 'unknown' || count === 0 ? [] : [`${count} ${grade}`];
  });
  return byGrade.join(', ') || 'none';
}

/** `1 new, 2 cleared`. */
const changesText = (changes: readonly FindingChange[]): string =>
  changeKinds
    .flatMap((kind) => {
      const count = changes.filter((change) => change.kind === kind).length;
      return count === 0 ? [] : [`${count} ${changeWord(kind)}`];
    })
    .join(', ');

function movementText(moved: Movement): string {
  const { what, before, after, difference, cancels } = moved;
  if (cancels) return prose(`${what} ${after ?? ''}, as before: what changed cancels out`);
  return prose(`${what} ${before ?? 'none'} → ${after ?? 'none'}${difference ? ` (${difference})` : ''}`);
}

const mostFindings = 25;
const mostNames = 12;

function blockOf(file: FileComparison, look: CompareLook): string {
  const cautioned: Cautioned = new Map();
  const changes = file.findings.filter((change) => isListed(change, look));
  const lines = changes.slice(0, mostFindings).map((change) => changeLine(change, cautioned));
  const more = changes.length > mostFindings ? [`- … and ${changes.length - mostFindings} more`] : [];
  const through = firstOf(file.because.map(code), mostNames).join(', ');
  const facts = look.working ? file.moved.flatMap(({ why }) => why.map((fact) => `- ${prose(factWords(fact))}`)) : [];
  return [
    `#### ${file.title ? `${prose(file.title)}, ` : ''}${code(file.file)}${prose(stateText(file))}`,
    ...(through ? [`Through ${through}`] : []),
    ...(lines.length > 0 ? [[...lines, ...more].join('\n')] : []),
    ...(file.moved.length > 0 ? [table(['Figure', 'Before', 'After', 'Change'], file.moved.map(movedRow))] : []),
    ...(facts.length > 0 ? [firstOf(facts, mostFindings).join('\n')] : []),
    ...listsOf(file),
    ...recordBlock(file),
  ].join('\n\n');
}

function changeLine(change: FindingChange, cautioned: Cautioned): string {
  const { kind, before, after } = change;
  const one = (after ?? before)!;
  const place = after ? `${after.file}:${after.line}` : one.file;
  const head = `- **${changeWord(kind)}** ${gradeWords(change)}, ${code(place)}, ${code(one.subject)}`;
  const lines = [sentenceOf(change), ...cautionLines(change, cautioned)];
  return `${head}: ${lines.map(prose).join(' · ')} (${one.id})`;
}

function movedRow({ what, before, after, difference, isBetter, cancels }: Movement): string[] {
  const judged = isBetter === undefined ? '' : isBetter ? 'better' : 'worse';
  const change = cancels ? 'what changed cancels out' : [difference ?? '', judged].filter(Boolean).join(', ');
  return [what, before ?? 'none', after ?? 'none', change].map(prose);
}

function listsOf({ newlyUnknown, newlyKnown, steps }: FileComparison): string[] {
  const stepsOf = (kind: string): string[] => steps.filter((one) => one.kind === kind).map(({ step }) => step);
  const lists: [string, readonly string[]][] = [
    ['Not known any more', newlyUnknown],
    ['Known now', newlyKnown],
    ['Steps added', stepsOf('added')],
    ['Steps no longer needed', stepsOf('removed')],
    ['Steps moved', stepsOf('moved')],
  ];
  return lists.flatMap(([lead, of]) =>
    of.length > 0 ? [`${lead}: ${firstOf(of.map(prose), mostNames).join('; ')}`] : [],
  );
}

function recordBlock(file: FileComparison): string[] {
  const rows = (file.record?.changes ?? []).map((one) => `- **${recordWord(one)}** ${prose(recordSentence(one))}`);
  return rows.length > 0 ? [prose(recordLead(file)), firstOf(rows, mostFindings).join('\n')] : [];
}

function troubleBlocks({ troubles, before, after }: Comparison): string[] {
  const told = troubles.map(
    ({ side, path, trouble }) => `- ${code(side === 'before' ? before : after)}: ${code(path)}: ${prose(trouble)}`,
  );
  return told.length > 0 ? [`#### Not read\n\n${firstOf(told, mostFindings).join('\n')}`] : [];
}
