// Bundles what runs outside the repository: the server, the VS Code client, the command. Run: node
// server/tools/build.mjs
import { existsSync, readFileSync, utimesSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

export const root = join(dirname(fileURLToPath(import.meta.url)), '../..');

/** Of this package only what reads entities is used; its index would bring in what writes them, too. */
const entities = {
  name: 'entities',
  setup: ({ onResolve, resolve }) =>
    onResolve({ filter: /^entities$/ }, ({ resolveDir, kind }) =>
      resolve('entities/lib/decode.js', { resolveDir, kind }),
    ),
};

/** Where the German words lie: programs for Node read them from there, each the same file. */
const germanFile = 'german.json';
const germanApart = {
  name: 'german-apart',
  setup: ({ onLoad, onResolve }) => {
    onResolve({ filter: new RegExp(`^\\./${germanFile}$`) }, ({ path }) => ({ path, external: true }));
    onLoad({ filter: /[/\\]core[/\\]words[/\\]german\.ts$/ }, () => ({
      contents: `export const german = () => require('./${germanFile}');`,
      loader: 'js',
    }));
  },
};

/** A browser’s worker has no files: whoever starts it hands them over, where the editor speaks German. */
const germanHanded = {
  name: 'german-handed',
  setup: ({ onLoad }) =>
    onLoad({ filter: /[/\\]core[/\\]words[/\\]german\.ts$/ }, () => ({
      contents: 'export const german = () => globalThis.germanWords ?? {};',
      loader: 'js',
    })),
};

const common = {
  bundle: true,
  minify: true,
  platform: 'node',
  target: 'node20',
  format: 'cjs',
  legalComments: 'none',
  logLevel: 'warning',
  absWorkingDir: root,
  plugins: [entities, germanApart],
  // Packages as modules, of which only what is used is kept: less to compile at every start.
  mainFields: ['module', 'main'],
  alias: { yaml: join(dirname(createRequire(import.meta.url).resolve('yaml/package.json')), 'browser/dist/index.js') },
};

/** In a browser’s worker the same code speaks over messages instead of streams. */
const browser = {
  plugins: [entities, germanHanded],
  platform: 'browser',
  target: 'es2022',
  mainFields: ['browser', 'module', 'main'],
  alias: { 'vscode-languageserver/node': 'vscode-languageserver/browser' },
};

const program = { banner: { js: '#!/usr/bin/env node' } };

/** Each bundle with its entry; a bundle whose entry is not there is left out. */
export const bundles = [
  { entry: 'server/src/fettle.ts', out: 'dist/fettle.bundle.js' },
  { entry: 'server/tools/loader.cjs', out: 'dist/fettle.js', more: { ...program, external: ['./fettle.bundle.js'] } },
  { entry: 'server/src/server.ts', out: 'dist/server.js', more: program },
  { entry: 'server/src/api.ts', out: 'dist/api.js' },
  { entry: 'client/src/desktop.ts', out: 'dist/client.js', more: { external: ['vscode'] } },
  { entry: 'server/src/server-worker.ts', out: 'dist/server.worker.js', more: { ...browser, format: 'iife' } },
  { entry: 'client/src/web.ts', out: 'dist/client.web.js', more: { ...browser, external: ['vscode'] } },
  {
    entry: 'client/src/views/panel/sheet-script.ts',
    out: 'dist/sheet-script.js',
    more: { platform: 'browser', target: 'es2022', format: 'iife' },
  },
].filter(({ entry }) => existsSync(join(root, entry)));

/** The options with which esbuild makes a bundle. */
export function optionsOf({ entry, out, more }) {
  return { ...common, ...more, entryPoints: [entry], outfile: out };
}

/** The types of the library in one file, which imports none: the plain shapes, then the functions over them. */
function declarations() {
  const texts = ['server/src/report/plain.ts', 'server/src/library/face.ts'].map((path) =>
    readFileSync(join(root, path), 'utf8')
      .replace(/^(?:\/\/[^\n]*\n)+/, '')
      .replace(/^(?:import|export) type [^;]* from '[^']*';\n/gm, ''),
  );
  return texts.map((text) => text.trim()).join('\n\n') + '\n';
}

/** The German words as `core/words/german.ts` puts them together. */
function germanWords() {
  const [words, fields, text, plain] = ['de', 'de-fields', 'de-text', 'de-plain'].map((name) =>
    JSON.parse(readFileSync(join(root, `server/src/core/words/${name}.json`), 'utf8')),
  );
  return JSON.stringify({ words: { ...words, ...fields, ...text }, plain });
}

/** Builds all bundles. @throws Error of esbuild with the file and line at fault. */
export async function buildAll() {
  const begun = new Date();
  await Promise.all(bundles.map((bundle) => build(optionsOf(bundle))));
  writeFileSync(join(root, 'dist/api.d.ts'), declarations());
  writeFileSync(join(root, 'dist', germanFile), germanWords());
  // Its time tells the setup that everything up to then is built.
  writeFileSync(join(root, 'dist/.built'), '');
  utimesSync(join(root, 'dist/.built'), begun, begun);
  return bundles.map(({ out }) => out);
}

if (process.argv[1] && relative(process.argv[1], fileURLToPath(import.meta.url)) === '') {
  // The generators load this file where nothing may wait at its top.
  void buildAll().catch(() => (process.exitCode = 1));
}
