// Runs all tests: types, the fast part, then what they need beyond npm, what they test, and the rest; counts them
// together. `fast` as its argument ends after the fast part. Away from a terminal it prints plain lines.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const scratch = mkdtempSync(join(tmpdir(), 'fettle-tests-'));
const onTerminal = process.stdout.isTTY === true;
const env = onTerminal ? process.env : { ...process.env, NO_COLOR: '1', FORCE_COLOR: undefined };
const results = [];
let failedStep;

/** Runs a program of this checkout to its end; true when it succeeded. */
function run(label, args) {
  console.log(`\n# ${label}`);
  const { status } = spawnSync(process.execPath, args, { cwd: root, stdio: 'inherit', env });
  return status === 0;
}

/** A step that the tests rest on; the first that fails ends the run. */
function step(label, ...args) {
  if (!failedStep && !run(label, args)) failedStep = label;
}

/** A suite of tests; its failures are counted and the run goes on. */
function suite(name, config, ...more) {
  if (failedStep) return;
  const report = join(scratch, `${results.length}.json`);
  const reporter = onTerminal ? 'dot' : join(root, 'tests/support/plain-reporter.ts');
  const words = ['run', '--config', config, `--reporter=${reporter}`, '--reporter=json', ...more];
  const vitest = join(root, 'node_modules/vitest/vitest.mjs');
  const ok = run(`tests: ${name}`, [vitest, ...words, `--outputFile.json=${report}`]);
  results.push(countedIn(report, ok));
}

function countedIn(report, ok) {
  try {
    const { numPassedTests, numFailedTests, numPendingTests } = JSON.parse(readFileSync(report, 'utf8'));
    return { ok, passed: numPassedTests, failed: numFailedTests, skipped: numPendingTests };
  } catch {
    return { ok: false, passed: 0, failed: 1, skipped: 0 };
  }
}

if (process.argv[2] === 'fast') suite('the fast part', 'vitest.config.mts', '--project=fast');
else {
  step('types', 'node_modules/typescript/bin/tsc', '-p', '.');
  step('types of the core, without Node and DOM', 'node_modules/typescript/bin/tsc', '-p', 'server/src/core');
  step('types of the panel, with a DOM', 'node_modules/typescript/bin/tsc', '-p', 'client/src/views/panel');
  suite('the fast part', 'vitest.config.mts', '--project=fast');
  step('what the tests need', 'tests/provide.mjs');
  step('the extension', 'server/tools/package.mjs');
  suite('checks, command, server', 'vitest.config.mts', '--project=!fast');
  suite('editors', 'tests/editors/vitest.config.mts');
}
rmSync(scratch, { recursive: true, force: true });

const sum = (key) => results.reduce((total, result) => total + result[key], 0);
if (failedStep) console.log(`\nFailed before the tests: ${failedStep}`);
console.log(`\n${sum('passed')} passed, ${sum('failed') + (failedStep ? 1 : 0)} failed, ${sum('skipped')} skipped`);
process.exitCode = !failedStep && results.every((result) => result.ok) ? 0 : 1;
