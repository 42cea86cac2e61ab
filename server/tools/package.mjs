// Packs the VS Code extension: builds everything, lays the extension out in dist/extension, writes dist/fettle.vsix.
// Run: npm run package
import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { buildAll, root } from './build.mjs';

const mostBytes = 2_400_000;
const stage = join(root, 'dist/extension');
const vsix = join(root, 'dist/fettle.vsix');
const vsce = join(dirname(createRequire(import.meta.url).resolve('@vscode/vsce/package.json')), 'vsce');

/** What is copied as it is: from where in the repository, to where in the extension. */
const copied = {
  LICENSE: 'LICENSE',
  'CHANGELOG.md': 'CHANGELOG.md',
  'THIRD-PARTY-NOTICES.md': 'THIRD-PARTY-NOTICES.md',
  'client/package.nls.json': 'package.nls.json',
  'client/package.nls.de.json': 'package.nls.de.json',
  'client/icon.png': 'icon.png',
  'client/language-configuration.json': 'language-configuration.json',
  'client/fettle.tmLanguage.json': 'fettle.tmLanguage.json',
  'client/guides.tmLanguage.json': 'guides.tmLanguage.json',
  'client/l10n': 'l10n',
  'client/icons': 'icons',
  'client/snippets': 'snippets',
  'client/walkthrough': 'walkthrough',
  schemas: 'schemas',
  samples: 'samples',
  'dist/client.js': 'dist/client.js',
  'dist/client.web.js': 'dist/client.web.js',
  'dist/server.js': 'dist/server.js',
  'dist/german.json': 'dist/german.json',
  'dist/server.worker.js': 'dist/server.worker.js',
  'dist/sheet-script.js': 'dist/sheet-script.js',
};

/** The extension’s manifest; what both packages say, the npm package’s says for both. */
function manifest() {
  const { version, license, homepage, repository, bugs } = readJson('package.json');
  return { ...readJson('client/package.json'), version, license, homepage, repository, bugs };
}

function readJson(path) {
  return JSON.parse(readFileSync(join(root, path), 'utf8'));
}

/** The details page with its pictures in it: an editor shows none that lies beside the page. */
function detailsPage() {
  const text = readFileSync(join(root, 'client/README.md'), 'utf8');
  return text.replace(/\]\((media\/[\w-]+\.png)\)/g, (_, path) => {
    const picture = readFileSync(join(root, 'client', path)).toString('base64');
    return `](data:image/png;base64,${picture})`;
  });
}

function layOut() {
  rmSync(stage, { recursive: true, force: true });
  mkdirSync(join(stage, 'dist'), { recursive: true });
  for (const [from, to] of Object.entries(copied)) cpSync(join(root, from), join(stage, to), { recursive: true });
  writeFileSync(join(stage, 'package.json'), `${JSON.stringify(manifest(), undefined, 2)}\n`);
  writeFileSync(join(stage, 'README.md'), detailsPage());
  // All that is laid out is packed; the packer asks for a file that says so.
  writeFileSync(join(stage, '.vscodeignore'), '');
}

await buildAll();
layOut();
const words = ['package', '--no-dependencies', '--no-rewrite-relative-links', '--out', vsix];
const { status } = spawnSync(process.execPath, [vsce, ...words], { cwd: stage, stdio: 'inherit' });
if (status !== 0) process.exit(status ?? 1);
const { size } = statSync(vsix);
if (size > mostBytes) {
  process.stderr.write(`${vsix} holds ${size} bytes; more than ${mostBytes} are too many.\n`);
  process.exitCode = 1;
}
