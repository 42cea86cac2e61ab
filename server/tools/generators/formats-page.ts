// The formats that reports are written in, server/docs/formats.md: what each holds, and what their readers take.
import { compareFormats, type CompareFormat } from '../../src/command/compare';
import { formats, type Format } from '../../src/command/printers';
import { readerLimits } from '../../src/report/reader-limits';
import type { Generator } from './index';

const holds: Record<Format | CompareFormat, string> = {
  text: 'a report for people, on a terminal or in a log',
  lines: 'a finding a line, `file:line:column: grade: sentence (id)`, for problem matchers of editors and for grep',
  json:
    'everything, for programs; its shape is published in `schemas/findings.schema.json` and ' +
    '`schemas/comparison.schema.json`',
  sarif:
    'SARIF 2.1.0: the working as code flow, what it rests on as related places, proven fixes as replacements, ' +
    'accepted and known findings as suppressions with their reasons, fingerprints that outlast moved lines, a ' +
    'page of help for each check; after a base what became of each finding',
  annotations: 'workflow commands that put the worst findings beside their lines',
  'code-quality': 'a code quality report, one entry a finding',
  'junit-xml': 'JUnit XML, one suite a file and one case a finding',
  comment:
    'Markdown for one comment of a pull request: a short table, the rest folded. It is empty where a change alters ' +
    'nothing that is judged or reckoned; then the comment that stands may go',
};

const intro = `# Formats

\`fettle check --format NAME\` and \`fettle compare --format NAME\` write these. \`--output FILE\` writes into a
file, whole or not at all. The exit status is the same in every format.`;

const grades = `## Grades

| grade | SARIF | annotation | code quality | JUnit XML |
| --- | --- | --- | --- | --- |
| harm | error | error | blocker | failure |
| stop | error | error | critical | failure |
| shortfall | warning | warning | major | failure |
| note | note | notice | minor | passed, with its words |
| unknown | open | notice | info | skipped |

In JUnit XML a case fails by the grade that \`--from\` names, which is shortfall without it. What was not read is an
error in each of them. What a build accepts is suppressed in SARIF, skipped in JUnit XML, and left out of the others.

## The comment

Its first line is \`<!-- fettle-comment -->\`, which no text of a file can bring into it: whoever posts it looks for the
comment of its own that begins so, and edits that one in place. No text of a file links, notifies or refers to anything
in it, nor starts a command of a build’s log in any format.

## What readers take

Each report keeps to these and says how many findings it left out: the lightest, and of a comparison those that stayed
before those that a change brings. \`text\` and \`json\` have no limit but that of findings listed of one file.`;

export const formatsPage: Generator = {
  make() {
    const tick = (is: boolean): string => (is ? 'yes' : '');
    const all = [...new Set<Format | CompareFormat>([...formats, ...compareFormats])];
    const rows = all.map((name) => {
      const by = [formats, compareFormats].map((of) => tick((of as readonly string[]).includes(name)));
      return `| \`${name}\` | ${by.join(' | ')} | ${holds[name]} |`;
    });
    const lines = [
      intro,
      '',
      '| name | check | compare | holds |',
      '| --- | --- | --- | --- |',
      ...rows,
      '',
      grades,
      '',
      '| at most | of | source |',
      '| --- | --- | --- |',
      ...Object.values(readerLimits).map(
        ({ what, most, source }) => `| ${most.toLocaleString('en')} | ${what} | ${source} |`,
      ),
      '',
    ];
    return new Map([['server/docs/formats.md', lines.join('\n')]]);
  },
};
