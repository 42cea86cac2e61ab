// A page for each check under server/docs/checks/, and the index: made from the check’s own file by running its examples.
import { checks } from '../../src/core/checks/all';
import { areas, type Area, type Check, type Example } from '../../src/core/checks/check';
import { CAUTIONS, deferral, type CautionId } from '../../src/core/trade/cautions';
import { runExample } from './examples';
import type { Generator } from './index';

const gradeWords: Record<string, string> = {
  harm: 'harm: could hurt someone, or ruin a part',
  stop: 'stop: will not go together, or will not start',
  short: 'short: works, but falls short of what is promised',
  note: 'note: worth knowing',
  unknown: 'unknown: cannot be decided',
};

function page(check: Check): string {
  const lines = [
    `# ${check.id}`, '', `${areas[check.area]} · ${gradeWords[check.grade]}`, '',
    check.what, '', check.why, '', `Source: ${check.source}.`, '',
    ...cautionLines(check.caution),
    ...check.examples.flatMap((example, i) => exampleLines(check, example, check.examples.length > 1 ? ` ${i + 1}` : '')),
    '## To live with it', '',
    'A finding that someone has weighed is accepted in the build, by its place and with a reason:', '',
    '```yaml', 'accept:', `  - finding: ${check.id}`, '    at: <place, as the finding names it>', '    because: <why it is accepted>',
    ...(check.grade === 'harm' ? ['    by: <who answers for it>'] : []), '```', '',
  ];
  return `${lines.join('\n').trimEnd()}\n`;
}

function cautionLines(id: string | undefined): string[] {
  if (id === undefined) return [];
  const caution = CAUTIONS[id as CautionId];
  return [`> **${caution.word}** ${caution.hazard} ${caution.consequence} ${caution.avoidance} ${deferral(caution)}`, ''];
}

function exampleLines(check: Check, example: Example, number: string): string[] {
  const ran = runExample(check, example);
  const beside = Object.entries(example.beside ?? {}).flatMap(([name, text]) => [`With \`${name}\`:`, '', '```yaml', text.trim(), '```', '']);
  return [
    `## Example${number}`, '', '```yaml', example.faulty.trim(), '```', '', ...beside,
    ...ran.messages.map((message) => `> ${message}`), '',
    ...(example.mended === undefined ? [`${example.instead ?? ''}`, ''] : [`Fix: *${ran.fix ?? ''}*`, '', '```yaml', example.mended.trim(), '```', '']),
  ];
}

function indexPage(): string {
  const sections = (Object.keys(areas) as Area[]).flatMap((area) => [
    `## ${areas[area]}`, '', '| check | grade | judges |', '| --- | --- | --- |',
    ...checks.filter((check) => check.area === area).map((check) => `| [${check.id}](checks/${check.id}.md) | ${check.grade} | ${check.what} |`), '',
  ]);
  return `${['# The checks', '', `${checks.length} checks, by area. Each page shows what is judged and why, the source, a faulty example and the text its fix leads to.`, '', ...sections].join('\n').trimEnd()}\n`;
}

export const checkPages: Generator = {
  owns: 'server/docs/checks',
  make: () => new Map([
    ...checks.map((check): [string, string] => [`server/docs/checks/${check.id}.md`, page(check)]),
    ['server/docs/checks.md', indexPage()],
  ]),
};

/** The table for the README: how many checks an area has, and which. */
export function readmeTable(): string {
  const rows = (Object.keys(areas) as Area[]).map((area) => {
    const own = checks.filter((check) => check.area === area);
    return `| ${areas[area]} | ${own.length} | ${own.map((check) => `[${check.id}](server/docs/checks/${check.id}.md)`).join(', ')} |`;
  });
  return ['| area | checks | |', '| --- | --- | --- |', ...rows].join('\n');
}

const marks = /(<!-- checks: generated -->\n)[\s\S]*?(<!-- end of checks -->)/;

export const readme: Generator = {
  make: (read) => {
    const text = read('README.md');
    return new Map(text ? [['README.md', text.replace(marks, (_, start: string, end: string) => `${start}${readmeTable()}\n${end}`)]] : []);
  },
};
