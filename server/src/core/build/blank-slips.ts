// A blank that is missing behind a colon or a dash: YAML reads a word where a name and a value were meant.
import { quoted } from '../text';
import { lineWithoutBlank, type Entry, type Node, type Problem } from '../yaml';
import type { TextProblem } from './text-problem';

type Slip = Pick<TextProblem, 'message' | 'mends'>;

/** What mends a problem of YAML that has one reading. */
export const writtenAsMeant = (meant: Problem['meant']): TextProblem['mends'] =>
  meant ? [{ title: `Write ${quoted(meant.text)}`, edits: [meant.edit] }] : [];

/** The key of an item whose dash it is written against: `-use: maker/model`. */
export function dashWithoutBlank({ key, keySpan }: Entry): Slip | undefined {
  if (!/^-\w/.test(key)) return undefined;
  const text = `- ${key.slice(1)}:`;
  const at = keySpan.start + 1;
  const edit = { span: { start: at, end: at }, text: ' ' };
  return {
    message: `A space is missing after the dash; write ${quoted(text)}.`,
    mends: writtenAsMeant({ text, edit }),
  };
}

/** A value that is to be keys with values, and whose only one is written against its colon. */
export function colonWithoutBlank(node: Node, text: string): Slip | undefined {
  const fault = node.type === 'scalar' && node.style === 'plain' ? lineWithoutBlank(node.span, text) : undefined;
  return fault && { message: fault.message, mends: writtenAsMeant(fault.meant) };
}
