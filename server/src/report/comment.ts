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
import type { Language } from '../core/words/language';
import { code, commentText, firstOf, foldedBelow, mostRows, prose, table } from './comment-parts';
import {
  amount,
  cancelledWords,
  factWords,
  judgedWords,
  recordLead,
  recordSentence,
  recordWord,
} from './compare-moves';
import {
  cautionLines,
  changeWord,
  coverage,
  gradeWords,
  isListed,
  sentenceOf,
  stateText,
  verdict,
  type Cautioned,
  type CompareLook,
} from './compare-text';

/** Empty where the change alters nothing that is judged or reckoned, and everything was read. */
export function comparisonComment(comparison: Comparison, look: CompareLook): string {
  const { before, after, files, troubles } = comparison;
  const { language } = look;
  if (!altersAnything(comparison) && troubles.length === 0) return '';
  const altered = files.filter((file) => alters(file) && hasAny(file, look));
  const rows = altered.slice(0, mostRows).map((file) => rowOf(file, look));
  const more = altered.length - rows.length;
  return commentText({
    heading: `Fettle: ${prose(verdict(comparison, look))}`,
    seen: [
      language.words`Compared: ${code(language.label(before))} → ${code(language.label(after))}`,
      ...(rows.length > 0 ? [table(headsOf(language), rows)] : []),
      ...foldedBelow(more, language),
      coverage(comparison, look).map(prose).join(' '),
    ],
    summary: language.word('Findings and figures, file by file'),
    language,
    folded: [
      ...troubleBlocks(comparison, language).map((block) => () => block),
      ...altered.map((file) => () => blockOf(file, look)),
    ],
  });
}

const headsOf = (language: Language): readonly string[] => [
  language.word('Build or file'),
  language.word('Findings'),
  language.word('What changes'),
  language.word('What moves'),
];

/** Whether there is anything of it to show under a look. */
const hasAny = (file: FileComparison, look: CompareLook): boolean =>
  file.findings.some((change) => isListed(change, look)) || movesOf(file) > 0;

function rowOf(file: FileComparison, look: CompareLook): string[] {
  const { language } = look;
  const moved = [
    ...[...file.moved].sort((a, b) => weight(a) - weight(b)).map((one) => movementText(one, language)),
    ...(file.record?.changes ?? []).map((one) =>
      prose(`${recordWord(one.kind, language)} ${recordSentence(one, language)}`),
    ),
  ];
  const [was, now] = [
    counted(
      file.findings.map(({ before }) => before),
      language,
    ),
    counted(
      file.findings.map(({ after }) => after),
      language,
    ),
  ];
  return [
    `**${prose(file.title ?? file.file)}**${prose(stateText(file, language))}`,
    was === now ? language.words`${now}, as before` : `${was} → ${now}`,
    changesText(
      file.findings.filter((change) => isListed(change, look)),
      language,
    ),
    firstOf(moved, mostMoved, language).join('; '),
  ];
}

const mostMoved = 3;

/** What got worse first, then what hides behind a figure that stayed. */
const weight = ({ isBetter, cancels }: Movement): number => (isBetter === false ? 0 : cancels ? 1 : 2);

/** `1 stop, 2 note`; what waits for facts and what is accepted is not among them. */
function counted(findings: readonly (ComparedFinding | undefined)[], language: Language): string {
  const open = findings.filter((one) => one && !one.accepted);
  const byGrade = grades.flatMap((grade) => {
    const count = open.filter((one) => one!.grade === grade).length;
    return grade === 'unknown' || count === 0 ? [] : [`${count} ${grade}`];
  });
  return byGrade.join(', ') || language.word('none');
}

/** `1 new, 2 cleared`. */
const changesText = (changes: readonly FindingChange[], language: Language): string =>
  changeKinds
    .flatMap((kind) => {
      const count = changes.filter((change) => change.kind === kind).length;
      return count === 0 ? [] : [`${count} ${changeWord(kind, language)}`];
    })
    .join(', ');

function movementText(moved: Movement, language: Language): string {
  const { before, after, difference, cancels } = moved;
  const what = language.plain(moved.what);
  if (cancels) return prose(`${what} ${cancelledWords(moved, language)}`);
  const by = difference ? ` (${difference})` : '';
  return prose(`${what} ${amount(before, language)} → ${amount(after, language)}${by}`);
}

const mostFindings = 25;
const mostNames = 12;

function blockOf(file: FileComparison, look: CompareLook): string {
  const { language } = look;
  const cautioned: Cautioned = new Map();
  const changes = file.findings.filter((change) => isListed(change, look));
  const lines = changes.slice(0, mostFindings).map((change) => changeLine(change, cautioned, language));
  const more =
    changes.length > mostFindings ? [`- ${language.words`… and ${changes.length - mostFindings} more`}`] : [];
  const through = firstOf(file.because.map(code), mostNames, language).join(', ');
  const facts = look.working
    ? file.moved.flatMap(({ why }) => why.map((fact) => `- ${prose(factWords(fact, language))}`))
    : [];
  return [
    `#### ${file.title ? `${prose(file.title)}, ` : ''}${code(file.file)}${prose(stateText(file, language))}`,
    ...(through ? [language.words`Through ${through}`] : []),
    ...(lines.length > 0 ? [[...lines, ...more].join('\n')] : []),
    ...(file.moved.length > 0 ? [movedTable(file.moved, language)] : []),
    ...(facts.length > 0 ? [firstOf(facts, mostFindings, language).join('\n')] : []),
    ...listsOf(file, language),
    ...recordBlock(file, language),
  ].join('\n\n');
}

function changeLine(change: FindingChange, cautioned: Cautioned, language: Language): string {
  const { kind, before, after } = change;
  const one = (after ?? before)!;
  const place = after ? `${after.file}:${after.line}` : one.file;
  const head = `- **${changeWord(kind, language)}** ${gradeWords(change)}, ${code(place)}, ${code(one.subject)}`;
  const lines = [sentenceOf(change, language), ...cautionLines(change, language, cautioned)];
  return `${head}: ${lines.map(prose).join(' · ')} (${one.id})`;
}

function movedTable(moved: readonly Movement[], language: Language): string {
  const heads = [language.word('Figure'), language.word('Before'), language.word('After'), language.word('Change')];
  const rows = moved.map((one) => {
    const change = one.cancels ? language.word('what changed cancels out') : judgedWords(one, language);
    return [language.plain(one.what), amount(one.before, language), amount(one.after, language), change].map(prose);
  });
  return table(heads, rows);
}

function listsOf({ newlyUnknown, newlyKnown, steps }: FileComparison, language: Language): string[] {
  const stepsOf = (kind: string): string[] => steps.filter((one) => one.kind === kind).map(({ step }) => step);
  const lists: [string, readonly string[]][] = [
    [language.word('Not known any more'), newlyUnknown],
    [language.word('Known now'), newlyKnown],
    [language.word('Steps added'), stepsOf('added')],
    [language.word('Steps no longer needed'), stepsOf('removed')],
    [language.word('Steps moved'), stepsOf('moved')],
  ];
  return lists.flatMap(([lead, of]) =>
    of.length > 0
      ? [
          `${lead}: ${firstOf(
            of.map((one) => prose(language.plain(one))),
            mostNames,
            language,
          ).join('; ')}`,
        ]
      : [],
  );
}

function recordBlock(file: FileComparison, language: Language): string[] {
  const rows = (file.record?.changes ?? []).map(
    (one) => `- **${recordWord(one.kind, language)}** ${prose(recordSentence(one, language))}`,
  );
  return rows.length > 0 ? [prose(recordLead(file, language)), firstOf(rows, mostFindings, language).join('\n')] : [];
}

function troubleBlocks({ troubles, before, after }: Comparison, language: Language): string[] {
  const told = troubles.map(
    ({ side, path, trouble }) =>
      `- ${code(language.label(side === 'before' ? before : after))}: ${code(path)}: ${prose(language.plain(trouble))}`,
  );
  return told.length > 0
    ? [`#### ${language.word('Not read')}\n\n${firstOf(told, mostFindings, language).join('\n')}`]
    : [];
}
