// What a fix may and may not do to a text, worked out apart from the code that makes and proves fixes.
import { Lexer, visit, parseDocument, isPair, isScalar, isAlias, isNode } from 'yaml';
import { grades } from '../../../server/src/core/manifest/house-file';
import type { Finding } from '../../../server/src/core/judge/finding';
import type { Edit, Span } from '../../../server/src/core/text';
import { parse, type Node } from '../../../server/src/core/yaml';

/** Makes edits one after the other in the order given, each moved by those made before it. */
export function applyInTurn(text: string, edits: readonly Edit[]): string {
  const made: { at: number; by: number }[] = [];
  for (const { span, text: put } of edits) {
    const shift = made.reduce((sum, { at, by }) => (at <= span.start ? sum + by : sum), 0);
    text = text.slice(0, span.start + shift) + put + text.slice(span.end + shift);
    made.push({ at: span.end, by: put.length - (span.end - span.start) });
  }
  return text;
}

export const commentsIn = (text: string): string[] => {
  const plain = text.replace(/^\ufeff/, '').replace(/\r\n?/g, '\n');
  return [...new Lexer().lex(plain)].filter((token) => token.startsWith('#')).map((token) => token.trim());
};

/** The blank behind a colon that has none: it stands in text that could not be read, and mends it. */
export const isMissingBlank = ({ span, text: put }: Edit, text: string): boolean =>
  put === ' ' && span.start === span.end && text[span.start - 1] === ':';

/** A step on the way to a leaf: a key with its place, or an item of a list with the list's. */
interface Step {
  readonly word: string;
  readonly span: Span;
}
interface Leaf {
  readonly value: string;
  readonly span: Span;
  readonly steps: readonly Step[];
}

/** Every scalar and every empty collection of a text, in order; those that a merge repeats are left out. */
function leaves(text: string): Leaf[] {
  const found: Leaf[] = [];
  const visitNode = (node: Node, steps: readonly Step[]): void => {
    const empty = node.type === 'list' ? node.items.length === 0 : node.type === 'map' && node.entries.length === 0;
    if (node.type === 'scalar' || empty)
      found.push({ value: node.type === 'scalar' ? node.text : node.type, span: node.span, steps });
    if (node.type === 'list')
      node.items.forEach((item, i) => visitNode(item, [...steps, { word: String(i), span: node.span }]));
    if (node.type === 'map')
      for (const entry of node.entries)
        if (!entry.merged) visitNode(entry.value, [...steps, { word: entry.key, span: entry.keySpan }]);
  };
  const { root } = parse(text);
  if (root) visitNode(root, []);
  return found;
}

const meets = (a: Span, b: Span): boolean => a.start <= b.end && b.start <= a.end;

/** Where a stretch of the old text lies in the new one, given edits that do not touch it. */
function moved(span: Span, edits: readonly Edit[]): Span {
  const by = edits
    .filter((edit) => edit.span.end <= span.start)
    .reduce((sum, edit) => sum + edit.text.length - (edit.span.end - edit.span.start), 0);
  return { start: span.start + by, end: span.end + by };
}

/** Faults of a change: anything that changed though no edit stands there, comments lost, other line ends. */
export function strayChanges(before: string, edits: readonly Edit[], after: string): string[] {
  const isTouched = (span: Span): boolean => edits.some((edit) => meets(edit.span, span));
  const now = new Map(leaves(after).map((leaf) => [`${leaf.span.start}-${leaf.span.end}`, leaf]));
  const faults: string[] = [];
  for (const leaf of leaves(before)) {
    // An empty value has no text of its own: what is put beside it may fill it.
    if (isTouched(leaf.span)) continue;
    // What was read as a key of nothing, `model:x`, is a key and its value.
    const { span: key } = leaf.steps.at(-1) ?? leaf;
    if (leaf.value === '' && edits.some((edit) => isMissingBlank(edit, before) && meets(edit.span, key))) continue;
    const place = moved(leaf.span, edits);
    const is = now.get(`${place.start}-${place.end}`);
    const path = leaf.steps.map(({ word }) => word).join('/');
    if (is?.value !== leaf.value)
      faults.push(`${path} was ${JSON.stringify(leaf.value)}, is ${JSON.stringify(is?.value)}`);
    else if (
      is.steps.length !== leaf.steps.length ||
      is.steps.some(({ word }, i) => word !== leaf.steps[i]!.word && !isTouched(leaf.steps[i]!.span))
    )
      faults.push(`${path} is now ${is.steps.map(({ word }) => word).join('/')}`);
  }
  return [...faults, ...outerFaults(before, edits, after)];
}

export const moreComments = 'there are more comments than before';

function outerFaults(before: string, edits: readonly Edit[], after: string): string[] {
  const faults: string[] = [];
  const gone = new Set(edits.flatMap(({ span }) => commentsOnLines(before, span)));
  const comments = commentsIn(after);
  for (const comment of commentsIn(before))
    if (!comments.includes(comment) && !gone.has(comment)) faults.push(`the comment ${comment} is lost`);
  if (comments.length > commentsIn(before).length) faults.push(moreComments);
  if (before.startsWith('\ufeff') !== after.startsWith('\ufeff')) faults.push('the byte order mark is not as it was');
  if (/[\r\n]$/.test(before) !== /[\r\n]$/.test(after) && before !== '')
    faults.push('the last line end is not as it was');
  const ends = (text: string): Set<string> => new Set(text.match(/\r\n|\r|\n/g));
  for (const end of ends(after))
    if (!ends(before).has(end) && ends(before).size > 0) faults.push(`a line end ${JSON.stringify(end)} has come`);
  return faults;
}

/** Comments that go with what is cut: those on the lines of a cut of whole lines. */
function commentsOnLines(text: string, span: Span): string[] {
  const cut = text.slice(span.start, span.end);
  return /[\r\n]/.test(cut) ? commentsIn(cut) : [];
}

/** How many findings of each place, grade and id there are. */
function counted(findings: readonly Finding[]): Map<string, number> {
  const counts = new Map<string, number>();
  for (const { id, grade, subject } of findings)
    counts.set(`${id} at ${subject} (${grade})`, (counts.get(`${id} at ${subject} (${grade})`) ?? 0) + 1);
  return counts;
}

/** Findings that are new and of a grade or a worse one. */
export function worseOnes(before: readonly Finding[], after: readonly Finding[], grade: Finding['grade']): string[] {
  const had = counted(before);
  const bad = new Set(grades.slice(0, grades.indexOf(grade) + 1));
  return [...counted(after.filter((finding) => bad.has(finding.grade)))]
    .filter(([key, count]) => count > (had.get(key) ?? 0))
    .map(([key]) => key);
}

/**
 * Stretches of a text that can mean two things: anchors, aliases, tags, merges, what stands under a key that is there
 * twice, each with all they hold.
 */
export function doubtful(text: string): Span[] {
  const document = parseDocument(text, { uniqueKeys: false, logLevel: 'silent', strict: false });
  const spans: Span[] = document.errors.map(({ pos }) => ({ start: pos[0], end: pos[1] }));
  const add = (node: unknown): void => {
    if (isNode(node) && node.range) spans.push({ start: node.range[0], end: Math.max(node.range[0], node.range[1]) });
  };
  visit(document, {
    Node(_, node) {
      if (isAlias(node) || (node as { anchor?: string }).anchor || node.tag) add(node);
    },
    Map(_, map) {
      const keys = map.items.map(({ key }) => (isScalar(key) ? String(key.value) : undefined));
      map.items.forEach((item) => {
        if (isScalar(item.key) && item.key.value === '<<') {
          add(item.key);
          add(item.value);
        }
      });
      map.items.forEach((item, i) => {
        if (isPair(item) && keys.some((key, j) => j !== i && key === keys[i])) add(item.value);
      });
    },
  });
  return spans;
}

/** Whether an edit changes something inside a stretch; touching it at its end is beside it. */
export const isInside = ({ span }: Edit, { start, end }: Span): boolean =>
  (span.start < end && span.end > start) || (span.start === span.end && span.start > start && span.start < end);
