// The editor's snippets: what each leaves when nothing is filled in says nothing wrong, and states nothing.
import { describe, expect, test } from 'vitest';
import builds from '../../client/snippets/build.json';
import parts from '../../client/snippets/part.json';
import { inspect } from '../../server/src/core/build/inspect';
import { kindNames } from '../../server/src/core/parts/kinds';
import { Doc } from '../../server/src/core/parts/doc';

interface Snippet {
  readonly prefix: string;
  readonly body: readonly string[];
}

/** What stands there once the tabulator was pressed to the end, as editors read the body. */
const left = ({ body }: Snippet, indent = ''): string =>
  body
    .map((line) => indent + line)
    .join('\n')
    .replace(/\$\{\d+\|((?:\\.|[^\\,|])*)[^}]*\|\}|(?<!\\)\$\d+/g, (_, first?: string) => first ?? '')
    .replace(/\\([\\$])/g, '$1');

const problems = (kind: 'build' | 'part', text: string): readonly string[] =>
  inspect(new Doc(`x.${kind}.yaml`, kind, text)).problems.map(({ message }) => message);

/** What stands around a piece of a build. */
const around: Readonly<Record<string, readonly [string, string]>> = {
  build: ['', ''],
  place: ['format: 1\n', ''],
  step: ['steps:\n', '  '],
  caution: ['steps:\n  - do: open case\n', '    '],
  acceptance: ['format: 1\n', ''],
  'accepted finding': ['accept:\n', '  '],
};

describe('a snippet', () => {
  test.each(Object.values(builds) as Snippet[])('$prefix fits into a build', (snippet) => {
    const [before, indent] = around[snippet.prefix]!;
    const text = `${before}${left(snippet, indent)}\n`;
    expect(text).not.toMatch(/\$|\|/);
    expect(problems('build', text)).toEqual([]);
  });

  test.each(Object.values(parts) as Snippet[])('$prefix is a part file', (snippet) => {
    const text = left(snippet);
    expect(problems('part', text)).toEqual([]);
    expect(text).toContain(`\nkind: ${snippet.prefix.replace('part ', '')}\n`);
  });

  test('is there for each kind of part', () => {
    expect(Object.values(parts).map(({ prefix }) => prefix)).toEqual(kindNames.map((kind) => `part ${kind}`));
  });
});
