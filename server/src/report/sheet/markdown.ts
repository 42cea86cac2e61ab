// The bench sheet as Markdown: the same blocks, every text of a file shown as text.
import { markdownLine, markdownText } from '../../core/text';
import type { Language } from '../../core/words/language';
import { english } from '../../core/words/languages';
import type { Block, Body, Cell, Line, Row, Sheet, SheetCaution, SheetFinding, SheetStep, Table, Tick } from './model';

export function sheetMarkdown(sheet: Sheet): string {
  const { title, purpose, verdict, facts, write, blocks } = sheet;
  const language = sheet.language ?? english();
  const head = [
    `# ${safe(title)}`,
    language.word('Bench sheet'),
    ...(purpose === '' ? [] : [line(purpose)]),
    `**${safe(verdict)}**`,
    line(facts.map((fact) => fact.text).join(' ')),
    written(write),
  ];
  return `${[...head, ...blocks.flatMap((block) => blockMarkdown(block, language))].join('\n\n')}\n`;
}

const safe = (text: string): string => markdownText(text.trim());
const line = (text: string): string => markdownLine(safe(text));

/** One part of it, with its heading. */
export const blockMarkdown = ({ heading, level, bodies }: Block, language = english()): string[] => [
  `${'#'.repeat(level)} ${safe(heading)}`,
  ...bodies.flatMap((body) => bodyText(body, language)).filter((text) => text !== ''),
];

function bodyText(body: Body, language: Language): string[] {
  switch (body.type) {
    case 'lines':
      return body.lines.map((one) => markdownLine(lineText(one, language)));
    case 'ticks':
      return [
        ...(body.title === undefined ? [] : [`**${safe(body.title)}**`]),
        body.items.map((item) => tick(item, language)).join('\n'),
      ];
    case 'table':
      return [`**${safe(body.caption)}**`, tableText(body, language)];
    case 'steps':
      return stepsText(body.steps, language);
    case 'cautions':
      return body.cautions.map(caution);
    case 'finding':
      return findingText(body.finding, language);
    case 'picture':
      return [body.picture.words.map((word) => `- ${line(word)}`).join('\n')];
    case 'write':
      return [written(body.labels)];
  }
}

const written = (labels: readonly string[]): string => labels.map((label) => `- ${safe(label)}: ${blank}`).join('\n');

/** A line to write on. */
const blank = '\\_'.repeat(12);

const lineText = ({ text, findings = [] }: Line, language: Language): string =>
  safe(text) + references(findings, language);

function references(findings: readonly number[], language: Language): string {
  return findings.length === 0 ? '' : language.words` (finding ${[...new Set(findings)].join(', ')})`;
}

function tick({ detail, write, ...own }: Tick, language: Language): string {
  const more = detail === undefined ? '' : ` ${safe(detail)}`;
  return `- [ ] ${lineText(own, language)}${more}${write === undefined ? '' : ` ${safe(write)}: ${blank}`}`;
}

function tableText({ columns, rows }: Table, language: Language): string {
  return [
    `| ${columns.map(safe).join(' | ')} |`,
    `|${columns.map(() => ' --- |').join('')}`,
    ...rows.map((row) => rowText(row, language)),
  ].join('\n');
}

function rowText({ tick: ticked, cells: [first, ...others] }: Row, language: Language): string {
  const name = `${ticked ? '☐ ' : ''}${lineText(first, language)}`;
  return `| ${[name, ...others.map((cell) => cellText(cell, language))].join(' | ')} |`;
}

const cellText = (cell: Cell, language: Language): string => (cell === 'write' ? ' ' : lineText(cell, language));

/** Steps that follow one another are one list; a caution stands apart, before its step. */
function stepsText(steps: readonly SheetStep[], language: Language): string[] {
  const texts: string[] = [];
  let items: string[] = [];
  const close = (): void => {
    if (items.length > 0) texts.push(items.join('\n'));
    items = [];
  };
  for (const step of steps) {
    if (step.cautions.length > 0) close();
    texts.push(...step.cautions.map(caution));
    items.push(stepText(step, language));
  }
  close();
  return texts;
}

function stepText(step: SheetStep, language: Language): string {
  const { number, title, things, notes, reasons, findings, write } = step;
  const below = [
    ...things.map((line) => lineText(line, language)),
    ...notes.map(safe),
    ...reasons.map(safe),
    ...(write === undefined ? [] : [`${safe(write)}: ${blank}`]),
  ];
  return [
    `- [ ] **${number}. ${safe(title)}**${references(findings, language)}`,
    ...below.map((text) => `  - ${markdownLine(text)}`),
  ].join('\n');
}

const caution = ({ word, called = word, sentences }: SheetCaution): string =>
  `> **${called}** ${sentences.map(safe).join(' ')}`;

function findingText(finding: SheetFinding, language: Language): string[] {
  const { subject, text, accepted, caution: warning, mends, working } = finding;
  return [
    line(text),
    language.words`At ${safe(subject)}`,
    ...(accepted === undefined ? [] : [line(accepted)]),
    ...(warning ? [caution(warning)] : []),
    mends.map((mend) => language.words`- Mends it: ${safe(mend)}`).join('\n'),
    ...(working.length > 0
      ? [
          [
            language.word('| Figure or fact | Value | From |'),
            '| --- | --- | --- |',
            ...working.map(
              ({ depth, text: label, value, from }) =>
                `| ${'· '.repeat(depth)}${safe(label)} | ${safe(value)} | ${safe(from)} |`,
            ),
          ].join('\n'),
        ]
      : []),
  ];
}
