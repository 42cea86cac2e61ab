// Runs all tests: brings what they need, builds what they test, then the suites one after the other, and counts them
// together.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const scratch = mkdtempSync(join(tmpdir(), 'fettle-tests-'));

/** Runs a program of this checkout to its end; true when it succeeded. */
function run(label, args) {
  console.log(`\n# ${label}`);
  const { status } = spawnSync(process.execPath, args, { cwd: root, stdio: 'inherit' });
  return status === 0;
}

const vitest = join(root, 'node_modules/vitest/vitest.mjs');

function suite(name, config) {
  const report = join(scratch, `${name}.json`);
  const ok = run(`tests: ${name}`, [
    vitest,
    'run',
    '--config',
    config,
    '--reporter=dot',
    '--reporter=json',
    `--outputFile.json=${report}`,
  ]);
  try {
    const { numPassedTests, numFailedTests, numPendingTests } = JSON.parse(readFileSync(report, 'utf8'));
    return { ok, passed: numPassedTests, failed: numFailedTests, skipped: numPendingTests };
  } catch {
    return { ok: false, passed: 0, failed: 1, skipped: 0 };
  }
}

const steps = [
  ['types', ['node_modules/typescript/bin/tsc', '-p', '.']],
  ['types of the core, without Node and DOM', ['node_modules/typescript/bin/tsc', '-p', 'server/src/core']],
  ['what the tests need', ['tests/provide.mjs']],
  ['the extension', ['server/tools/package.mjs']],
];
const failedStep = steps.find(([label, args]) => !run(label, args));
const results = failedStep
  ? []
  : [suite('core, command, server', 'vitest.config.mts'), suite('editors', 'tests/editors/vitest.config.ts')];
rmSync(scratch, { recursive: true, force: true });

const sum = (key) => results.reduce((total, result) => total + result[key], 0);
if (failedStep) console.log(`\nFailed before the tests: ${failedStep[0]}`);
console.log(`\n${sum('passed')} passed, ${sum('failed') + (failedStep ? 1 : 0)} failed, ${sum('skipped')} skipped`);
process.exitCode = !failedStep && results.every((result) => result.ok) ? 0 : 1;
