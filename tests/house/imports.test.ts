// Who may import whom: the table of the house, read from the imports themselves.
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, posix } from 'node:path';
import { describe, expect, it } from 'vitest';

const root = join(__dirname, '../..');

/** What each folder of the core may import from the core; `trade` may only import itself. */
const core: Record<string, readonly string[]> = {
  text: [],
  trade: [],
  yaml: ['text'],
  quantity: ['text'],
  parts: ['text', 'yaml', 'quantity', 'trade'],
  sheets: ['text', 'yaml', 'quantity', 'trade', 'parts', 'machine'],
  manifest: ['text', 'yaml', 'quantity', 'trade', 'parts'],
  machine: ['text', 'yaml', 'quantity', 'trade', 'parts', 'manifest'],
  build: ['text', 'yaml', 'quantity', 'trade', 'parts', 'sheets', 'manifest'],
  figures: ['text', 'yaml', 'quantity', 'trade', 'parts', 'manifest', 'build'],
  guide: ['text', 'yaml', 'quantity', 'trade', 'parts', 'manifest', 'build', 'figures'],
  checks: ['text', 'yaml', 'quantity', 'trade', 'parts', 'manifest', 'build', 'figures', 'guide'],
  words: ['text', 'yaml', 'quantity', 'trade', 'parts', 'manifest', 'build', 'figures'],
  judge: ['text', 'yaml', 'quantity', 'trade', 'parts', 'manifest', 'build', 'figures', 'guide', 'checks'],
};

/** What each folder beside the core may import from the server’s source. */
const around: Record<string, readonly string[]> = {
  host: ['core'],
  features: ['core'],
  report: ['core', 'review'],
  review: ['core'],
  session: ['core', 'host', 'review'],
  language: ['core', 'host', 'session', 'features', 'report', 'review'],
  command: ['core', 'host', 'session', 'features', 'report', 'review'],
  library: ['core', 'host', 'session', 'report', 'review', 'command'],
};

/** Packages, and the one folder that may import each. */
const packages: Record<string, RegExp> = {
  yaml: /^core\/yaml\//,
  'fastest-levenshtein': /^core\/text\//,
  'markdown-it': /^core\/guide\//,
  parse5: /^core\/sheets\//,
  'csv-parse': /^core\/sheets\//,
  commander: /^command\//,
  diff: /^report\//,
  chokidar: /^host\//,
  'd3-sankey': /^report\/sheet\//,
  'vscode-languageserver': /^language\//,
  'vscode-languageserver-textdocument': /^language\//,
};

interface Import {
  readonly file: string;
  readonly from: string;
}

function importsBelow(folder: string): Import[] {
  const files = readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' }).filter((path) =>
    path.endsWith('.ts'),
  );
  return files.flatMap((path) => {
    const file = path.replaceAll('\\', '/');
    const text = readFileSync(join(root, folder, path), 'utf8');
    return [
      ...text.matchAll(/^(?:import|export)\s[^'"]*?from\s+'([^']+)'|^import\s+'([^']+)'|\bimport\('([^']+)'\)/gm),
    ].map((match) => ({ file, from: (match[1] ?? match[2] ?? match[3])! }));
  });
}

const all = importsBelow('server/src');
const inside = all
  .filter(({ from }) => from.startsWith('.'))
  .map(({ file, from }) => ({ file, to: `${posix.join(dirname(file), from)}/` }));

const coreFolder = (path: string): string | undefined => /^core\/([^/]+)\//.exec(path)?.[1];
const topFolder = (path: string): string | undefined => /^([^/]+)\//.exec(path)?.[1];

describe('imports', () => {
  it('go down the list of the core, never up', () => {
    const wrong = inside.filter(({ file, to }) => {
      const [a, b] = [coreFolder(file), coreFolder(to)];
      return a !== undefined && (b === undefined || (a !== b && !core[a]?.includes(b)));
    });
    expect(wrong).toEqual([]);
  });

  it('never lead from one check to another', () => {
    const checkFile = /^core\/checks\/[a-z]+\/[a-z0-9.]+-[a-z0-9.-]+$/;
    const isCheck = (path: string): boolean => checkFile.test(path) && !path.endsWith('-kit');
    expect(inside.filter(({ file, to }) => isCheck(file.replace(/\.ts$/, '')) && isCheck(to.slice(0, -1)))).toEqual([]);
  });

  it('keep what stands around the core apart', () => {
    const wrong = inside.filter(({ file, to }) => {
      const [a, b] = [topFolder(file), topFolder(to)];
      return a !== undefined && a !== 'core' && a !== b && b !== undefined && !around[a]?.includes(b);
    });
    expect(wrong).toEqual([]);
  });

  it('bring each package in at one place only', () => {
    const wrong = all.filter(({ file, from }) => {
      const name = from.startsWith('@') ? from.split('/').slice(0, 2).join('/') : from.split('/')[0]!;
      return Object.hasOwn(packages, name) && !packages[name]!.test(file);
    });
    expect(wrong).toEqual([]);
  });

  it('give the core no package but those that read texts', () => {
    const outside = all
      .filter(({ file, from }) => file.startsWith('core/') && !from.startsWith('.'))
      .map(({ from }) => from);
    expect([...new Set(outside)].sort()).toEqual([
      'csv-parse/browser/esm/sync',
      'fastest-levenshtein',
      'markdown-it/lib/parser_block.mjs',
      'parse5',
      'yaml',
    ]);
  });

  it('reach a platform only from the host and the entries', () => {
    const wrong = all.filter(
      ({ file, from }) => from.startsWith('node:') && !file.startsWith('host/') && file.includes('/'),
    );
    expect(wrong).toEqual([]);
  });

  it('bring in a file system of this machine only at the entries', () => {
    const wrong = inside.filter(
      ({ file, to }) => /^host\/(node|output|memory)/.test(to) && file.includes('/') && !file.startsWith('host/'),
    );
    // What a run is given to write to is named by its type; texts in memory are no file system of this machine.
    expect(wrong.filter(({ to }) => to !== 'host/memory/')).toEqual([{ file: 'command/world.ts', to: 'host/output/' }]);
  });

  it('leave reading and listing to the session', () => {
    const wrong = readdirSync(join(root, 'server/src'), { recursive: true, encoding: 'utf8' })
      .map((path) => path.replaceAll('\\', '/'))
      .filter((path) => path.endsWith('.ts') && !/^(session|host)\//.test(path))
      .filter((path) => /\bhost\.(read|list)\(/.test(readFileSync(join(root, 'server/src', path), 'utf8')));
    expect(wrong).toEqual([]);
  });
});
