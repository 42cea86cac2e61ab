// Opens a window of the workbench without any machine behind it: folder, driver and extension come over HTTP.
import { build } from 'esbuild';
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createServer, type IncomingMessage } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join, normalize } from 'node:path';
import { fileURLToPath } from 'node:url';
import { scenario } from '../support/scenario';
import type { Browser } from '../workbench/page';
import type { Workbench } from '../workbench/server';

/** What was wrong with each step; nothing where it went well. */
export type WebResults = Readonly<Record<string, string>>;

const LIMIT_MS = 60_000;

/** Runs the steps on the files of a folder, which are read into memory. */
export async function runInBrowser(workbench: Workbench, browser: Browser, workspace: string): Promise<WebResults> {
  const folder = join(workbench.scratch, 'web');
  const installed = readdirSync(join(workbench.scratch, 'extensions')).find((name) => name.startsWith('fettle.'))!;
  const folders = { driver: folder, extension: join(workbench.scratch, 'extensions', installed) };
  const page = await browser.context.newPage();
  const said: string[] = [];
  page.on('console', (message) => said.push(message.text()));
  page.on('pageerror', (error) => said.push(error.message));
  let report: (results: WebResults) => void = () => undefined;
  const server = createServer((request, response) => {
    answer(request, { authority: workbench.authority, folders, report: (results) => report(results) })
      .then(({ type, body }) => response.writeHead(200, { 'Content-Type': type }).end(body))
      .catch(() => response.writeHead(404).end());
  });
  try {
    await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
    const base = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
    await writeDriver(folder, workspace, `${base}/report`);
    const done = new Promise<WebResults>((resolve, reject) => {
      report = resolve;
      const late = () => reject(new Error(`The browser's host did not report:\n${said.slice(-30).join('\n')}`));
      setTimeout(late, LIMIT_MS).unref();
    });
    for (const name of ['codeAutomationLog', 'codeAutomationExit']) await page.exposeFunction(name, () => undefined);
    const [results] = await Promise.all([done, page.goto(base, { timeout: 30_000 })]);
    return results;
  } finally {
    await page.close();
    server.closeAllConnections();
    server.close();
  }
}

interface Served {
  /** The workbench’s own server: its page and its scripts are handed on. */
  readonly authority: string;
  readonly folders: Readonly<Record<string, string>>;
  readonly report: (results: WebResults) => void;
}

const types: Readonly<Record<string, string>> = { js: 'text/javascript', json: 'application/json' };

/** All from one address, so that the page may fetch it. Throws where there is nothing to answer. */
async function answer(
  request: IncomingMessage,
  { authority, folders, report }: Served,
): Promise<{ type: string; body: string | Uint8Array }> {
  const { pathname, search, host } = new URL(request.url ?? '/', `http://${request.headers.host}`);
  if (request.method === 'POST') {
    report(JSON.parse(Buffer.concat(await request.toArray()).toString('utf8')) as WebResults);
    return { type: 'text/plain', body: '' };
  }
  const [, of = '', ...path] = normalize(pathname).split('/');
  const folder = folders[of];
  if (folder !== undefined) {
    const body = readFileSync(join(folder, ...path.map(decodeURIComponent)));
    return { type: types[pathname.split('.').at(-1)!] ?? 'application/octet-stream', body };
  }
  const fetched = await fetch(`http://${authority}${pathname}${search}`);
  if (!fetched.ok) throw new Error(`${pathname}: ${fetched.status}`);
  const type = fetched.headers.get('content-type') ?? 'application/octet-stream';
  if (pathname === '/') return { type, body: withoutMachine(await fetched.text(), host) };
  return { type, body: new Uint8Array(await fetched.arrayBuffer()) };
}

/**
 * The workbench’s page, with a window in it that is connected to nothing: made by the interface for pages that embed
 * it, instead of by the server’s own configuration, which names a machine.
 */
function withoutMachine(html: string, authority: string): string {
  const extension = (path: string) => ({ scheme: 'http', authority, path });
  const developed = {
    extensions: [extension('/extension'), extension('/driver')],
    extensionTestsPath: extension('/driver/run'),
  };
  const element = /<meta id="vscode-workbench-web-configuration" data-settings="([^"]*)">/;
  return html.replace(element, (_, settings: string) => {
    const { remoteAuthority: __, ...configuration } = JSON.parse(settings.replaceAll('&quot;', '"'));
    const options = JSON.stringify({ ...configuration, developmentOptions: developed }).replaceAll('<', '\\u003c');
    return `<script>
      globalThis.__VSCODE_WEB_ESM_PROMISE = ({ create, URI }) => create(document.body, {
        ...${options},
        workspaceProvider: {
          workspace: { folderUri: URI.parse('bench:/ws') },
          trusted: true,
          open: async () => false,
        },
      });
    </script>`;
  });
}

/** An extension that holds the files of the folder and carries the steps. */
async function writeDriver(folder: string, workspace: string, report: string): Promise<void> {
  mkdirSync(folder, { recursive: true });
  const manifest = {
    name: 'driver',
    publisher: 'fettle-tests',
    version: '0.0.0',
    engines: { vscode: '*' },
    browser: './files.js',
    activationEvents: ['onFileSystem:bench'],
    capabilities: { untrustedWorkspaces: { supported: true }, virtualWorkspaces: true },
  };
  writeFileSync(join(folder, 'package.json'), JSON.stringify(manifest));
  const names = readdirSync(workspace, { recursive: true, withFileTypes: true }).filter((one) => one.isFile());
  const texts = names.map(({ parentPath, name }) => {
    const path = join(parentPath, name);
    return [`/ws${path.slice(workspace.length).replaceAll('\\', '/')}`, readFileSync(path, 'utf8')];
  });
  await build({
    entryPoints: {
      files: fileURLToPath(new URL('./memory-files.ts', import.meta.url)),
      run: fileURLToPath(new URL('./steps.ts', import.meta.url)),
    },
    outdir: folder,
    bundle: true,
    platform: 'browser',
    format: 'cjs',
    define: {
      __FILES__: JSON.stringify(Object.fromEntries(texts)),
      __SCENARIO__: JSON.stringify(scenario),
      __REPORT__: JSON.stringify(report),
    },
    external: ['vscode'],
    logLevel: 'silent',
  });
}
