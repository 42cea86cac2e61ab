// The front matter of a guide: how far it reaches, and the build that it names.
import type { Edit, Span } from '../text';
import { parse, setValue, type Parsed, type ScalarNode } from '../yaml';

/** How many of a text’s lines the front matter takes, its rules included; 0 where there is none. */
export function headOf(lines: readonly string[]): number {
  if (!/^\uFEFF?---[ \t]*$/.test(lines[0] ?? '')) return 0;
  return lines.findIndex((line, i) => i > 0 && /^(?:---|\.\.\.)[ \t]*$/.test(line)) + 1;
}

/** A build by its path from the guide’s own folder. */
export interface NamedBuild {
  readonly path: string;
  readonly span: Span;
  /** The edits that name it by another path; undefined where that would not be safe. */
  readonly renamed: (path: string) => readonly Edit[] | undefined;
}

/** The build that front matter names; `span`: the front matter’s own lines. */
export function buildIn(text: string, { start, end }: Span): NamedBuild | undefined {
  const parsed = parse(text.slice(start, end));
  const value = buildNode(parsed);
  if (!value) return undefined;
  const inGuide = (span: Span): Span => ({ start: start + span.start, end: start + span.end });
  return {
    path: value.text,
    span: inGuide(value.span),
    renamed: (path) => setValue(parsed, value, path)?.map((edit) => ({ ...edit, span: inGuide(edit.span) })),
  };
}

function buildNode({ root }: Parsed): ScalarNode | undefined {
  const value = root?.type === 'map' ? root.get('build')?.value : undefined;
  return value?.type === 'scalar' && value.text !== '' ? value : undefined;
}
