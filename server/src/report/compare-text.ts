// A comparison as text for a terminal: what it comes to in one line, then file by file what came, went and moved.
import { atLeastAsBad } from '../core/build/workspace-config';
import { grades, type Grade } from '../core/manifest/house-file';
import {
  alters,
  altersAnything,
  changeKinds,
  isBrought,
  movesOf,
  type ChangeKind,
  type Comparison,
  type FileComparison,
  type FindingChange,
} from '../review/comparison';
import type { Language } from '../core/words/language';
import { listsText, movedText, recordText, wide } from './compare-moves';
import { block, padded, safe, withRight } from './layout';

export interface CompareLook {
  /** The lightest grade to list; what comes and goes of lighter ones is counted. */
  readonly from: Grade;
  /** With the changed lines behind what moved. */
  readonly working: boolean;
  readonly language: Language;
}

/** Kinds and grades stand in two columns; sentences begin where they end. */
const gradeWidth = 11;
const kindWidth = (language: Language): number => wide(changeKinds.map((kind) => changeWord(kind, language)));

/** What stayed is listed only where it says that something was not read. */
export function changeWord(kind: ChangeKind, language: Language): string {
  switch (kind) {
    case 'new':
      return language.word('new');
    case 'worse':
      return language.word('worse');
    case 'undecided':
      return language.word('undecided');
    case 'silenced':
      return language.word('silenced');
    case 'accepted':
      return language.word('accepted');
    case 'cleared':
      return language.word('cleared');
    case 'better':
      return language.word('better');
    case 'unchanged':
      return language.word('not read');
  }
}

export function comparisonText(comparison: Comparison, look: CompareLook): string {
  const { before, after, files } = comparison;
  const altered = files.filter(alters);
  const head = block(`${look.language.label(before)} → ${look.language.label(after)}: ${verdict(comparison, look)}`, 0);
  const sections = altered.map((file) => sectionText(file, look)).filter((text) => text !== '');
  const closing = coverage(comparison, look).flatMap((line) => block(line, 0));
  return `${[head.join('\n'), ...sections, closing.join('\n')].join('\n\n')}\n`;
}

/** `1 stop and 2 shortfall new, 1 stop cleared.`; the worst first. */
export function verdict(comparison: Comparison, look: CompareLook): string {
  const { language } = look;
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
    return byGrade.length > 0 ? [`${byGrade.join(', ')} ${changeWord(kind, language)}`] : [];
  });
  if (counted.length > 0) return `${counted.join('; ')}.`;
  if (!altersAnything(comparison)) return language.word('no finding and no figure changes.');
  const isRecordAlone = comparison.files.every(({ record, ...file }) => movesOf(file) === 0);
  return isRecordAlone
    ? language.word('no finding comes or goes, records of machines change.')
    : language.word('no finding comes or goes, figures move.');
}

const gradeOf = ({ before, after }: FindingChange): Grade => (after ?? before)!.grade;

/** What stayed is not listed; of what was not read nothing is left out. */
export function isListed({ kind, before, after }: FindingChange, { from }: CompareLook): boolean {
  if (after?.unread) return true;
  return kind !== 'unchanged' && [before, after].some((one) => one && atLeastAsBad(one.grade, from));
}

function sectionText(file: FileComparison, look: CompareLook): string {
  const { title, because } = file;
  const { language } = look;
  const heading = safe(title ? `${title} (${file.file})` : file.file);
  const through = because.length > 0 ? [language.words`through ${namesOf(because, language)}`] : [];
  const findings = file.findings.filter((change) => isListed(change, look));
  const cautioned: Cautioned = new Map();
  const told = findings.flatMap((change) => findingText(change, cautioned, language));
  const rest = [...movedText(file.moved, look), ...listsText(file, language), ...recordText(file, language)];
  if (told.length + rest.length === 0) return '';
  const top = [heading + stateText(file, language), ...through.flatMap((line) => block(line, 2))];
  return [...top, ...told, ...rest].join('\n');
}

export function stateText({ state, movedFrom }: FileComparison, language: Language): string {
  switch (state) {
    case 'moved':
      return safe(language.words`, moved from ${movedFrom ?? language.word('elsewhere')}`);
    case 'added':
      return language.word(', added');
    case 'removed':
      return language.word(', removed');
    default:
      return '';
  }
}

const mostNames = 4;
function namesOf(names: readonly string[], language: Language): string {
  const more = names.length > mostNames ? [language.words`${names.length - mostNames} more`] : [];
  return safe([...names.slice(0, mostNames), ...more].join(', '));
}

function findingText(change: FindingChange, cautioned: Cautioned, language: Language): string[] {
  const { kind, before, after } = change;
  const one = (after ?? before)!;
  const place = after ? `${after.file}:${after.line}` : one.file;
  const sentences = 2 + kindWidth(language) + gradeWidth;
  const words = padded(changeWord(kind, language), kindWidth(language)) + padded(gradeWords(change), gradeWidth);
  const head = `  ${words}${safe(place)}   ${safe(one.subject)}`;
  const caution = cautionLines(change, language, cautioned).flatMap((line) => block(line, sentences));
  return [head, ...withRight(block(sentenceOf(change, language), sentences), one.id), ...caution];
}

/** The words of cautions that stand in full already, each with the check under whose finding. */
export type Cautioned = Map<string, string>;

/** The safety message of what a change brings: in full once, then its signal word and where to read it. */
export function cautionLines(change: FindingChange, language: Language, cautioned: Cautioned = new Map()): string[] {
  const { id, caution } = (change.after ?? change.before)!;
  if (!caution || !isBrought(change)) return [];
  const [hazard] = caution.sentences;
  const first = cautioned.get(hazard);
  if (first !== undefined)
    return [`${caution.word} ${language.words`The caution under ${first} above holds here too.`}`];
  cautioned.set(hazard, id);
  return [[caution.word, ...caution.sentences].join(' ')];
}

export function gradeWords({ before, after }: FindingChange): string {
  return before && after && before.grade !== after.grade
    ? `${before.grade} → ${after.grade}`
    : (after ?? before)!.grade;
}

/** What it says now; of what grew or shrank also by how much it was broken before. */
export function sentenceOf({ kind, before, after }: FindingChange, language: Language): string {
  const one = (after ?? before)!;
  const waits = one.missing.length > 0 ? language.words` Waits for ${one.missing.slice(0, 3).join(', ')}.` : '';
  if ((kind === 'worse' || kind === 'better') && before?.excess && after?.excess && before.excess !== after.excess)
    return `${one.text} ${language.words`Past its limit by ${before.excess} → ${after.excess}.`}`;
  if (kind === 'worse' && before?.accepted && !after?.accepted)
    return `${one.text} ${language.word('It was accepted before.')}`;
  if (kind === 'silenced') return `${one.text} ${language.word('Settings make less of it now.')}`;
  if (kind === 'undecided' && !after) return `${one.text} ${language.word('It cannot be judged any more.')}`;
  if (kind === 'accepted') return `${one.text} ${language.words`Accepted because: ${one.accepted ?? ''}`}`;
  return one.text + waits;
}

/** What the comparison covers, and what it leaves out, a sentence or two each. */
export function coverage({ files, covers, troubles }: Comparison, look: CompareLook): string[] {
  const altered = files.filter(alters);
  const telling = new Set(altered.flatMap(({ because }) => because));
  const quiet = files.filter((file) => !altered.includes(file) && !telling.has(file.file)).length;
  const changes = files.flatMap(({ findings }) => findings);
  const lighter = changes.filter((change) => change.kind !== 'unchanged' && !isListed(change, look)).length;
  const unchanged = changes.filter(({ kind }) => kind === 'unchanged').length;
  const { language } = look;
  const { builds, touched, unknown } = covers;
  const few = (count: number, one: string, several: () => string): string => (count === 1 ? one : several());
  return [
    [
      few(
        builds,
        language.words`1 build, ${touched} touched.`,
        () => language.words`${builds} builds, ${touched} touched.`,
      ),
      few(
        unchanged,
        language.word('1 finding unchanged in what changed;'),
        () => language.words`${unchanged} findings unchanged in what changed;`,
      ),
      few(unknown, language.word('1 fact asked for there.'), () => language.words`${unknown} facts asked for there.`),
    ].join(' '),
    ...when(
      quiet,
      language.word('1 file differs in nothing that is judged or reckoned.'),
      () => language.words`${quiet} files differ in nothing that is judged or reckoned.`,
    ),
    ...when(
      lighter,
      language.words`1 change lighter than ${look.from}; --from unknown lists all.`,
      () => language.words`${lighter} changes lighter than ${look.from}; --from unknown lists all.`,
    ),
    ...when(
      troubles.length,
      language.word('1 file could not be read: the comparison is not whole.'),
      () => language.words`${troubles.length} files could not be read: the comparison is not whole.`,
    ),
  ];
}

const when = (count: number, one: string, several: () => string): string[] =>
  count === 0 ? [] : [count === 1 ? one : several()];

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
