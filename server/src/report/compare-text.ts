// A comparison as text for a terminal: what it comes to in one line, then file by file what came, went and moved.
import { atLeastAsBad } from '../core/build/workspace-config';
import { grades, type Grade } from '../core/manifest/house-file';
import {
  alters,
  altersAnything,
  changeKinds,
  isBrought,
  movesOf,
  type ChangedFact,
  type ChangeKind,
  type Comparison,
  type FileComparison,
  type FindingChange,
  type Movement,
  type RecordChange,
} from '../review/comparison';
import { block, padded, plural, safe, withRight } from './layout';

export interface CompareLook {
  /** The lightest grade to list; what comes and goes of lighter ones is counted. */
  readonly from: Grade;
  /** With the changed lines behind what moved. */
  readonly working: boolean;
}

/** Kinds and grades stand in two columns; sentences begin where they end. */
const kindWidth = 11;
const sentences = 2 + kindWidth + 11;

/** What stayed is listed only where it says that something was not read. */
export const changeWord = (kind: ChangeKind): string => (kind === 'unchanged' ? 'not read' : kind);

export function comparisonText(comparison: Comparison, look: CompareLook): string {
  const { before, after, files } = comparison;
  const altered = files.filter(alters);
  const head = block(`${before} → ${after}: ${verdict(comparison, look)}`, 0);
  const sections = altered.map((file) => sectionText(file, look)).filter((text) => text !== '');
  const closing = coverage(comparison, look).flatMap((line) => block(line, 0));
  return `${[head.join('\n'), ...sections, closing.join('\n')].join('\n\n')}\n`;
}

/** `1 stop and 2 shortfall new, 1 stop cleared.`; the worst first. */
export function verdict(comparison: Comparison, look: CompareLook): string {
  const counts = new Map<string, number>();
  for (const { findings } of comparison.files)
    for (const change of findings) {
      if (!isListed(change, look)) continue;
      const key = `${change.kind} ${gradeOf(change)}`;
      counts.set(key, (counts.get(key) ?? 0) + 1);
    }
  const counted = changeKinds.flatMap((kind) => {
    const byGrade = grades.flatMap((grade) => {
      const count = counts.get(`${kind} ${grade}`);
      return count === undefined ? [] : [`${count} ${grade}`];
    });
    return byGrade.length > 0 ? [`${byGrade.join(', ')} ${changeWord(kind)}`] : [];
  });
  if (counted.length > 0) return `${counted.join('; ')}.`;
  if (!altersAnything(comparison)) return 'no finding and no figure changes.';
  const isRecordAlone = comparison.files.every(({ record, ...file }) => movesOf(file) === 0);
  return `no finding comes or goes, ${isRecordAlone ? 'records of machines change' : 'figures move'}.`;
}

const gradeOf = ({ before, after }: FindingChange): Grade => (after ?? before)!.grade;

/** What stayed is not listed; of what was not read nothing is left out. */
export function isListed({ kind, before, after }: FindingChange, { from }: CompareLook): boolean {
  if (after?.unread) return true;
  return kind !== 'unchanged' && [before, after].some((one) => one && atLeastAsBad(one.grade, from));
}

function sectionText(file: FileComparison, look: CompareLook): string {
  const { title, because } = file;
  const heading = safe(title ? `${title} (${file.file})` : file.file);
  const through = because.length > 0 ? [`  through ${namesOf(because)}`] : [];
  const findings = file.findings.filter((change) => isListed(change, look));
  const cautioned: Cautioned = new Map();
  const told = findings.flatMap((change) => findingText(change, cautioned));
  const rest = [...movedText(file.moved, look), ...listsText(file), ...recordText(file)];
  if (told.length + rest.length === 0) return '';
  const top = [heading + stateText(file), ...through.flatMap((line) => block(line.trim(), 2))];
  return [...top, ...told, ...rest].join('\n');
}

export function stateText({ state, movedFrom }: FileComparison): string {
  if (state === 'moved') return safe(`, moved from ${movedFrom ?? 'elsewhere'}`);
  return state === 'changed' || state === 'touched' ? '' : `, ${state}`;
}

const mostNames = 4;
const namesOf = (names: readonly string[]): string =>
  safe(
    [...names.slice(0, mostNames), ...(names.length > mostNames ? [`${names.length - mostNames} more`] : [])].join(
      ', ',
    ),
  );

function findingText(change: FindingChange, cautioned: Cautioned): string[] {
  const { kind, before, after } = change;
  const one = (after ?? before)!;
  const place = after ? `${after.file}:${after.line}` : one.file;
  const words = padded(changeWord(kind), kindWidth) + padded(gradeWords(change), 11);
  const head = `  ${words}${safe(place)}   ${safe(one.subject)}`;
  const caution = cautionLines(change, cautioned).flatMap((line) => block(line, sentences));
  return [head, ...withRight(block(sentenceOf(change), sentences), one.id), ...caution];
}

/** The words of cautions that stand in full already, each with the check under whose finding. */
export type Cautioned = Map<string, string>;

/** The safety message of what a change brings: in full once, then its signal word and where to read it. */
export function cautionLines(change: FindingChange, cautioned: Cautioned = new Map()): string[] {
  const { id, caution } = (change.after ?? change.before)!;
  if (!caution || !isBrought(change)) return [];
  const [hazard] = caution.sentences;
  const first = cautioned.get(hazard);
  if (first !== undefined) return [`${caution.word} The caution under ${first} above holds here too.`];
  cautioned.set(hazard, id);
  return [[caution.word, ...caution.sentences].join(' ')];
}

export function gradeWords({ before, after }: FindingChange): string {
  return before && after && before.grade !== after.grade
    ? `${before.grade} → ${after.grade}`
    : (after ?? before)!.grade;
}

/** What it says now; of what grew or shrank also by how much it was broken before. */
export function sentenceOf({ kind, before, after }: FindingChange): string {
  const one = (after ?? before)!;
  const waits = one.missing.length > 0 ? ` Waits for ${one.missing.slice(0, 3).join(', ')}.` : '';
  if ((kind === 'worse' || kind === 'better') && before?.excess && after?.excess && before.excess !== after.excess)
    return `${one.text} Past its limit by ${before.excess} → ${after.excess}.`;
  if (kind === 'worse' && before?.accepted && !after?.accepted) return `${one.text} It was accepted before.`;
  if (kind === 'silenced') return `${one.text} Settings make less of it now.`;
  if (kind === 'undecided' && !after) return `${one.text} It cannot be judged any more.`;
  if (kind === 'accepted') return `${one.text} Accepted because: ${one.accepted ?? ''}`;
  return one.text + waits;
}

function movedText(moved: readonly Movement[], { working }: CompareLook): string[] {
  if (moved.length === 0) return [];
  const width = Math.min(44, Math.max(...moved.map(({ what }) => what.length)));
  return moved.flatMap(({ what, before, after, difference, isBetter, cancels, why }) => {
    const judged = isBetter === undefined ? '' : isBetter ? ', better' : ', worse';
    const by = difference ? `   (${difference}${judged})` : judged === '' ? '' : `   (${judged.slice(2)})`;
    const value = cancels
      ? `${after ?? ''}, as before: what changed cancels out`
      : `${before ?? 'none'} → ${after ?? 'none'}${by}`;
    return [
      ...block(value, 4 + width, `  ${safe(padded(what, width))}`),
      ...(working ? why.flatMap((fact) => block(factWords(fact), 8, '      ·')) : []),
    ];
  });
}

export function factWords({ what, before, after }: ChangedFact): string {
  const at = (side: ChangedFact['before'], none: string): string =>
    side ? `${side.text} (${side.file}:${side.line})` : none;
  return `${what}: ${at(before, 'not stated')} → ${at(after, 'not stated any more')}`;
}

/** As text and comment call them. */
const recordWords: Readonly<Record<RecordChange['kind'], string>> = {
  added: 'new',
  removed: 'gone',
  moved: 'moved',
  swapped: 'swapped',
  changed: 'changed',
  shown: 'shown now',
  'not-shown': 'not shown',
};
export const recordWord = ({ kind }: RecordChange): string => recordWords[kind];

/** `drive scratch, hours: 9829 h → 10211 h (+382 h)`. */
export function recordSentence({ kind, thing, fact, before, after, difference, isBetter }: RecordChange): string {
  const what = fact === undefined || kind === 'moved' ? thing : `${thing}, ${fact}`;
  const by = [difference ?? '', isBetter === undefined ? '' : isBetter ? 'better' : 'worse'].filter(Boolean).join(', ');
  if (!before || !after) return `${what}: ${(after ?? before)?.text ?? ''}`;
  return `${what}: ${before.text} → ${after.text}${by ? ` (${by})` : ''}`;
}

/** `machine read 2026-11-25 → 2026-12-30`. */
export const recordLead = ({ record }: FileComparison): string =>
  `machine read ${record?.takenBefore ?? 'on no stated day'} → ${record?.takenAfter ?? 'on no stated day'}`;

function recordText(file: FileComparison): string[] {
  const changes = file.record?.changes ?? [];
  if (changes.length === 0) return [];
  return [
    ...block(recordLead(file), 2),
    ...changes.flatMap((one) => block(recordSentence(one), 2 + kindWidth, `  ${padded(recordWord(one), kindWidth)}`)),
  ];
}

/** So many of a list are named; the rest are counted. */
const mostListed = 5;

function listsText({ newlyUnknown, newlyKnown, steps }: FileComparison): string[] {
  const list = (lead: string, of: readonly string[]): string[] => {
    const more = of.length > mostListed ? [`and ${of.length - mostListed} more`] : [];
    return of.length > 0 ? block(`${lead}: ${[...of.slice(0, mostListed), ...more].join('; ')}`, 4, '') : [];
  };
  const stepsOf = (kind: string): string[] => steps.filter((one) => one.kind === kind).map(({ step }) => step);
  return [
    ...list('not known any more', newlyUnknown),
    ...list('known now', newlyKnown),
    ...list('steps added', stepsOf('added')),
    ...list('steps no longer needed', stepsOf('removed')),
    ...list('steps moved', stepsOf('moved')),
  ].map((line) => line.replace(/^ {4}/, '  '));
}

/** What the comparison covers, and what it leaves out, a sentence or two each. */
export function coverage({ files, covers, troubles }: Comparison, look: CompareLook): string[] {
  const altered = files.filter(alters);
  const telling = new Set(altered.flatMap(({ because }) => because));
  const quiet = files.filter((file) => !altered.includes(file) && !telling.has(file.file)).length;
  const changes = files.flatMap(({ findings }) => findings);
  const lighter = changes.filter((change) => change.kind !== 'unchanged' && !isListed(change, look)).length;
  const unchanged = changes.filter(({ kind }) => kind === 'unchanged').length;
  return [
    `${plural(covers.builds, 'build', 'builds')}, ${covers.touched} touched. ` +
      `${plural(unchanged, 'finding', 'findings')} unchanged in what changed; ` +
      `${plural(covers.unknown, 'fact', 'facts')} asked for there.`,
    ...(quiet > 0 ? [`${plural(quiet, 'file differs', 'files differ')} in nothing that is judged or reckoned.`] : []),
    ...(lighter > 0
      ? [`${plural(lighter, 'change', 'changes')} lighter than ${look.from}; --from unknown lists all.`]
      : []),
    ...(troubles.length > 0
      ? [`${plural(troubles.length, 'file', 'files')} could not be read: the comparison is not whole.`]
      : []),
  ];
}

/** Whether a change brings anything at or above a grade, or leaves something unread. */
export const brings = ({ files }: Comparison, limit: Grade): boolean =>
  files.some(({ findings }) =>
    findings.some(
      (change) =>
        change.after?.unread ||
        (isBrought(change) &&
          change.after !== undefined &&
          change.after.accepted === undefined &&
          atLeastAsBad(change.after.grade, limit)),
    ),
  );
