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

/** One check in full. */
export function explainText(check: Check, language: Language): string {
  const page = pageOf(check);
  const rows: [string, string][] = [
    ['judges', language.word(page.what)],
    ['because', language.word(page.why)],
    ['grade', `${page.grade}: ${language.word(page.meaning)}`],
    ['area', language.word(page.area)],
    ['source', page.source],
    ...page.limits.map((limit, i): [string, string] => [i === 0 ? 'limits' : '', limit]),
  ];
  const lines = [page.id, '', ...rows.flatMap(([name, text]) => block(text, margin, `  ${language.word(name)}`)), ''];
  if (page.caution) lines.push(...cautionText(page.caution, 2, language), '');
  for (const example of page.examples) lines.push(...exampleText(example), '');
  return [...lines, ...settledText(page), ''].join('\n');
}

const quote = (text: string): string[] =>
  text
    .trimEnd()
    .split('\n')
    .map((line) => `    ${safe(line)}`.trimEnd());

function exampleText({ marked, mended, instead, file, beside }: ExamplePage): string[] {
  const others = beside.flatMap(({ name, text }) => [`  With ${safe(name)}:`, '', ...quote(text), '']);
  const after = mended === undefined ? block(instead ?? '', margin, '  instead') : ['  Mended:', '', ...quote(mended)];
  return [`  Faulty${file ? `, in ${file}` : ''}:`, '', ...quote(marked), '', ...others, ...after];
}

/** How to live with such a finding: in one build, or in a whole house. */
function settledText({ accept, regrade, grade, unread }: CheckPage): string[] {
  const house =
    regrade === undefined
      ? []
      : ['', ...block('For a whole house, set another grade in fettle.yaml:', 2), '', ...quote(regrade)];
  if (accept === undefined) return [...(unread === undefined ? [] : block(unread, 2)), ...house];
  const who = grade === 'harm' ? ', and who answers for it' : '';
  return [
    ...block(`To live with such a finding, write into the build why, until when${who}:`, 2),
    '',
    ...quote(accept),
    ...house,
  ];
}

/** Every check in a line, area by area. */
export function checkListText(checks: readonly Check[]): string {
  const lines: string[] = [];
  const widest = Math.max(...checks.map((check) => check.id.length)) + 4;
  for (const [area, title] of Object.entries(areas)) {
    const own = checks.filter((check) => check.area === area);
    if (own.length === 0) continue;
    lines.push(
      title,
      ...own.flatMap((check) =>
        block(
          check.what,
          widest + gradeColumn,
          padded(padded(`  ${check.id}`, widest) + check.grade, widest + gradeColumn),
        ),
      ),
      '',
    );
  }
  return `${lines.join('\n')}\n`;
}
