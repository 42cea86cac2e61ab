// A part file whose lines are those of a data sheet, told as one thing that one edit mends.
import type { Doc } from '../parts/doc';
import type { Table } from '../parts/field';
import { pastedLines } from '../sheets/pasted';
import type { TextProblem } from './text-problem';
import { tableOf } from './tables';

/** So many keys that a sheet would print, and no table knows, are no slips. */
const leastLabels = 3;

/** Undefined for a file that is keys with values, and for one whose lines read as nothing. */
export function pastedSheet(doc: Doc): readonly TextProblem[] | undefined {
  const { root, problems } = doc.parsed;
  if (doc.kind !== 'part' || doc.text.trim() === '') return undefined;
  if (root?.type === 'map' && problems.length === 0) {
    const table = tableOf(doc);
    if (root.entries.filter(({ key }) => isLabelLike(key, table)).length < leastLabels) return undefined;
  }
  const pasted = pastedLines(doc.text);
  if (!pasted) return undefined;
  const { span, instead } = pasted;
  const problem: TextProblem = {
    code: 'sheet-pasted',
    message: 'These lines read like a data sheet, and are no keys with values yet.',
    span,
    path: '',
    mends: instead === undefined ? [] : [{ title: 'Read these lines as facts', edits: [{ span, text: instead }] }],
  };
  return [problem];
}

const isLabelLike = (key: string, table: Table | undefined): boolean =>
  /^\p{Lu}|\s/u.test(key) && !Object.hasOwn(table ?? {}, key);
