// Hover: what a key means, what a value comes to and which figures it enters; what a part is; why a finding stands.
import type { Placed } from '../core/build/build';
import { cautionWords } from '../core/checks/page';
import { weighedValue } from '../core/figures/measure';
import type { Truth, Used } from '../core/figures/truth';
import type { Finding } from '../core/judge/finding';
import { stepsOf, workingOf } from '../core/judge/working-steps';
import { roles } from '../core/manifest/places';
import type { Fact, Group } from '../core/parts/fact';
import type { Doc } from '../core/parts/doc';
import type { Table } from '../core/parts/field';
import { touches, type Span } from '../core/text';
import { nodeAt, type At } from '../core/yaml';
import { meaningOf, placedAt, type Meaning } from '../core/build/field-at';
import { describeField, readAs } from './field-words';
import { partBlocks } from './part-words';
import { code, item, markup, paragraph, strong, type Block } from './prose';
import type { MarkupContent, Position, Range, View } from './shapes';
import { readFrom, workingBlocks } from './working-markdown';

const mostChecks = 3;
const mostFindings = 3;

/** What is to be said of a place in a judged file; undefined where nothing is. */
export function hover(
  view: View,
  position: Position,
  kind: MarkupContent['kind'],
): { contents: MarkupContent; range?: Range } | undefined {
  const offset = view.doc.lines.offsetAt(position);
  const at = nodeAt(view.doc.parsed, offset);
  const onText = at && at.where !== 'gap' ? at : undefined;
  const blocks = [...(onText ? keyBlocks(view, onText) : []), ...findingBlocks(view, offset, onText)];
  if (blocks.length === 0) return undefined;
  return { contents: markup(blocks, kind), ...(onText ? { range: view.doc.lines.rangeOf(onText.replace) } : {}) };
}

function keyBlocks(view: View, at: At): Block[] {
  const meaning = meaningOf(view.doc, at.path);
  if (!meaning) return [];
  const placed =
    view.build && meaning.role && meaning.index !== undefined
      ? placedAt(view.build, meaning.role, meaning.index)
      : undefined;
  const key = [...at.path].reverse().find((step) => typeof step === 'string') ?? '';
  const own = meaning.field
    ? describeField(String(key), meaning.field)
    : meaning.what
      ? [paragraph(strong(String(key)), `: ${meaning.what}`)]
      : [];
  if (at.where === 'value' && at.node?.type === 'scalar' && meaning.field)
    own.push(...readAs(meaning.field, at.node.text));
  if (placed && at.where === 'value' && meaning.below?.[0] === 'use') return [...partBlocks(placed), ...own];
  return [...own, ...resolved(placed, meaning), ...(at.entry ? figures(view, at.entry.value.span) : [])];
}

/** What a part's fact comes to: stated here, over what, or by which file. */
function resolved(placed: Placed | undefined, meaning: Meaning): Block[] {
  if (!placed || !meaning.below) return [];
  const fact = factAt(placed, meaning.below);
  if (!fact?.node) return [];
  const { replaced } = fact;
  if (replaced)
    return [paragraph('Spelled out here; it replaces ', code(replaced.text), ' of ', code(replaced.doc.name), '.')];
  return fact.doc === placed.doc ? [] : [paragraph('Stated by ', code(fact.doc.name), ': ', code(fact.text), '.')];
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

/** The checks that a value enters, each with its answer and working; those that hang on it most directly first. */
function figures(view: View, span: Span): Block[] {
  const entered = new Map<string, { readonly words: string; readonly uses: readonly Used[]; readonly rank: number }>();
  for (const { check, taken } of view.judgement.answers) {
    for (const {
      outcome: { truth, subject },
    } of taken) {
      if (truth.uses.some((one) => readFrom(one, view.doc, span)))
        entered.set(`${check.id}\n${subject}`, {
          words: answerWords(check.id, truth.is),
          uses: truth.uses,
          rank: rankOf(truth, view.doc, span),
        });
    }
  }
  const nearest = [...entered.values()].sort((a, b) => a.rank - b.rank || sizeOf(a.uses) - sizeOf(b.uses));
  if (nearest.length === 0) return [];
  return [
    paragraph('Goes into:'),
    ...nearest
      .slice(0, mostChecks)
      .flatMap(({ words, uses }) => [item(0, words), ...workingBlocks(stepsOf(uses), view.doc, 1)]),
  ];
}

/** What a value moves a number of comes before what only asks for it; of those, what is broken comes first. */
function rankOf({ is, uses }: Truth, doc: Doc, span: Span): number {
  const inFigure = uses.some((one) => one.type === 'figure' && readFrom(one, doc, span));
  return (inFigure ? 0 : 2) + (is === false ? 0 : 1);
}

const answerWords = (id: string, is: boolean | undefined): string =>
  `${id} ${is === undefined ? 'cannot be decided' : is ? 'holds' : 'is broken'}`;

const sizeOf = (uses: readonly Used[]): number =>
  uses.reduce((sum, used) => sum + 1 + (used.type === 'fact' ? 0 : sizeOf(used.inputs)), 0);

function findingBlocks(view: View, offset: number, at: At | undefined): Block[] {
  const own = at?.entry?.span;
  const onEntry = (span: Span): boolean =>
    touches(span, offset) ||
    (own !== undefined && at?.node?.type === 'scalar' && span.start >= own.start && span.end <= own.end);
  const found = view.judgement.findings.filter(
    (finding) => finding.underline.doc === view.doc && onEntry(finding.underline.span) && finding.grade !== 'unknown',
  );
  return found.slice(0, mostFindings).flatMap((finding) => aboutFinding(finding, view));
}

/** Up to what it was weighed, and what it comes to now. */
function acceptedWords({ accepted, measure }: Finding): string {
  if (!measure) return 'Accepted';
  const now = weighedValue(measure);
  return accepted?.atMost
    ? `Accepted up to ${accepted.atMost} past its limit; it is ${now} past it`
    : `Accepted however bad it gets, since the line says no \`at-most\`; it is ${now} past its limit`;
}

/** A finding with its reason, its caution and its working. */
function aboutFinding(finding: Finding, view: View): Block[] {
  const caution = cautionWords(finding.caution);
  return [
    paragraph(strong(finding.grade), ` ${finding.said.text}`),
    paragraph(finding.check.why),
    ...(caution ? [paragraph(strong(caution.word), ` ${caution.sentences.join(' ')}`)] : []),
    ...(finding.accepted ? [paragraph(`${acceptedWords(finding)}: ${finding.accepted.because}`)] : []),
    ...workingBlocks(workingOf(finding), view.doc),
    paragraph(code(finding.id), `; source: ${finding.check.source}.`),
  ];
}
