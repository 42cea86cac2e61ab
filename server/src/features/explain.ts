// A page on one check: what it judges, why, by which source, with a faulty and a mended text.
import { areas, type Check } from '../core/checks/check';
import { checks } from '../core/checks/all';
import type { Grade } from '../core/manifest/house-file';
import { CAUTIONS, deferral, type CautionId } from '../core/trade/cautions';
import { code, heading, markdown, paragraph, strong, verbatim, type Block } from './prose';

const meaningOf: Record<Grade, string> = {
  harm: 'could hurt someone, or ruin a part',
  stop: 'will not go together, or will not start',
  short: 'works, but falls short of what is promised',
  note: 'worth knowing',
  unknown: 'cannot be decided: a fact is missing',
};

/** The page in Markdown; undefined where there is no check of that id. */
export function explain(id: string): string | undefined {
  const check = checks.find((one) => one.id === id);
  return check && markdown(page(check));
}

function page(check: Check): Block[] {
  const caution = check.caution === undefined ? undefined : CAUTIONS[check.caution as CautionId];
  return [
    heading(check.id),
    paragraph(check.what),
    paragraph(check.why),
    paragraph('Grade ', strong(check.grade), `: ${meaningOf[check.grade]}. Area: ${areas[check.area]}. Source: ${check.source}.`),
    ...(caution ? [paragraph(strong(caution.word), ` ${caution.hazard} ${caution.consequence} ${caution.avoidance} ${deferral(caution)}`)] : []),
    ...check.examples.flatMap((example) => [
      paragraph('Brings the finding:'), verbatim(withoutMarks(example.faulty), 'yaml'),
      ...(example.mended === undefined ? [paragraph(`No fix can be offered. ${example.instead ?? ''}`)] : [paragraph('Mended:'), verbatim(example.mended, 'yaml')]),
    ]),
    paragraph('To live with such a finding, accept it in the build with a reason:'),
    verbatim(`accept:\n  - finding: ${check.id}\n    at: THE PLACE IT NAMES\n    because: WHY\n${check.grade === 'harm' ? '    by: WHO\n' : ''}`, 'yaml'),
    ...(check.grade === 'harm' ? [] : [paragraph('For a whole house, set another grade in ', code('fettle.yaml'), ':'), verbatim(`grades: { ${check.id}: note }`, 'yaml')]),
  ];
}

/** Examples carry lines that point at what is found; a reader needs them as little as a build does. */
function withoutMarks(text: string): string {
  return text.split('\n').filter((line) => !/^\s*#\s*\^+/.test(line)).join('\n');
}
