// A draft as the text of a part file: each fact with the sheet’s own words behind it, doubt in comments below.
import type { Field } from '../parts/field';
import { kinds, type Kind } from '../parts/kinds';
import { visible } from '../text';
import { printFlow, printScalar } from '../yaml';
import type { Draft, Drafted } from './draft';

export interface Written {
  /** The day of the reading, as year-month-day. */
  readonly today: string;
  /** The document’s title. */
  readonly title: string;
}

const longestSaid = 90;
const column = 34;

/** `line 12: Card length: 285 mm`, in one line and without what nobody sees. */
export function saidOf({ line, said, file }: Drafted): string {
  const text = visible(said.replace(/\s+/g, ' '));
  const cut = [...text].length > longestSaid ? `${[...text].slice(0, longestSaid).join('')}…` : text;
  const place = [file === undefined ? '' : visible(file), line === undefined ? '' : `line ${line}`]
    .filter(Boolean)
    .join(', ');
  return place === '' ? cut : `${place}: ${cut}`;
}

/** The field at a path of a kind; undefined for a group’s own keys. */
function fieldAt(kind: Kind, path: readonly string[]): Field | undefined {
  let at: Field | undefined = { type: 'group', fields: kinds[kind], what: '', example: '' };
  for (const key of path) {
    if (at?.type === 'group') at = (at.fields as Record<string, Field>)[key];
    else if (at?.type === 'named' || at?.type === 'list') at = at.of as Field;
    else return undefined;
  }
  return at;
}

/** A value as a part file writes it: text that looks like a number is quoted only where text is meant. */
export function shownValue(kind: Kind, { path, value }: Drafted): string {
  const field = fieldAt(kind, path);
  if (typeof value !== 'string') {
    const isText = field?.type !== 'list' || field.of.type === 'text';
    return isText ? printFlow(value) : `[${value.map((one) => bare(one)).join(', ')}]`;
  }
  if (value === '{}') return value;
  return field?.type === 'text' || field?.type === 'version' ? printScalar(value) : bare(value);
}

const bare = (text: string): string => (/^(?:\d{1,9}|true|false|\d\.\d{1,2})$/.test(text) ? text : printScalar(text));

interface Branch {
  readonly below: Map<string, Branch>;
  fact?: Drafted;
}

/** Facts as a tree of keys, in the order of the kind’s own table. */
function treeOf(facts: readonly Drafted[], table: Readonly<Record<string, unknown>>): Branch {
  const root: Branch = { below: new Map() };
  const order = Object.keys(table);
  const placed = facts.toSorted((a, b) => order.indexOf(a.path[0]!) - order.indexOf(b.path[0]!));
  for (const fact of placed) {
    let at = root;
    for (const key of fact.path) {
      const next: Branch = at.below.get(key) ?? { below: new Map() };
      at.below.set(key, next);
      at = next;
    }
    at.fact = fact;
  }
  return root;
}

const commented = (text: string, said: string): string => `${text.padEnd(column)}  # ${said}`;

/** The lines of a branch; one below a list stands with a dash. */
function linesOf(kind: Kind, branch: Branch, indent: string, isList = false): string[] {
  return [...branch.below].flatMap(([key, inner]) => {
    const head = isList ? `${indent.slice(2)}- ` : `${indent}${printScalar(key)}:`;
    if (inner.fact && inner.below.size === 0)
      return [commented(`${head} ${shownValue(kind, inner.fact)}`, saidOf(inner.fact))];
    const isItems = [...inner.below.keys()].every((one) => /^\d+$/.test(one));
    if (isList) {
      const [first = '', ...rest] = linesOf(kind, inner, indent);
      return [head + first.trimStart(), ...rest];
    }
    return [head, ...linesOf(kind, inner, `${indent}${isItems ? '    ' : '  '}`, isItems)];
  });
}

/** The lines for facts alone, from the left edge. */
export const factLines = (facts: readonly Drafted[], draft: Draft): string[] =>
  linesOf(draft.kind, treeOf(facts, kinds[draft.kind] as Readonly<Record<string, Field>>), '');

const pathOf = ({ path }: Drafted): string => path.map((key) => (/^\d+$/.test(key) ? `[${key}]` : key)).join('.');

/** What was read doubtfully, and what two lines disagree on. */
export function doubtLines({ kind, perhaps, disagreeing }: Draft): string[] {
  return [
    ...perhaps.map((one) => `# perhaps: ${pathOf(one)}: ${shownValue(kind, one)}  (${saidOf(one)})`),
    ...disagreeing.map(
      (all) =>
        `# ${pathOf(all[0]!)}: the lines disagree: ` +
        all.map((one) => `${shownValue(kind, one)} (${saidOf(one)})`).join('; '),
    ),
  ];
}

const HEAD = ['maker', 'model'];

/** Whether a thing of a board is called by a number that the sheet’s own words do not hold. */
const isNumbered = ({ path: [root = '', name = ''], said }: Drafted): boolean =>
  ['slots', 'ports', 'headers'].includes(root) && /_\d+$/.test(name) && !said.includes(name);

/** The whole file. */
export function partText(draft: Draft, { today, title }: Written): string {
  const isHead = ({ path }: Drafted): boolean => path.length === 1 && HEAD.includes(path[0]!);
  const named = HEAD.flatMap((key) => draft.facts.filter(({ path }) => path.join() === key));
  const missing = HEAD.filter((key) => !named.some(({ path }) => path.join() === key));
  const doubts = doubtLines(draft);
  const lines = [
    '# Drafted from a data sheet: behind each fact stands where it was read. Hold them against the sheet.',
    ...(draft.facts.some(isNumbered)
      ? ['# The sheet does not name every slot, port and header: those are numbered here in its order.']
      : []),
    `kind: ${draft.kind}`,
    ...named.map((fact) => commented(`${fact.path[0]}: ${shownValue(draft.kind, fact)}`, saidOf(fact))),
    ...(missing.length > 0 ? [`# ${missing.join(' and ')}: not read`] : []),
    'source:',
    `  title: ${printScalar(visible(title))}`,
    `  read: ${today}`,
    '',
    ...factLines(
      draft.facts.filter((fact) => !isHead(fact)),
      draft,
    ),
    ...(doubts.length > 0 ? ['', ...doubts] : []),
  ];
  return `${lines.join('\n')}\n`;
}
