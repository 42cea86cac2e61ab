// Hover: what a key means, what a value comes to and which figures it enters; what a part is; why a finding stands.
import { atLeastAsBad } from '../core/build/workspace-config';
import type { Placed } from '../core/build/build';
import { cautionWords, type CautionWords } from '../core/checks/page';
import { weighedValue } from '../core/figures/measure';
import type { Finding } from '../core/judge/finding';
import { roles } from '../core/manifest/places';
import type { Fact, Group } from '../core/parts/fact';
import type { Table } from '../core/parts/field';
import { touches, type Span } from '../core/text';
import { nodeAt, type At } from '../core/yaml';
import { meaningOf, placedAt, type Meaning } from '../core/build/field-at';
import { describeField, readAs } from './field-words';
import { missingAt } from './hints';
import { partBlocks } from './part-words';
import type { Language } from '../core/words/language';
import { english } from '../core/words/languages';
import { code, markup, paragraph, strong, type Block } from './prose';
import type { MarkupContent, Position, Range, View } from './shapes';
import { workingOfFindings, workingOfValue } from './hover-working';
import type { HoverOptions } from './working-markdown';

const mostFindings = 3;

/**
 * What is to be said of a place in a judged file: what was found there, what stands there, and a few lines of how that
 * was worked out. Undefined where nothing is to be said.
 */
export function hover(
  view: View,
  position: Position,
  options: HoverOptions,
): { contents: MarkupContent; range?: Range } | undefined {
  const offset = view.doc.lines.offsetAt(position);
  const at = nodeAt(view.doc.parsed, offset);
  const onText = at && at.where !== 'gap' ? at : undefined;
  const found = findingsAt(view, offset, onText);
  const blocks = [
    ...found.flatMap((finding) => aboutFinding(finding, offset, options)),
    ...(onText ? keyBlocks(view, onText, options) : []),
    ...(found.length > 0
      ? workingOfFindings(view, found, options)
      : onText?.entry && meaningOf(view.doc, onText.path)
        ? workingOfValue(view, onText.entry.value.span, options)
        : []),
    ...missingAt(view, offset, options),
  ];
  if (blocks.length === 0) return undefined;
  return {
    contents: markup(blocks, options.kind),
    ...(onText ? { range: view.doc.lines.rangeOf(onText.replace) } : {}),
  };
}

function keyBlocks(view: View, at: At, { kind, language = english() }: HoverOptions): Block[] {
  const meaning = meaningOf(view.doc, at.path);
  if (!meaning) return [];
  const placed =
    view.build && meaning.role && meaning.index !== undefined
      ? placedAt(view.build, meaning.role, meaning.index)
      : undefined;
  const key = [...at.path].reverse().find((step) => typeof step === 'string') ?? '';
  const own = meaning.field
    ? describeField(String(key), meaning.field, language)
    : meaning.what
      ? [paragraph(strong(String(key)), `: ${language.word(meaning.what)}`)]
      : [];
  if (at.where === 'value' && at.node?.type === 'scalar' && meaning.field)
    own.push(...readAs(meaning.field, at.node.text, language));
  if (placed && at.where === 'value' && meaning.below?.[0] === 'use')
    return [...partBlocks(placed, language, kind === 'markdown' ? view.uriOf : undefined), ...own];
  return [...own, ...resolved(placed, meaning, language)];
}

/** What a part's fact comes to: stated here, over what, or by which file. */
function resolved(placed: Placed | undefined, meaning: Meaning, language: Language): Block[] {
  if (!placed || !meaning.below) return [];
  const fact = factAt(placed, meaning.below);
  if (!fact?.node) return [];
  const { replaced } = fact;
  if (replaced) {
    const [text, file] = [code(replaced.text), code(replaced.doc.name)];
    return [paragraph(...language.pieces`Spelled out here; it replaces ${text} of ${file}.`)];
  }
  const stated = language.pieces`Stated by ${code(fact.doc.name)}: ${code(fact.text)}.`;
  return fact.doc === placed.doc ? [] : [paragraph(...stated)];
}

/** The fact of a part at a path below it, such as `draw`, `peak`; undefined for groups and places. */
function factAt(placed: Placed, below: readonly (string | number)[]): Fact<unknown> | undefined {
  const [first] = below;
  const start = (typeof first === 'string' && Object.hasOwn(roles[placed.role].fields, first)
    ? placed.at
    : placed.part) as unknown as Group<Table>;
  let found: unknown = start;
  for (const step of below) {
    if (typeof found !== 'object' || found === null) return undefined;
    found = 'type' in found ? inNamed(found as Fact<unknown>, step) : (found as Record<string, unknown>)[step];
  }
  return typeof found === 'object' && found !== null && (found as { type?: unknown }).type === 'fact'
    ? (found as Fact<unknown>)
    : undefined;
}

function inNamed({ value }: Fact<unknown>, step: string | number): unknown {
  if (value instanceof Map) return value.get(step);
  return Array.isArray(value) && typeof step === 'number' ? value[step] : undefined;
}

function findingsAt(view: View, offset: number, at: At | undefined): Finding[] {
  const own = at?.entry?.span;
  const onEntry = (span: Span): boolean =>
    touches(span, offset) ||
    (own !== undefined && at?.node?.type === 'scalar' && span.start >= own.start && span.end <= own.end);
  const found = view.judgement.findings.filter(
    (finding) => finding.underline.doc === view.doc && onEntry(finding.underline.span) && finding.grade !== 'unknown',
  );
  return found.slice(0, mostFindings);
}

/** Whether the client shows the same sentence above this one: it does so where the finding is underlined. */
const isShownAbove = ({ grade, accepted, underline }: Finding, offset: number, { shownFrom }: HoverOptions): boolean =>
  shownFrom !== undefined && !accepted && atLeastAsBad(grade, shownFrom) && touches(underline.span, offset);

/** Up to what it was weighed, and what it comes to now. */
function acceptedWords({ accepted, measure }: Finding, language: Language): string {
  if (!measure) return language.word('Accepted');
  const now = String(weighedValue(measure));
  return accepted?.atMost
    ? language.words`Accepted up to ${accepted.atMost} past its limit; it is ${now} past it`
    : language.words`Accepted however bad it gets, since the line says no \`at-most\`; it is ${now} past its limit`;
}

export const cautionParagraph = ({ word, sentences }: CautionWords, language: Language): Block =>
  paragraph(strong(language.word(word)), ` ${sentences.map((one) => language.word(one)).join(' ')}`);

/** A finding with its reason and its caution, for a hover at `offset`. */
export function aboutFinding(finding: Finding, offset: number, options: HoverOptions): Block[] {
  const language = options.language ?? english();
  const caution = cautionWords(finding.caution);
  return [
    ...(isShownAbove(finding, offset, options)
      ? []
      : [paragraph(strong(finding.grade), ` ${language.said(finding.said)}`)]),
    paragraph(language.word(finding.check.why)),
    ...(caution ? [cautionParagraph(caution, language)] : []),
    ...(finding.accepted ? [paragraph(`${acceptedWords(finding, language)}: ${finding.accepted.because}`)] : []),
    paragraph(code(finding.id), language.words`; source: ${language.plain(finding.check.source)}.`),
  ];
}
