// No module keeps state: what is worked out lives in a document, a build or a session, and dies with it.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

const root = join(__dirname, '../..');

interface Source {
  readonly file: string;
  readonly text: string;
  /** The statements of the module itself, each with all that is inside it. */
  readonly statements: readonly string[];
}

/** The formatter puts what belongs to a statement at a margin, or closes it with a bracket at none. */
const statementsOf = (text: string): string[] => text.split(/^(?=[A-Za-z/])/m);

const sources: readonly Source[] = ['server/src', 'client/src'].flatMap((folder) =>
  readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('.ts'))
    .map((path) => {
      const text = readFileSync(join(root, folder, path), 'utf8');
      return { file: `${folder}/${path.replaceAll('\\', '/')}`, text, statements: statementsOf(text) };
    }),
);

/** One prototype a table of fields, made when the table is first read by: it says the same as the table. */
const derived = ['server/src/core/parts/facts.ts'];

function found(of: (source: Source) => readonly string[]): string[] {
  return sources.flatMap((source) => of(source).map((what) => `${source.file}: ${what}`));
}

const change = (name: string): RegExp =>
  new RegExp(
    `(?<![\\w.])${name}(?:\\.(?:set|add|delete|clear|push|pop|shift|unshift|splice|sort|reverse|fill)\\(|` +
      `(?:\\[[^\\]]*\\]|\\.\\w+) (?:\\?\\?|\\|\\||[-+*/])?= )`,
  );

/** Collections and objects of a module that some function of it changes. */
function changed({ statements }: Source): string[] {
  const names = statements.flatMap((text) => {
    const [, name, made] = /^(?:export )?const (\w+)(?:: [^=]+)? = (new \w+|\[|\{|Object\.\w+)/.exec(text) ?? [];
    return name !== undefined && made !== undefined ? [name] : [];
  });
  // What a loop of the module itself fills in while it is loaded is a table, whole before anyone reads it.
  const functions = statements.filter((text) => !text.startsWith('for '));
  return names.filter((name) =>
    functions.some((text) => {
      const itself = new RegExp(`^(?:export )?const ${name}\\b`).test(text);
      return !itself && change(name).test(text);
    }),
  );
}

describe('no module', () => {
  it('has a variable', () => {
    expect(found(({ text }) => text.match(/^(?:export )?(?:let|var) .*/gm) ?? [])).toEqual([]);
  });

  it('holds a cache by object', () => {
    const caches = found(({ text }) => text.match(/^(?:export )?const .*= new Weak(?:Map|Set|Ref)\b.*/gm) ?? []);
    expect(caches.filter((cache) => !derived.some((file) => cache.startsWith(`${file}:`)))).toEqual([]);
  });

  it('changes a collection or an object of its own once it is loaded', () => {
    const states = found(changed);
    expect(states.filter((state) => !derived.some((file) => state.startsWith(`${file}:`)))).toEqual([]);
  });

  it('keeps anything in a class instead of its objects', () => {
    expect(
      found(
        ({ text }) => text.match(/^ {2}(?:(?:private|protected|public) )?static (?!readonly )\w+\b(?!\().*/gm) ?? [],
      ).filter((line) => !line.includes('(')),
    ).toEqual([]);
  });
});

it('the search sees what it is for', () => {
  const text =
    'const kept = new Map<string, number>();\nexport function one(): void {\n  kept.set("a", 1);\n}\n' +
    'const table: Record<string, number> = {};\nfor (const a of []) {\n  table[a] = 1;\n}\n' +
    'const counts = { all: 0 };\nexport const count = (): void => {\n  counts.all += 1;\n};\n';
  expect(changed({ file: '', text, statements: statementsOf(text) })).toEqual(['kept', 'counts']);
});
