// The working in a hover: a few lines with the way to each file, then where all of it is to be seen.
import type { Figure } from '../core/figures/figure';
import type { Truth, Used } from '../core/figures/truth';
import type { Finding } from '../core/judge/finding';
import { stepsOf, workingOf } from '../core/judge/working-steps';
import type { Doc } from '../core/parts/doc';
import type { Span } from '../core/text';
import type { Language } from '../core/words/language';
import { english } from '../core/words/languages';
import { dataOfFindings, type DiagnosticData } from './diagnostic-data';
import { code, heading, item, markdown, paragraph, strong, type Block } from './prose';
import type { View } from './shapes';
import { atMost, readFrom, uppermost, workingBlocks, type HoverOptions, type Shown } from './working-markdown';

const mostLines = 12;
/** A sum of many parts is not spelled out here. */
const longestFormula = 120;
const mostChecks = 3;
/** So deep goes a working on a page of its own. */
const deepestOnPage = 64;
const mostOnPage = 2_000;

const shownIn = (view: View, { kind, language }: HoverOptions): Shown => ({
  home: view.doc,
  ...(language ? { language } : {}),
  ...(kind === 'markdown' ? { uriOf: view.uriOf } : {}),
  longest: longestFormula,
});

/** The lines are shared out: what the first finding leaves, the next may have. */
export function workingOfFindings(view: View, found: readonly Finding[], options: HoverOptions): Block[] {
  let left = mostLines;
  return found.flatMap((finding) => {
    const whole = workingBlocks(workingOf(finding), shownIn(view, options));
    const blocks = uppermost(whole, left);
    left -= blocks.length;
    const named =
      found.length > 1 && blocks.length > 0
        ? [paragraph((options.language ?? english()).word('Working of'), ' ', code(finding.id), ':')]
        : [];
    const cut = whole.length - blocks.length;
    return [...named, ...blocks, ...(cut > 0 ? [theRest(cut, options)] : [])];
  });
}

/** The first lines of how a figure was worked out. */
export const workingOfFigure = (view: View, figure: Figure, options: HoverOptions): readonly Block[] =>
  uppermost(workingBlocks(stepsOf([figure]), shownIn(view, options)), mostLines);

/** Where all of a working is to be seen. */
function theRest(cut: number, { workings = 'fettle check --working', language = english() }: HoverOptions): Block {
  const more = cut === 1 ? language.word('1 line more: ') : language.words`${cut} lines more: `;
  return paragraph(more, code(workings), language.word(' shows the whole working.'));
}

/** A finding of a judged file with all of its working, as a page; undefined where it is not found any more. */
export function wholeWorking(
  view: View,
  { check, subject, ordinal }: DiagnosticData,
  language: Language = english(),
): string | undefined {
  const data = [...dataOfFindings(view.judgement.findings)].find(
    ([, one]) => one.check === check && one.subject === subject && one.ordinal === ordinal,
  );
  if (!data) return undefined;
  const [finding] = data;
  const whole = workingBlocks(workingOf(finding), { home: view.doc, uriOf: view.uriOf, language }, 0, deepestOnPage);
  const cut = whole.length - mostOnPage;
  return markdown([
    heading(finding.id),
    paragraph(strong(finding.grade), ` ${language.said(finding.said)}`),
    ...whole.slice(0, mostOnPage),
    ...(cut > 0 ? [paragraph(language.words`… and ${cut} lines more.`)] : []),
  ]);
}

/** A check that a value enters. */
interface Entered {
  readonly words: string;
  readonly uses: readonly Used[];
  readonly rank: number;
}

/** The checks that a value enters, each with its answer and working; those that hang on it most directly first. */
export function workingOfValue(view: View, span: Span, options: HoverOptions): Block[] {
  const language = options.language ?? english();
  const entered = enteredBy(view, span, language).sort((a, b) => a.rank - b.rank || sizeOf(a.uses) - sizeOf(b.uses));
  if (entered.length === 0) return [];
  const checks = entered.slice(0, mostChecks);
  const share = Math.floor(mostLines / checks.length);
  return [
    paragraph(language.word('Goes into:')),
    ...checks.flatMap(({ words, uses }) => [
      item(0, words),
      ...atMost(workingBlocks(stepsOf(uses), shownIn(view, options), 1), share - 1, 1, options.language),
    ]),
  ];
}

function enteredBy(view: View, span: Span, language: Language): Entered[] {
  const entered = new Map<string, Entered>();
  for (const { check, taken } of view.judgement.answers)
    for (const { outcome } of taken) {
      const { truth, subject } = outcome;
      if (!truth.uses.some((one) => readFrom(one, view.doc, span))) continue;
      const [words, rank] = [answerWords(check.id, truth.is, language), rankOf(truth, view.doc, span)];
      entered.set(`${check.id}\n${subject}`, { words, uses: truth.uses, rank });
    }
  return [...entered.values()];
}

/** What a value moves a number of comes before what only asks for it; of those, what is broken comes first. */
function rankOf({ is, uses }: Truth, doc: Doc, span: Span): number {
  const inFigure = uses.some((one) => one.type === 'figure' && readFrom(one, doc, span));
  return (inFigure ? 0 : 2) + (is === false ? 0 : 1);
}

function answerWords(id: string, is: boolean | undefined, language: Language): string {
  if (is === undefined) return language.words`${id} cannot be decided`;
  return is ? language.words`${id} holds` : language.words`${id} is broken`;
}

const sizeOf = (uses: readonly Used[]): number =>
  uses.reduce((sum, used) => sum + 1 + (used.type === 'fact' ? 0 : sizeOf(used.inputs)), 0);
