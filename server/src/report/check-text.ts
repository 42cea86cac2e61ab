// What a check is, for someone who met one of its findings: judgement, reason, source, example, how to accept it.
import { areas, type Check } from '../core/checks/check';
import { grades } from '../core/manifest/house-file';
import { pageOf, type CheckPage, type ExamplePage } from '../core/checks/page';
import type { Language } from '../core/words/language';
import { block, padded, safe } from './layout';
import { cautionText } from './text';

const margin = 11;
/** As wide as the longest grade and two blanks. */
const gradeColumn = Math.max(...grades.map((grade) => grade.length)) + 2;

/** The name stands before the first of the texts alone. */
const listedBelow = (name: string, texts: readonly string[], language: Language): [string, string][] =>
  texts.map((text, i) => [i === 0 ? name : '', language.word(text)]);

/** One check in full. */
export function explainText(check: Check, language: Language): string {
  const page = pageOf(check);
  const rows: [string, string][] = [
    [language.word('judges'), language.word(page.what)],
    [language.word('because'), language.word(page.why)],
    [language.word('grade'), `${page.grade}: ${language.word(page.meaning)}`],
    [language.word('area'), language.word(page.area)],
    [language.word('source'), page.source],
    ...listedBelow(language.word('limits'), page.limits, language),
    ...listedBelow(language.word('also'), page.remarks, language),
  ];
  const lines = [page.id, '', ...rows.flatMap(([name, text]) => block(text, margin, `  ${name}`)), ''];
  if (page.caution) lines.push(...cautionText(page.caution, 2, language), '');
  for (const example of page.examples) lines.push(...exampleText(example, language), '');
  return [...lines, ...settledText(page, language), ''].join('\n');
}

const quote = (text: string): string[] =>
  text
    .trimEnd()
    .split('\n')
    .map((line) => `    ${safe(line)}`.trimEnd());

function exampleText({ marked, mended, instead, file, beside }: ExamplePage, language: Language): string[] {
  const others = beside.flatMap(({ name, text }) => [
    `  ${language.words`With ${safe(name)}:`}`,
    '',
    ...quote(text),
    '',
  ]);
  const after =
    mended === undefined
      ? block(language.word(instead ?? ''), margin, `  ${language.word('instead')}`)
      : [`  ${language.word('Mended:')}`, '', ...quote(mended)];
  const faulty = file ? language.words`Faulty, in ${file}:` : language.word('Faulty:');
  return [`  ${faulty}`, '', ...quote(marked), '', ...others, ...after];
}

/** How to live with such a finding: in one build, or in a whole house. */
function settledText({ accept, regrade, grade, unread }: CheckPage, language: Language): string[] {
  const house =
    regrade === undefined
      ? []
      : ['', ...block(language.word('For a whole house, set another grade in fettle.yaml:'), 2), '', ...quote(regrade)];
  if (accept === undefined) return [...(unread === undefined ? [] : block(language.word(unread), 2)), ...house];
  const living =
    grade === 'harm'
      ? language.word('To live with such a finding, write into the build why, until when, and who answers for it:')
      : language.word('To live with such a finding, write into the build why, until when:');
  return [...block(living, 2), '', ...quote(accept), ...house];
}

/** Every check in a line, area by area. */
export function checkListText(checks: readonly Check[], language: Language): string {
  const lines: string[] = [];
  const widest = Math.max(...checks.map((check) => check.id.length)) + 4;
  for (const [area, title] of Object.entries(areas)) {
    const own = checks.filter((check) => check.area === area);
    if (own.length === 0) continue;
    lines.push(
      language.word(title),
      ...own.flatMap((check) =>
        block(
          language.word(check.what),
          widest + gradeColumn,
          padded(padded(`  ${check.id}`, widest) + check.grade, widest + gradeColumn),
        ),
      ),
      '',
    );
  }
  return `${lines.join('\n')}\n`;
}
