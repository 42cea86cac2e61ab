// Marks of a guide under the cursor: what a name means and comes to, which names there are, where its build lies.
import type { Guide } from '../core/guide/guide';
import { figureNames, meaningOfName } from '../core/guide/names';
import { printed } from '../core/guide/value';
import { CAUTIONS } from '../core/trade/cautions';
import { STEP_KINDS } from '../core/trade/steps';
import { cautionWords } from '../core/checks/page';
import { isBounded } from '../core/figures/figure';
import { show } from '../core/figures/sentence';
import { ownSteps } from '../core/figures/steps';
import { workOrder } from '../core/figures/work-order';
import { touches, visible, type Span } from '../core/text';
import { itemKinds, sorted, type CompletionItem, type CompletionList } from './completion-item';
import { namedByMark } from './guide-uses';
import type { Language } from '../core/words/language';
import { english } from '../core/words/languages';
import { aboutFinding, cautionParagraph } from './hover';
import { workingOfFigure, workingOfFindings } from './hover-working';
import { code, markup, paragraph, strong, type Block } from './prose';
import { emptyRange, type Location, type MarkupContent, type Position, type Range, type View } from './shapes';
import type { HoverOptions } from './working-markdown';

interface Hover {
  contents: MarkupContent;
  range?: Range;
}

/** What is to be said of a mark, or of the value in it. */
export function guideHover(view: View, guide: Guide, position: Position, options: HoverOptions): Hover | undefined {
  const language = options.language ?? english();
  const offset = view.doc.lines.offsetAt(position);
  const on = (span: Span): boolean => touches(span, offset);
  const found = view.judgement.findings.filter(({ underline, grade }) => grade !== 'unknown' && on(underline.span));
  const value = guide.ties.values.find(({ marker, span }) => on(marker.words) || on(span));
  const caution = guide.ties.cautions.find(({ span }) => on(span));
  const figure = value && guide.figures.get(value.name);
  const blocks: Block[] = [
    ...found.slice(0, 3).flatMap((finding) => aboutFinding(finding, offset, options)),
    ...(value ? nameBlocks(value.name, language) : []),
    ...(figure ? [paragraph(...language.pieces`This build: ${strong(language.label(show(figure)))}.`)] : []),
    ...(caution ? cautionBlocks(caution.id, language) : []),
    ...(figure && isBounded(figure) ? workingOfFigure(view, figure, options) : workingOfFindings(view, found, options)),
  ];
  const span = value ? (on(value.span) ? value.span : value.marker.words) : caution?.span;
  return blocks.length === 0
    ? undefined
    : { contents: markup(blocks, options.kind), ...(span ? { range: view.doc.lines.rangeOf(span) } : {}) };
}

const nameBlocks = (name: string, language: Language): Block[] => {
  const meaning = meaningOfName(name);
  if (!meaning) return [];
  const written = language.pieces` Written as ${code(meaning.example)}.`;
  return [paragraph(code(name), `: ${language.word(meaning.what)}`, ...written)];
};

function cautionBlocks(id: string | undefined, language: Language): Block[] {
  const words = cautionWords(id);
  return words ? [cautionParagraph(words, language)] : [];
}

/** What may stand in a mark that is begun: names of figures, steps, cautions. */
export function guideCompletion(
  { doc }: View,
  guide: Guide,
  position: Position,
  kind: MarkupContent['kind'],
  language: Language,
): CompletionList {
  const offset = doc.lines.offsetAt(position);
  const { start } = doc.lines.lineSpan(position.line);
  const before = doc.text.slice(start, offset);
  const mark = before.slice(Math.max(0, before.lastIndexOf('<!--')));
  const head = /^<!--\s*fettle\s*:\s*/.exec(mark)?.[0];
  const begun = head === undefined ? undefined : mark.slice(head.length);
  if (begun === undefined || begun.includes('-->')) return { isIncomplete: false, items: [] };
  const { end } = doc.lines.lineSpan(position.line);
  const rest = /^[\w.-]*(?: (?!-->)[\w.-]+)*/.exec(doc.text.slice(offset, end))![0];
  const range = doc.lines.rangeOf({ start: offset - begun.length, end: offset + rest.length });
  const isClosed = /^\s*-->/.test(doc.text.slice(offset + rest.length, end));
  const items = offersOf(guide, language).map(
    ({ text, detail, closes }, i): CompletionItem => ({
      label: visible(text),
      kind: itemKinds.reference,
      ...(detail ? { detail: visible(detail) } : {}),
      sortText: sorted(i),
      ...(meaningOfName(text) ? { documentation: markup(nameBlocks(text, language), kind) } : {}),
      textEdit: { range, newText: isClosed ? text : `${text} -->${closes}` },
    }),
  );
  return { isIncomplete: false, items };
}

/** Figures that the build has, then its steps in their order, then cautions. */
function offersOf(guide: Guide, language: Language): { text: string; detail?: string; closes: string }[] {
  const figures = [...guide.figures].map(([text, figure]) => {
    const value = isBounded(figure) ? printed(figure) : '';
    return {
      text,
      detail: value === '' ? language.word('not known yet') : language.label(value),
      closes: `${value}<!-- /fettle -->`,
    };
  });
  const { build } = guide;
  const steps = build
    ? [
        ...workOrder(build).map(({ step, part }) => `step ${step}${part ? ` ${part.label}` : ''}`),
        ...ownSteps(build).map(({ text }) => `step ${text}`),
      ]
    : STEP_KINDS.map((step) => `step ${step}`);
  return [
    ...figures,
    ...(figures.length === 0
      ? figureNames.map(({ name, what }) => ({ text: name, detail: language.word(what), closes: '' }))
      : []),
    ...[...new Set(steps)].map((text) => ({ text, closes: '' })),
    ...Object.entries(CAUTIONS).map(([id, { word }]) => ({
      text: `caution ${id}`,
      detail: language.word(word),
      closes: `**${word}** `,
    })),
  ];
}

/** The build that the front matter names; from a name in a mark, where the build gives it. */
export function guideDefinition(view: View, guide: Guide, position: Position): Location | undefined {
  const offset = view.doc.lines.offsetAt(position);
  const { ties, named } = guide;
  if (ties.build && named && touches(ties.build.span, offset)) return { uri: view.uriOf(named.doc), range: emptyRange };
  const given = namedByMark(guide, offset)?.given;
  return given && { uri: view.uriOf(given.doc), range: given.doc.lines.rangeOf(given.span) };
}
