// A first draft of a guide: front matter, parts, the order of work, first start and acceptance, tied to its build.
import type { Build } from '../core/build/build';
import { cautionWords } from '../core/checks/page';
import { workOrder, type WorkStep } from '../core/figures/work-order';
import { figureNames } from '../core/guide/names';
import { printed } from '../core/guide/value';
import type { Judgement } from '../core/judge/finding';
import { markdownLine, markdownText } from '../core/text';
import type { Language } from '../core/words/language';
import { partsOf, reasonsOf } from './order';
import { contextOf, type Context } from './sheet/context';
import { firstStartBlock } from './sheet/first-start';
import { blocksIn } from './sheet/in-language';
import { Kept } from './sheet/kept';
import { blockMarkdown } from './sheet/markdown';
import { oneLine, upperFirst, type Block } from './sheet/model';
import { benchName, countOf, roleName, whereTo } from './sheet/parts';
import { promisesOf } from './sheet/promises';
import { testsBlock } from './sheet/tests';

/** @param path of the build, from the folder that the guide is to lie in. */
export function guideDraft(build: Build, judgement: Judgement, path: string, language: Language): string {
  // A guide is no record of what was found: its numbers mean nothing there.
  const context = contextOf(build, { ...judgement, findings: [] });
  const { purpose } = build.file;
  return `${[
    `---\nbuild: ${/^[\w./ -]+$/.test(path) ? path : JSON.stringify(path)}\n---`,
    `# ${safe(build.file.build.value ?? language.word('A build'))}`,
    ...(purpose.value === undefined ? [] : [line(purpose.value)]),
    ...figuresList(build, language),
    `## ${language.word('Parts')}`,
    partsTable(build, language),
    `## ${language.word('Order of work')}`,
    language.word('The makers’ handbooks come before this list.'),
    ...stepsText(build, language),
    ...lastBlocks(context, language).flatMap((block) => blockMarkdown(block, language)),
  ]
    .filter((text) => text !== '')
    .join('\n\n')}\n`;
}

/** What the bench sheet says of the first start and the tests. */
function lastBlocks(context: Context, language: Language): readonly Block[] {
  const tests = { ...testsBlock(context, promisesOf(context), []), heading: 'Acceptance' };
  return blocksIn(language, [firstStartBlock(context, []), tests], new Kept());
}

const safe = (text: string): string => markdownText(oneLine(text));
const line = (text: string): string => markdownLine(safe(text));

/** What stands in a comment must not end it. */
const isPlain = (name: string): boolean => /^[^<>\p{Cc}]+$/u.test(name) && !name.includes('--');

/** The build's figures, each as a marked value. */
function figuresList(build: Build, language: Language): string[] {
  const items = figureNames.flatMap(({ what, of }) =>
    of(build).flatMap(({ name, figure }) => {
      if (!Number.isFinite(figure.lo) || !Number.isFinite(figure.hi) || !isPlain(name)) return [];
      return [`- ${whatOf(what, name, language)}: <!-- fettle: ${name} -->${printed(figure)}<!-- /fettle -->`];
    }),
  );
  return items.length === 0 ? [] : [`## ${language.word('What it comes to')}`, items.join('\n')];
}

/** What a figure is, with which part it is of where its name says so. */
function whatOf(what: string, name: string, language: Language): string {
  const bare = language.word(what).replace(/\.$/, '');
  const words = name.split('.');
  if (words[0] === 'clearance')
    return language.words`Room beside ${safe(words.slice(1, -1).join(' '))}, ${language.label(words.at(-1)!)}`;
  return words[0] === 'drives' ? `${bare} (${safe(words.slice(1, -1).join('.'))})` : bare;
}

function partsTable(build: Build, language: Language): string {
  const rows = build
    .all()
    .map((placed) => [
      language.plain(upperFirst(roleName(placed))),
      `${countOf(placed)} × ${benchName(placed)}`,
      language.plain(whereTo(placed)),
    ]);
  return [
    `| ${language.word('Part')} | ${language.word('What')} | ${language.word('Where')} |`,
    '| --- | --- | --- |',
    ...rows.map((row) => `| ${row.map(safe).join(' | ')} |`),
  ].join('\n');
}

function stepsText(build: Build, language: Language): string[] {
  const said = new Set<string>();
  return workOrder(build).flatMap((step, i) => [
    ...cautionsText(step, said, language),
    stepText(build, step, i + 1, language),
  ]);
}

/** Each caution before the first step that it belongs to. */
function cautionsText({ cautions }: WorkStep, said: Set<string>, language: Language): string[] {
  return cautions.flatMap((id) => {
    const words = cautionWords(id);
    if (!words || said.has(id)) return [];
    said.add(id);
    const sentences = words.sentences.map((one) => language.word(one));
    return [`> <!-- fettle: caution ${id} -->\n> **${language.word(words.word)}** ${sentences.map(safe).join(' ')}`];
  });
}

function stepText(build: Build, step: WorkStep, number: number, language: Language): string {
  const part = step.part && isPlain(step.part.label) ? ` ${oneLine(step.part.label)}` : '';
  const things = partsOf(build, step).map((placed) =>
    [benchName(placed), language.plain(whereTo(placed))].filter(Boolean).join(', '),
  );
  const title = `**${upperFirst(language.word(step.step))}${step.note ? ` (${safe(step.note)})` : ''}.**`;
  const more = things.length > 0 ? ` ${safe(language.listed([...new Set(things)]))}.` : '';
  const reasons = reasonsOf(step).map(({ after, because }) => {
    const steps = language.listed(after.map((one) => language.label(one)));
    return `   ${language.words`After ${safe(steps)}: ${safe(language.plain(because))}.`}`;
  });
  return [`${number}. <!-- fettle: step ${step.step}${part} -->${title}${more}`, ...reasons].join('\n');
}
