// A changed text as a unified diff, as patch tools read it; what cannot be seen in a line is written out.
import { visible } from '../core/text';

export interface Unified {
  readonly text: string;
  /** Lines hold characters written out as escapes, so that the diff is to be read and not to be applied. */
  readonly isEscaped: boolean;
}

/** The diff of one file; `path` as people see it, with `/`. */
export async function unifiedDiff(path: string, before: string, after: string): Promise<Unified> {
  // Loaded only where a diff is asked for: every other run starts without it.
  const { createTwoFilesPatch } = await import('diff');
  const name = visible(path);
  const patch = createTwoFilesPatch(`a/${name}`, `b/${name}`, before, after, undefined, undefined, { context: 3 });
  // The library begins with a line of signs that no patch tool needs.
  const lines = patch.slice(patch.indexOf('--- ')).split('\n');
  const shown = lines.map(shownLine);
  return { text: shown.join('\n'), isEscaped: shown.some((line, i) => line !== lines[i]) };
}

/** Tabs, and the mark of a line end, stand as they are. */
function shownLine(line: string): string {
  const [, body, end] = /^([^]*?)(\r?)$/.exec(line)!;
  return body!.split('\t').map(visible).join('\t') + end!;
}
