// The bundles that run in a browser: they ask for the editor's interface and for nothing of Node.
import { existsSync, readFileSync } from 'node:fs';
import { builtinModules } from 'node:module';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

const root = join(__dirname, '../..');

describe.each([
  ['dist/client.web.js', ['vscode']],
  ['dist/server.worker.js', []],
])('%s', (path, asked) => {
  it.skipIf(!existsSync(join(root, path)))('asks for no module of Node', () => {
    const text = readFileSync(join(root, path), 'utf8');
    const names = new Set([...text.matchAll(/\brequire\(["'`]([^"'`]+)["'`]\)/g)].map(([, name]) => name!));
    expect([...names]).toEqual(asked);
    const quoted = builtinModules.filter((name) =>
      new RegExp(`(?:import\\(|from ?)["'](?:node:)?${name}["']`).test(text),
    );
    expect(quoted).toEqual([]);
    expect(text).not.toMatch(/["'`]node:[a-z]/);
  });
});
