// Marked text: carets in comment lines under the text they speak of, and what is expected there.
import { Lines, type Span } from '../../server/src/core/text';

export interface Mark {
  readonly span: Span;
  readonly verdict: 'holds' | 'broken' | 'unknown' | 'usual';
  readonly words: string;
  readonly grade?: string;
}
export interface Marked {
  readonly text: string;
  readonly marks: readonly Mark[];
}

const markLine = /^(\s*)#(\s*)(\^+)(?:\s+(.*))?$/;

/**
 * Takes the mark lines out of a text. `#   ^^^^ broken: words` marks the columns of the line above it;
 * a `#` right before the carets counts as one, so that column 0 can be marked.
 */
export function readMarks(marked: string): Marked {
  const kept: string[] = [];
  const found: { line: number; from: number; to: number; note: string }[] = [];
  for (const line of marked.split('\n')) {
    const match = markLine.exec(line);
    if (!match) {
      kept.push(line);
      continue;
    }
    const [, indent = '', gap = '', carets = '', note = ''] = match;
    const from = gap === '' ? indent.length : indent.length + 1 + gap.length;
    found.push({ line: kept.length - 1, from, to: indent.length + 1 + gap.length + carets.length, note });
  }
  const text = kept.join('\n');
  const lines = new Lines(text);
  return {
    text,
    marks: found.map(({ line, from, to, note }) => ({ span: spanOf(lines, line, from, to), ...readNote(note) })),
  };
}

function spanOf(lines: Lines, line: number, from: number, to: number): Span {
  const start = lines.lineSpan(line).start;
  return { start: start + from, end: start + to };
}

/**
 * `holds`, `broken`, `broken (harm): message`, `unknown: names`, `usual: what is taken for granted`. Carets alone mean
 * broken, whatever is said.
 */
function readNote(note: string): Pick<Mark, 'verdict' | 'words' | 'grade'> {
  const match = /^(holds|broken|unknown|usual)(?:\s+\((\w+)\))?(?::\s+(.*))?$/.exec(note.trim());
  if (!match) {
    if (note.trim() !== '') throw new Error(`A mark says "${note}"; it is to say holds, broken, unknown or usual.`);
    return { verdict: 'broken', words: '' };
  }
  return { verdict: match[1] as Mark['verdict'], words: match[3] ?? '', ...(match[2] ? { grade: match[2] } : {}) };
}
