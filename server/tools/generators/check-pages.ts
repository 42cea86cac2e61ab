// A page for each check under server/docs/checks/, and the index: made from the check’s own file by running its
// examples.
import { checks } from '../../src/core/checks/all';
import { areas, type Area, type Check } from '../../src/core/checks/check';
import { pageOf, type ExamplePage } from '../../src/core/checks/page';
import { runExample } from './examples';
import type { Generator } from './index';

function page(check: Check): string {
  const { id, what, why, grade, meaning, area, source, limits, remarks, caution, examples, unread, accept, regrade } =
    pageOf(check);
  const lines = [
    `# ${id}`,
    '',
    `${area} · ${grade}: ${meaning}`,
    '',
    what,
    '',
    why,
    '',
    `Source: ${source}.`,
    '',
    ...listed('What it does not see:', limits),
    ...listed('How it grades, and what other checks judge:', remarks),
    ...(caution ? [`> **${caution.word}** ${caution.sentences.join(' ')}`, ''] : []),
    ...examples.flatMap((example, i) => exampleLines(check, i, example)),
    ...(accept === undefined
      ? unread === undefined
        ? []
        : ['## Never lighter', '', unread, '']
      : [
          '## To live with it',
          '',
          'A finding that someone has weighed is accepted in the build, by its place and with a reason:',
          '',
          ...yaml(accept),
        ]),
    ...(regrade === undefined ? [] : ['For a whole house, set another grade in `fettle.yaml`:', '', ...yaml(regrade)]),
  ];
  return `${lines.join('\n').trimEnd()}\n`;
}

const yaml = (text: string): string[] => ['```yaml', text.trim(), '```', ''];

function exampleLines(check: Check, index: number, { marked, beside, mended, instead }: ExamplePage): string[] {
  const ran = runExample(check, check.examples[index]!);
  return [
    `## Example${check.examples.length > 1 ? ` ${index + 1}` : ''}`,
    '',
    ...yaml(marked),
    ...beside.flatMap(({ name, text }) => [`With \`${name}\`:`, '', ...yaml(text)]),
    ...ran.messages.map((message) => `> ${message}`),
    '',
    ...(mended === undefined ? [instead ?? '', ''] : [`Fix: *${ran.fix ?? ''}*`, '', ...yaml(mended)]),
  ];
}

const listed = (title: string, texts: readonly string[]): string[] =>
  texts.length > 0 ? [title, '', ...texts.map((text) => `- ${text}`), ''] : [];

function indexPage(): string {
  const sections = (Object.keys(areas) as Area[]).flatMap((area) => [
    `## ${areas[area]}`,
    '',
    '| check | grade | judges |',
    '| --- | --- | --- |',
    ...checks
      .filter((check) => check.area === area)
      .map((check) => `| [${check.id}](checks/${check.id}.md) | ${check.grade} | ${check.what} |`),
    '',
  ]);
  const intro =
    `${checks.length} checks, by area. Each page shows what is judged and why, the source, a faulty example ` +
    'and the text its fix leads to.';
  return `${['# The checks', '', intro, '', ...sections].join('\n').trimEnd()}\n`;
}

export const checkPages: Generator = {
  owns: 'server/docs/checks',
  make: () =>
    new Map([
      ...checks.map((check): [string, string] => [`server/docs/checks/${check.id}.md`, page(check)]),
      ['server/docs/checks.md', indexPage()],
    ]),
};
