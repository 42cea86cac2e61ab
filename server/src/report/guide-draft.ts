// A first draft of a guide: front matter, parts, the order of work, first start and acceptance, tied to its build.
import type { Build } from '../core/build/build';
import { cautionWords } from '../core/checks/page';
import { workOrder, type WorkStep } from '../core/figures/work-order';
import { figureNames } from '../core/guide/names';
import { printed } from '../core/guide/value';
import type { Judgement } from '../core/judge/finding';
import { listed, markdownLine, markdownText } from '../core/text';
import { partsOf, reasonsOf } from './order';
import { contextOf } from './sheet/context';
import { firstStartBlock } from './sheet/first-start';
import { blockMarkdown } from './sheet/markdown';
import { oneLine, upperFirst } from './sheet/model';
import { benchName, countOf, roleName, whereTo } from './sheet/parts';
import { promisesOf } from './sheet/promises';
import { testsBlock } from './sheet/tests';

/** @param path of the build, from the folder that the guide is to lie in. */
export function guideDraft(build: Build, judgement: Judgement, path: string): string {
  // A guide is no record of what was found: its numbers mean nothing there.
  const context = contextOf(build, { ...judgement, findings: [] });
  const { purpose } = build.file;
  return `${[
    `---\nbuild: ${/^[\w./ -]+$/.test(path) ? path : JSON.stringify(path)}\n---`,
    `# ${safe(build.file.build.value ?? 'A build')}`,
    ...(purpose.value === undefined ? [] : [line(purpose.value)]),
    ...figuresList(build),
    '## Parts',
    partsTable(build),
    '## Order of work',
    'The makers’ handbooks come before this list.',
    ...stepsText(build),
    ...blockMarkdown(firstStartBlock(context, [])),
    ...blockMarkdown({ ...testsBlock(context, promisesOf(context), []), heading: 'Acceptance' }),
  ]
    .filter((text) => text !== '')
    .join('\n\n')}\n`;
}

const safe = (text: string): string => markdownText(oneLine(text));
const line = (text: string): string => markdownLine(safe(text));

/** What stands in a comment must not end it. */
const isPlain = (name: string): boolean => /^[^<>\p{Cc}]+$/u.test(name) && !name.includes('--');

/** The build's figures, each as a marked value. */
function figuresList(build: Build): string[] {
  const items = figureNames.flatMap(({ what, of }) =>
    of(build).flatMap(({ name, figure }) => {
      if (!Number.isFinite(figure.lo) || !Number.isFinite(figure.hi) || !isPlain(name)) return [];
      return [`- ${whatOf(what, name)}: <!-- fettle: ${name} -->${printed(figure)}<!-- /fettle -->`];
    }),
  );
  return items.length === 0 ? [] : ['## What it comes to', items.join('\n')];
}

/** What a figure is, with which part it is of where its name says so. */
function whatOf(what: string, name: string): string {
  const bare = what.replace(/\.$/, '');
  const words = name.split('.');
  if (words[0] === 'clearance') return `Room beside ${safe(words.slice(1, -1).join(' '))}, ${words.at(-1)}`;
  return words[0] === 'drives' ? `${bare} (${safe(words.slice(1, -1).join('.'))})` : bare;
}

function partsTable(build: Build): string {
  const rows = build
    .all()
    .map((placed) => [upperFirst(roleName(placed)), `${countOf(placed)} × ${benchName(placed)}`, whereTo(placed)]);
  return [
    '| Part | What | Where |',
    '| --- | --- | --- |',
    ...rows.map((row) => `| ${row.map(safe).join(' | ')} |`),
  ].join('\n');
}

function stepsText(build: Build): string[] {
  const said = new Set<string>();
  return workOrder(build).flatMap((step, i) => [...cautionsText(step, said), stepText(build, step, i + 1)]);
}

/** Each caution before the first step that it belongs to. */
function cautionsText({ cautions }: WorkStep, said: Set<string>): string[] {
  return cautions.flatMap((id) => {
    const words = cautionWords(id);
    if (!words || said.has(id)) return [];
    said.add(id);
    return [`> <!-- fettle: caution ${id} -->\n> **${words.word}** ${words.sentences.map(safe).join(' ')}`];
  });
}

function stepText(build: Build, step: WorkStep, number: number): string {
  const part = step.part && isPlain(step.part.label) ? ` ${oneLine(step.part.label)}` : '';
  const things = partsOf(build, step).map((placed) => [benchName(placed), whereTo(placed)].filter(Boolean).join(', '));
  const title = `**${upperFirst(step.step)}${step.note ? ` (${safe(step.note)})` : ''}.**`;
  const more = things.length > 0 ? ` ${safe(listed([...new Set(things)]))}.` : '';
  const reasons = reasonsOf(step).map(({ after, because }) => `   After ${safe(listed(after))}: ${safe(because)}.`);
  return [`${number}. <!-- fettle: step ${step.step}${part} -->${title}${more}`, ...reasons].join('\n');
}
