// Hints at what no file states: one for all that is missing of a part, with the facts that decide most first.
import type { Build, Placed } from '../core/build/build';
import type { Missing } from '../core/figures/figure';
import { compareRows, type Finding } from '../core/judge/finding';
import { factKey, spanOfMissing, waiting, weightsOf, type Waiting } from '../core/judge/waiting';
import type { Grade } from '../core/manifest/house-file';
import { touches, visible, type Span } from '../core/text';
import type { Language } from '../core/words/language';
import { english } from '../core/words/languages';
import { nodeAt } from '../core/yaml';
import { dataOfHint } from './diagnostic-data';
import { code, item, paragraph, type Block } from './prose';
import { emptyRange, severities, sourceOf, type Diagnostic, type View } from './shapes';
import type { HoverOptions } from './working-markdown';

/** The code of a hint that names missing facts. */
const notStated = 'fact-not-stated';
const mostFacts = 3;
const mostChecks = 4;
const mostInHover = 12;

/** With related lines or without, and in which words. */
export interface How {
  readonly related: boolean;
  readonly language: Language;
}

export const isOpen = (finding: Finding): boolean => finding.grade === 'unknown' && finding.missing.length > 0;

/** Missing facts as they are hinted at, and where: all of one part, or one that is of none. */
export interface Hint {
  /** Those that decide most come first; one at least. */
  readonly facts: readonly Waiting[];
  /** What the facts are of: the part’s name or its place; undefined for a fact by itself. */
  readonly of?: Part;
  readonly span: Span;
}

interface Part {
  readonly name: string;
  /** The path in the build below which its facts would stand; undefined for facts of the part’s own file. */
  readonly path?: string;
}

/** The hints at missing facts that a judged file shows; none where open questions are not shown. */
export function hintsOf(view: View, from: Grade): Hint[] {
  if (from !== 'unknown') return [];
  const open = view.judgement.findings.filter((finding) => !finding.accepted && isOpen(finding));
  const groups = new Map<string, { readonly of: Part | undefined; readonly span: Span; readonly facts: Waiting[] }>();
  for (const one of waiting(open, view.build)) {
    const { lack } = one;
    const placed = view.build && partOf(view.build, lack);
    const of = placed && asPart(placed, lack);
    const key = of ? `${lack.doc.name}\n${of.path ?? ''}\n` : factKey(lack);
    const group = groups.get(key);
    if (group) group.facts.push(one);
    else groups.set(key, { of, span: placeOf(view, one, placed), facts: [one] });
  }
  return [...groups.values()].map(({ of, span, facts }) => ({
    facts: decidingFirst(facts),
    span,
    ...(of ? { of } : {}),
  }));
}

/** The first part of a build that a missing fact is of. */
const partOf = (build: Build, { doc, path }: Missing): Placed | undefined =>
  build.all().find((one) => (doc === build.doc ? path.startsWith(`${one.path}.`) : one.used?.file === doc));

function asPart({ at, used, path }: Placed, lack: Missing): Part | undefined {
  // Where a part is not named or not found, everything about it is one fact already.
  if (lack.fact === at.use) return undefined;
  return lack.doc === used?.file ? { name: used.name } : { name: path, path };
}

function decidingFirst(facts: readonly Waiting[]): readonly Waiting[] {
  const weighed = facts.map((fact) => {
    const decides = fact.findings.filter(({ missing }) => missing.length === 1);
    const helps = fact.findings.filter(({ missing }) => missing.length > 1);
    return { fact, weights: weightsOf({ decides, helps }) };
  });
  return weighed.sort((a, b) => compareRows(a.weights, b.weights)).map(({ fact }) => fact);
}

/** A fact of a part file is asked for where the build uses that part; one of the build itself, where it is needed. */
function placeOf({ doc }: View, { lack, findings }: Waiting, placed: Placed | undefined): Span {
  const isAtUse = lack.doc !== doc || lack.fact === placed?.at.use;
  return (isAtUse ? placed?.used?.span : undefined) ?? findings[0]!.underline.span;
}

/** The key under which a hint’s value stands. */
export const keyOfHint = ({ doc }: View, { span }: Hint): Span | undefined =>
  nodeAt(doc.parsed, span.start)?.entry?.keySpan;

export function diagnosticOfHint(view: View, hint: Hint, how: How): Diagnostic {
  const { facts, of, span } = hint;
  const { language } = how;
  const [{ lack }] = facts as [Waiting];
  const elsewhere = lack.doc !== view.doc;
  const message =
    facts.length === 1
      ? language.words`${lack.path} belongs into this file`
      : language.words`${facts.length} facts belong into this file`;
  const location = { uri: view.uriOf(lack.doc), range: elsewhere ? placeFor(lack) : emptyRange };
  return {
    range: view.doc.lines.rangeOf(span),
    severity: severities.hint,
    code: notStated,
    source: sourceOf('unknown'),
    message: messageOf(hint, language),
    data: dataOfHint(
      notStated,
      lack.doc,
      of ? (of.path ?? '') : lack.path,
      facts.map((fact) => fact.lack.path),
    ),
    ...(how.related && elsewhere ? { relatedInformation: [{ location, message: visible(message) }] } : {}),
  };
}

function messageOf({ facts, of }: Hint, language: Language): string {
  const ids = idsOf(facts.flatMap(({ findings }) => findings));
  const names = firstOf(ids, mostChecks, language);
  const [{ lack }] = facts as [Waiting];
  if (!of || facts.length === 1) {
    const what = visible(language.plain(lack.what));
    return ids.length === 1
      ? language.words`Not stated: ${what}. 1 check waits for it: ${names}.`
      : language.words`Not stated: ${what}. ${ids.length} checks wait for it: ${names}.`;
  }
  const keys = visible(
    firstOf(
      facts.map((fact) => keyIn(of, fact)),
      mostFacts,
      language,
    ),
  );
  const name = visible(of.name);
  return ids.length === 1
    ? language.words`Not stated of ${name}: ${keys}. 1 check waits for them: ${names}.`
    : language.words`Not stated of ${name}: ${keys}. ${ids.length} checks wait for them: ${names}.`;
}

const idsOf = (findings: readonly Finding[]): string[] => [...new Set(findings.map(({ id }) => id))];

const keyIn = ({ path }: Part, { lack }: Waiting): string =>
  path === undefined ? lack.path : lack.path.slice(path.length + 1);

function firstOf(names: readonly string[], most: number, language: Language): string {
  if (names.length <= most) return names.join(', ');
  return language.words`${names.slice(0, most).join(', ')} and ${names.length - most} more`;
}

/** Where the missing fact would stand in its own file: at the map that would hold it. */
function placeFor(lack: Missing): Diagnostic['range'] {
  const start = spanOfMissing(lack)?.start ?? 0;
  return lack.doc.lines.rangeOf({ start, end: start });
}

/** For a hover: the facts of a part file that the hint there names only some of, with the checks that wait for each. */
export function missingAt(view: View, offset: number, { shownFrom, language = english() }: HoverOptions): Block[] {
  const hint = hintsOf(view, shownFrom ?? 'unknown').find(
    ({ of, span }) => of && of.path === undefined && touches(span, offset),
  );
  if (!hint?.of || hint.facts.length === 1) return [];
  const { facts, of } = hint;
  const more = facts.length - mostInHover;
  return [
    paragraph(language.words`Not stated of ${of.name}, what decides most first:`),
    ...facts.slice(0, mostInHover).map(({ lack, findings }) => {
      const names = firstOf(idsOf(findings), mostChecks, language);
      return item(0, code(lack.path), `: ${names}`);
    }),
    ...(more > 0
      ? [paragraph(language.words`… and ${more} more: `, code('fettle missing'), language.word(' lists them all.'))]
      : []),
  ];
}
