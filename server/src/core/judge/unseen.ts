// Fixes that may be made with nobody looking: those that put a slip of the pen right and leave every value as it is
// written. What is promised, measured, bought, weighed or warned of is its writer’s.
import { Doc } from '../parts/doc';
import { applyEdits, type Edit } from '../text';
import type { Node } from '../yaml';
import type { Finding } from './finding';

const ofHouse = 'it would change what the house decided';

/** Sections that settle something, by the kind of file, and what a change there would touch. */
const settled: Partial<Record<Doc['kind'], Readonly<Record<string, string>>>> = {
  build: { expect: 'it stands in what is promised', accept: 'it stands in what was weighed and accepted' },
  house: { grades: ofHouse, margins: ofHouse, known: ofHouse },
};

const ofSafety = 'somebody’s safety hangs on it';
const ofWords = 'the words of a step, a note or a caution are their writer’s';
const ofPurchase = 'it would change what is bought, or how many';
const ofGuess = 'it would put a guess in the place of what is written';

/** Why a fix of a file’s own text is left to someone who looks; undefined where it may be made unseen. */
export function leftBecause(doc: Doc, finding: Finding, edits: readonly Edit[]): string | undefined {
  const { grade, caution, check, subject } = finding;
  if (grade === 'harm' || caution !== undefined || check.area === 'handling') return ofSafety;
  if (/\.(?:caution|note|do)(?:\.|$)/.test(subject)) return ofWords;
  const after = new Doc(doc.name, doc.kind, applyEdits(doc.text, edits));
  const because = settled[doc.kind] ?? {};
  const sections = [subject.split(/[.[]/)[0] ?? '', ...edits.map(({ span }) => sectionAt(after, span.start))];
  const touched = sections.find((section) => Object.hasOwn(because, section));
  if (touched !== undefined) return because[touched];
  // Of a text that cannot be read nobody can tell which of a step’s words it is.
  if (subject === '' && sections.includes('steps')) return ofWords;
  if (withoutBlanks(doc.text) === withoutBlanks(after.text)) return undefined;
  const isParting = finding.id === 'yaml-syntax' || finding.id === 'wrong-kind-of-value';
  if (isParting && withoutMarks(doc.text) === withoutMarks(after.text)) return undefined;
  return meaningChanged(finding.id, wordsOf(doc), wordsOf(after));
}

const withoutBlanks = (text: string): string => text.replace(/\s+/g, '');
/** Without what parts values from one another. */
const withoutMarks = (text: string): string => text.replace(/[\s,[\]"']+/g, '');

/** The section that an offset lies in, as far as one can be read. */
function sectionAt({ parsed: { root } }: Doc, offset: number): string {
  if (root?.type !== 'map') return '';
  return root.entries.findLast(({ keySpan }) => keySpan.start <= offset)?.key ?? '';
}

interface Words {
  readonly keys: readonly string[];
  readonly values: readonly string[];
}

/** Keys and values of a text, each in its order. */
function wordsOf(doc: Doc): Words {
  const words = { keys: [] as string[], values: [] as string[] };
  const waiting: Node[] = doc.parsed.root ? [doc.parsed.root] : [];
  for (let node = waiting.pop(); node; node = waiting.pop()) {
    if (node.type === 'scalar') words.values.push(node.text);
    else if (node.type === 'list') waiting.push(...[...node.items].reverse());
    else {
      for (const { key } of node.entries) words.keys.push(key);
      waiting.push(...node.entries.map(({ value }) => value).reverse());
    }
  }
  return words;
}

function meaningChanged(id: string, before: Words, after: Words): string | undefined {
  if (id === 'unknown-key') return renamed(before, after);
  const isSpelling = id === 'unit-look-alike' || (id === 'wrong-kind-of-value' && isFlagSpelled(before, after));
  if (isSpelling || (id === 'wrong-kind-of-value' && isReshaped(before, after))) return undefined;
  return ofGuess;
}

/** A key in its right spelling over the same value. */
function renamed(before: Words, after: Words): string | undefined {
  if (!isSame(before.values, after.values) || before.keys.length !== after.keys.length) return ofGuess;
  const names = after.keys.filter((key, i) => key !== before.keys[i]);
  return names.some((key) => key === 'use' || key === 'count') ? ofPurchase : undefined;
}

/** One value alone is another: `true` or `false`, for a word that says so. */
const isFlagSpelled = (before: Words, after: Words): boolean =>
  isSame(before.keys, after.keys) &&
  before.values.length === after.values.length &&
  after.values.every((value, i) => value === before.values[i] || value === 'true' || value === 'false');

/** Every value stands where it stood; what came beside them were keys, and are names now. */
function isReshaped(before: Words, after: Words): boolean {
  let kept = 0;
  for (const value of after.values) {
    if (value === before.values[kept]) kept++;
    else if (!before.keys.includes(value)) return false;
  }
  return kept === before.values.length;
}

const isSame = (a: readonly string[], b: readonly string[]): boolean =>
  a.length === b.length && a.every((one, i) => one === b[i]);
