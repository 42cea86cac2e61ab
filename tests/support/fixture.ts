// Fixtures of checks: Markdown with one heading a case, marked YAML under it, and what each fix leads to.
import { readMarks, type Marked } from './marks';

export interface FixtureFile extends Marked {
  readonly name: string;
}
export interface ExpectedFix {
  readonly title: string;
  readonly file: string;
  readonly text: string;
}
export interface Case {
  readonly title: string;
  readonly files: readonly FixtureFile[];
  readonly fixes: readonly ExpectedFix[];
}

export const buildName = 'case.pcbuild.yaml';

/**
 * Reads a fixture. In a case, a fence ` ```yaml ` is the build, ` ```yaml parts/maker/model.part.yaml ` another file;
 * after a line `Fix: title`, a fence is the text that this fix leads to (of the file it names, or the build).
 */
export function readFixture(markdown: string): readonly Case[] {
  const cases: { title: string; files: FixtureFile[]; fixes: ExpectedFix[] }[] = [];
  let fix: string | undefined;
  for (const block of blocksOf(markdown)) {
    const current = cases.at(-1);
    if (block.type === 'heading') cases.push({ title: block.text, files: [], fixes: [] });
    else if (block.type === 'fix') fix = block.text;
    else if (!current) throw new Error('A fence stands before the first case.');
    else if (fix === undefined) current.files.push({ name: block.name, ...readMarks(block.text) });
    else {
      current.fixes.push({ title: fix, file: block.name, text: block.text });
      fix = undefined;
    }
    if (block.type === 'heading') fix = undefined;
  }
  return cases;
}

type Block =
  | { type: 'heading'; text: string }
  | { type: 'fix'; text: string }
  | { type: 'fence'; name: string; text: string };

function* blocksOf(markdown: string): Iterable<Block> {
  const pattern = /^## (.+)$|^Fix: (.+)$|^```yaml(?: (\S+))?\n([\s\S]*?)^```$/gm;
  for (const match of markdown.matchAll(pattern)) {
    if (match[1]) yield { type: 'heading', text: match[1].trim() };
    else if (match[2]) yield { type: 'fix', text: match[2].trim() };
    else yield { type: 'fence', name: match[3] ?? buildName, text: match[4] ?? '' };
  }
}
