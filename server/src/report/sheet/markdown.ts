// The bench sheet as Markdown: the same blocks, every text of a file shown as text.
import { markdownLine, markdownText } from '../../core/text';
import type { Block, Body, Cell, Line, Row, Sheet, SheetCaution, SheetFinding, SheetStep, Table, Tick } from './model';

export function sheetMarkdown(sheet: Sheet): string {
  const { title, purpose, verdict, facts, write, blocks } = sheet;
  const head = [
    `# ${safe(title)}`,
    'Bench sheet',
    ...(purpose === '' ? [] : [line(purpose)]),
    `**${safe(verdict)}**`,
    line(facts.map((fact) => fact.text).join(' ')),
    written(write),
  ];
  return `${[...head, ...blocks.flatMap(blockMarkdown)].join('\n\n')}\n`;
}

const safe = (text: string): string => markdownText(text.trim());
const line = (text: string): string => markdownLine(safe(text));

/** One part of it, with its heading. */
export const blockMarkdown = ({ heading, level, bodies }: Block): string[] => [
  `${'#'.repeat(level)} ${safe(heading)}`,
  ...bodies.flatMap((body) => bodyText(body)).filter((text) => text !== ''),
];

function bodyText(body: Body): string[] {
  switch (body.type) {
    case 'lines':
      return body.lines.map((one) => markdownLine(lineText(one)));
    case 'ticks':
      return [...(body.title === undefined ? [] : [`**${safe(body.title)}**`]), body.items.map(tick).join('\n')];
    case 'table':
      return [`**${safe(body.caption)}**`, tableText(body)];
    case 'steps':
      return stepsText(body.steps);
    case 'cautions':
      return body.cautions.map(caution);
    case 'finding':
      return findingText(body.finding);
    case 'picture':
      return [body.picture.words.map((word) => `- ${line(word)}`).join('\n')];
    case 'write':
      return [written(body.labels)];
  }
}

const written = (labels: readonly string[]): string => labels.map((label) => `- ${safe(label)}: ${blank}`).join('\n');

/** A line to write on. */
const blank = '\\_'.repeat(12);

const lineText = ({ text, findings = [] }: Line): string => safe(text) + references(findings);

function references(findings: readonly number[]): string {
  return findings.length === 0 ? '' : ` (finding ${[...new Set(findings)].join(', ')})`;
}

function tick({ detail, write, ...own }: Tick): string {
  const more = detail === undefined ? '' : ` ${safe(detail)}`;
  return `- [ ] ${lineText(own)}${more}${write === undefined ? '' : ` ${safe(write)}: ${blank}`}`;
}

function tableText({ columns, rows }: Table): string {
  return [
    `| ${columns.map(safe).join(' | ')} |`,
    `|${columns.map(() => ' --- |').join('')}`,
    ...rows.map(rowText),
  ].join('\n');
}

function rowText({ tick: ticked, cells: [first, ...others] }: Row): string {
  return `| ${[`${ticked ? '☐ ' : ''}${lineText(first)}`, ...others.map(cellText)].join(' | ')} |`;
}

const cellText = (cell: Cell): string => (cell === 'write' ? ' ' : lineText(cell));

/** Steps that follow one another are one list; a caution stands apart, before its step. */
function stepsText(steps: readonly SheetStep[]): string[] {
  const texts: string[] = [];
  let items: string[] = [];
  const close = (): void => {
    if (items.length > 0) texts.push(items.join('\n'));
    items = [];
  };
  for (const step of steps) {
    if (step.cautions.length > 0) close();
    texts.push(...step.cautions.map(caution));
    items.push(stepText(step));
  }
  close();
  return texts;
}

function stepText({ number, title, things, notes, reasons, findings, write }: SheetStep): string {
  const below = [
    ...things.map(lineText),
    ...notes.map(safe),
    ...reasons.map(safe),
    ...(write === undefined ? [] : [`${safe(write)}: ${blank}`]),
  ];
  return [
    `- [ ] **${number}. ${safe(title)}**${references(findings)}`,
    ...below.map((text) => `  - ${markdownLine(text)}`),
  ].join('\n');
}

const caution = ({ word, sentences }: SheetCaution): string => `> **${word}** ${sentences.map(safe).join(' ')}`;

function findingText({ subject, text, accepted, caution: warning, mends, working }: SheetFinding): string[] {
  return [
    line(text),
    `At ${safe(subject)}`,
    ...(accepted === undefined ? [] : [line(accepted)]),
    ...(warning ? [caution(warning)] : []),
    mends.map((mend) => `- Mends it: ${safe(mend)}`).join('\n'),
    ...(working.length > 0
      ? [
          [
            '| Figure or fact | Value | From |',
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
