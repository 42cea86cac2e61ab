// The bundles that run in a browser: they ask for the editor's interface and for nothing of Node.
import { existsSync, readFileSync } from 'node:fs';
import { builtinModules } from 'node:module';
import { join } from 'node:path';
import { runInNewContext } from 'node:vm';
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

interface Message {
  readonly method?: string;
  readonly params?: { readonly diagnostics?: readonly { readonly message: string }[] };
}

/** What the worker says of a build in which a processor does not fit, in an editor of this language. */
function saidIn(locale: string, words: string): Promise<readonly string[]> {
  return new Promise((resolve) => {
    const page = {
      ...{ setTimeout, clearTimeout, console, TextEncoder, TextDecoder, addEventListener: () => undefined },
      onmessage: (_: { readonly data: object }): void => undefined,
      postMessage({ method, params }: Message) {
        if (method === 'textDocument/publishDiagnostics') resolve(params!.diagnostics!.map(({ message }) => message));
      },
    };
    runInNewContext(readFileSync(join(root, 'dist/server.worker.js'), 'utf8') + words, page);
    const tell = (method: string, params: object, id?: number): void =>
      page.onmessage({ data: { jsonrpc: '2.0', ...(id === undefined ? {} : { id }), method, params } });
    tell('initialize', { processId: null, rootUri: null, capabilities: {}, locale }, 1);
    tell('initialized', {});
    const text = 'format: 1\nbuild: Desk\nparts:\n  board: { socket: LGA1851 }\n  processor: { socket: AM5 }\n';
    tell('textDocument/didOpen', {
      textDocument: { uri: 'memfs:/desk.pcbuild.yaml', languageId: 'pcbuild', version: 1, text },
    });
  });
}

it.skipIf(!existsSync(join(root, 'dist/server.worker.js')))(
  'the worker speaks German once handed its words',
  async () => {
    const words = `\nglobalThis.germanWords = ${readFileSync(join(root, 'dist/german.json'), 'utf8')};\n`;
    expect(await saidIn('de', words)).toContain('Der Prozessor passt in AM5; das Mainboard hat LGA1851.');
    expect(await saidIn('de', '')).toContain('The processor fits AM5; the board has LGA1851.');
  },
);
