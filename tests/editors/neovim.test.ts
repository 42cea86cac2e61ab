// Neovim's own language client, which knows only pushed findings and UTF-16 columns.
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, test } from 'vitest';
import { provide, reportMissing } from './support/needs';
import { runPlainEditor, type Outcome } from './support/plain';
import { mendedText, mistakenText, scenario, serverPath } from './support/scenario';

const script = fileURLToPath(new URL('./neovim/check.lua', import.meta.url));
const { missing } = await provide({ packages: ['neovim'], files: [serverPath] });
if (missing) reportMissing('Neovim', missing);

describe.skipIf(missing)('Neovim', () => {
  let outcome: Outcome;

  beforeAll(async () => {
    outcome = await runPlainEditor('nvim', ['--headless', '-n', '-u', 'NONE', '-S', script]);
    process.stderr.write(`Neovim: keystroke to finding ${outcome.keystrokeToFindingMs} ms\n`);
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
