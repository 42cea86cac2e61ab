// Runs test steps inside the workbench's extension host and brings their results back.
import { build } from 'esbuild';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Scenario } from '../support/scenario';
import { address, type Browser } from './page';
import type { Typed } from './typing';
import type { Workbench } from './server';

/** How the extension is run: in the server's process or in the browser's worker, the folder trusted or not. */
export interface Mode {
  name: string;
  trusted: boolean;
  host: 'process' | 'worker';
}

/** What the steps are given. */
export interface Job {
  scenario: Scenario;
  mode: Mode;
  /** The build's text after the quick fix. */
  mended: string;
  /** What is typed key by key. */
  typed: Typed;
  steps: string[];
  stepLimitMs: number;
}

/** How one step went: nothing, or what was wrong; and what it measured. */
export interface StepResult {
  error?: string;
  tookMs: number;
  measured?: Record<string, number>;
}

export type HostResults = Record<string, StepResult>;

/** Beside the steps: until the window is there, and for the many short ones. */
const RUN_LIMIT_MS = 60_000;

/** The user's settings that bring a mode about. */
function modeSettings({ trusted, host }: Mode): Record<string, unknown> {
  return {
    'security.workspace.trust.enabled': !trusted,
    ...(host === 'worker' ? { 'remote.extensionKind': { 'fettle.fettle': ['web'] } } : {}),
  };
}

/** Runs `job` on `workspace` in a fresh window. Throws when the extension host does not report. */
export async function runInHost(
  workbench: Workbench,
  browser: Browser,
  workspace: string,
  job: Job,
): Promise<HostResults> {
  const folder = join(workbench.scratch, job.mode.name.replaceAll(' ', '-'));
  workbench.configure(modeSettings(job.mode));
  await writeDriver(folder, job);
  const page = await browser.context.newPage();
  try {
    const limitMs = RUN_LIMIT_MS + job.stepLimitMs;
    const report = new Promise<string>((resolve, reject) => {
      setTimeout(() => reject(new Error(`The extension host did not report within ${limitMs} ms`)), limitMs).unref();
      void page.exposeFunction('codeAutomationLog', () => undefined);
      void page.exposeFunction('codeAutomationExit', (code: number, logs: unknown) =>
        resolve(`status ${code}, ${JSON.stringify(logs)}`),
      );
    });
    const payload: [string, string][] = [
      ['extensionDevelopmentPath', folder],
      ['extensionTestsPath', join(folder, 'run.js')],
    ];
    const opened = page.goto(address(workbench, { workspace, payload }), {
      waitUntil: 'domcontentloaded',
      timeout: 30_000,
    });
    const [ending] = await Promise.all([report, opened]);
    const results = join(folder, 'results.json');
    if (!existsSync(results)) throw new Error(`The test steps did not run: ${ending}\n${workbench.log()}`);
    return JSON.parse(readFileSync(results, 'utf8')) as HostResults;
  } finally {
    await page.close();
  }
}

/** An extension that does nothing but carry the steps: what is tested is the installed one. */
async function writeDriver(folder: string, job: Job): Promise<void> {
  mkdirSync(folder, { recursive: true });
  const manifest = {
    name: 'driver',
    publisher: 'fettle-tests',
    version: '0.0.0',
    engines: { vscode: '*' },
    capabilities: { untrustedWorkspaces: { supported: true } },
  };
  writeFileSync(join(folder, 'package.json'), JSON.stringify(manifest));
  writeFileSync(join(folder, 'job.json'), JSON.stringify(job));
  await build({
    entryPoints: [fileURLToPath(new URL('./steps.ts', import.meta.url))],
    outfile: join(folder, 'run.js'),
    bundle: true,
    platform: 'node',
    format: 'cjs',
    target: 'node20',
    external: ['vscode'],
    logLevel: 'silent',
  });
}
