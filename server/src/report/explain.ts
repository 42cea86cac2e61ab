// What a check is, for someone who met one of its findings: judgement, reason, source, example, how to accept it.
import { areas, type Check, type Example } from '../core/checks/check';
import { CAUTIONS, type CautionId } from '../core/trade/cautions';
import { block, padded, safe } from './layout';
import { cautionText } from './text';

const margin = 11;

/** One check in full. */
export function explainText(check: Check): string {
  const rows: [string, string][] = [
    ['judges', check.what], ['because', check.why], ['grade', gradeMeaning[check.grade]], ['area', areas[check.area]], ['source', check.source],
  ];
  const lines = [check.id, '', ...rows.flatMap(([name, text]) => block(text, margin, `  ${name}`)), ''];
  if (check.caution) lines.push(...cautionText(CAUTIONS[check.caution as CautionId], 2), '');
  for (const example of check.examples) lines.push(...exampleText(example), '');
  return [...lines, ...acceptText(check), ''].join('\n');
}

const gradeMeaning: Record<Check['grade'], string> = {
  harm: 'harm: could hurt someone, or ruin a part',
  stop: 'stop: will not go together, or will not start',
  short: 'short: works, but falls short of what is promised',
  note: 'note: worth knowing',
  unknown: 'unknown: cannot be decided until a fact is stated',
};

function exampleText({ faulty, mended, instead, file }: Example): string[] {
  const quote = (text: string): string[] => text.replace(/^\n/, '').trimEnd().split('\n').map((line) => `    ${safe(line)}`.trimEnd());
  const after = mended === undefined ? block(instead ?? '', margin, '  instead') : ['  Mended:', '', ...quote(mended)];
  return [`  Faulty${file ? `, in ${file}` : ''}:`, '', ...quote(faulty), '', ...after];
}

/** Lines for the build that accept a finding; harm wants a name as well. */
function acceptText({ id, grade }: Check): string[] {
  const harm = grade === 'harm';
  return [
    ...block(`To live with such a finding, write into the build why, until when${harm ? ', and who answers for it' : ''}:`, 2), '',
    '    accept:', `      - finding: ${id}`, '        at: the place that the finding names', '        because: the reason, in a sentence',
    ...(harm ? ['        by: who answers for it'] : []), '        until: the day on which to look again, as 2027-06-30',
  ];
}

/** Every check in a line, area by area. */
export function checkListText(checks: readonly Check[]): string {
  const lines: string[] = [];
  const widest = Math.max(...checks.map((check) => check.id.length)) + 4;
  for (const [area, title] of Object.entries(areas)) {
    const own = checks.filter((check) => check.area === area);
    if (own.length === 0) continue;
    lines.push(title, ...own.flatMap((check) => block(check.what, widest + 9, padded(padded(`  ${check.id}`, widest) + check.grade, widest + 9))), '');
  }
  return lines.join('\n') + '\n';
}
