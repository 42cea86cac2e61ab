// Emacs with Eglot and Flymake, which never ask for findings and do not resolve code actions.
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, test } from 'vitest';
import { provide, reportMissing } from './support/needs';
import { runPlainEditor, type Outcome } from './support/plain';
import { mendedText, mistakenText, scenario, serverPath } from './support/scenario';

const script = fileURLToPath(new URL('./emacs/check.el', import.meta.url));
const { missing } = await provide({ packages: ['emacs-nox', 'elpa-eglot'], files: [serverPath] });
if (missing) reportMissing('Emacs', missing);

describe.skipIf(missing)('Emacs', () => {
  let outcome: Outcome;

  beforeAll(async () => {
    outcome = await runPlainEditor('emacs', ['-Q', '--batch', '-l', script]);
    process.stderr.write(`Emacs: keystroke to finding ${outcome.keystrokeToFindingMs} ms\n`);
  });

  test('shows the finding that the server pushes', () => {
    expect(outcome.problem ?? '').toBe('');
    expect(outcome.broken).toBe(mistakenText());
    expect(outcome.source).toBe('fettle');
  });

  test('explains the key on hover', () => {
    for (const text of scenario.hoverSays) expect(outcome.hover).toContain(text);
  });

  test('mends the text with one quick fix', () => {
    expect(outcome.fix).toBeTruthy();
    expect(outcome.mended).toBe(mendedText());
  });
});
