// Lines of a data sheet that were pasted into a part file: where they stand, and the file with their facts instead.
import { isKind, kinds, type Kind } from '../parts/kinds';
import { visible, type Span } from '../text';
import { parse } from '../yaml';
import { addFacts } from './add';
import { drawFrom, type Draft } from './index';
import { doubtLines } from './part-text';

export interface Pasted {
  /** From the first line that is no key of ours to the last. */
  readonly span: Span;
  /** What is to stand there instead; undefined where the lines leave open which part, or which kind, is meant. */
  readonly instead?: string;
  readonly facts: number;
}

/** Fewer facts than this are no sheet. */
const leastFacts = 2;
const longest = 100_000;

/**
 * Of a text that is no part file as it stands: the lines that read as a data sheet, below keys of ours or alone.
 * Undefined where they do not. Blank lines and comments before them stay.
 */
export function pastedLines(text: string): Pasted | undefined {
  if (text.length > longest) return undefined;
  const eol = text.includes('\r\n') ? '\r\n' : '\n';
  const lines = text.split(/(?<=\n)/);
  const { head, kind } = headOf(lines);
  const start = lines.slice(0, head).join('').length;
  const rest = text.slice(start);
  if (isOurOwn(lines.slice(head), kind)) return undefined;
  const end = start + rest.trimEnd().length;
  const drawn = drawFrom(
    { name: 'pasted', text: rest },
    {
      isWhole: true,
      ...(kind ? { kind } : {}),
    },
  );
  if (!('draft' in drawn)) return undefined;
  const { draft } = drawn;
  if (draft.facts.length < leastFacts) return undefined;
  const span = { start, end };
  if (draft.variants.length > 0) return { span, facts: draft.facts.length };
  return { span, facts: draft.facts.length, instead: insteadOf(text.slice(0, start), draft, kind, eol) };
}

/** Whether lines are a part file with a slip in it: as many of our keys as other lines, or what only YAML has. */
function isOurOwn(lines: readonly string[], kind: Kind | undefined): boolean {
  const tables = kind ? [kinds[kind]] : Object.values(kinds);
  const said = lines.filter((line) => !/^\s*(?:#|$)/.test(line));
  if (said.some((line) => /^\s*<<:|:\s[&*!]\S/.test(line))) return true;
  const keys = said.map((line) => /^\s*(?:-\s)?([a-z0-9][a-z0-9-]*):(?:\s|$)/.exec(line)?.[1]);
  const ours = keys.filter((key) => key !== undefined && tables.some((table) => Object.hasOwn(table, key)));
  return ours.length >= said.length / 2;
}

/** How many lines at the top are ours: keys of the kind’s table that parse by themselves; and the kind they name. */
function headOf(lines: readonly string[]): { readonly head: number; readonly kind?: Kind } {
  const named = lines.map((line) => /^kind: *([a-z]+)\s*(?:#.*)?$/.exec(line)?.[1]).find(Boolean);
  const kind = named !== undefined && isKind(named) ? named : undefined;
  let head = 0;
  let asked = 0;
  for (let count = 1; count <= lines.length && asked < 60; count++) {
    const line = lines[count - 1]!;
    if (/^\s*(?:#|$)/.test(line)) {
      if (head === count - 1) head = count;
      continue;
    }
    asked++;
    const { root, problems } = parse(lines.slice(0, count).join(''));
    const isOurs =
      root?.type === 'map' && root.entries.every(({ key }) => Object.hasOwn(kind ? kinds[kind] : kinds.board, key));
    if (problems.length > 0 || !isOurs) break;
    head = count;
  }
  return kind ? { head, kind } : { head };
}

/** The facts that the head lacks; what was not read stays as comments, so that no word is lost. */
function insteadOf(head: string, draft: Draft, kind: Kind | undefined, eol: string): string {
  const begun = kind === undefined ? `${head}kind: ${draft.kind}${eol}` : head;
  // Numbers of lines would be those of what is about to go.
  const facts = draft.facts.map(({ line: _line, ...fact }) => fact);
  const { text } = addFacts(begun, { ...draft, facts });
  const rest = [
    ...doubtLines(draft),
    ...draft.unread.map(({ text: said }) => `# ${visible(said.replace(/\s+/g, ' '))}`),
  ];
  const whole = text + (rest.length > 0 ? rest.map((line) => line + eol).join('') : '');
  return whole.slice(head.length).trimEnd();
}
