// What every editor without a screen must show: the finding as it is typed, the key on hover, the mended text.
import { beforeAll, describe, expect, test } from 'vitest';
import { provide, reportMissing } from './needs';
import { runPlainEditor, type Outcome } from './plain';
import { linesOfUses, mendedText, mistakenText, renamedText, scenario, serverPath } from './scenario';

/** An editor by its name, what brings it, and how it is started on its script. */
export interface PlainEditor {
  readonly name: string;
  readonly packages: readonly string[];
  readonly program: string;
  readonly args: string[];
}

/** Declares the tests of one editor; they are skipped, and said to be, where it cannot be had. */
export async function describePlainEditor({ name, packages, program, args }: PlainEditor): Promise<void> {
  const { missing } = await provide({ packages: [...packages], files: [serverPath] });
  if (missing) reportMissing(name, missing);

  describe.skipIf(missing)(name, () => {
    let outcome: Outcome;

    beforeAll(async () => {
      outcome = await runPlainEditor(program, args);
      process.stderr.write(`${name}: keystroke to finding ${outcome.keystrokeToFindingMs} ms\n`);
    });

    test('shows the finding that the server pushes', () => {
      expect(outcome.problem ?? '').toBe('');
      expect(outcome.broken).toBe(mistakenText());
      expect(outcome.source).toBe('fettle · shortfall');
    });

    test('explains the key on hover', () => {
      for (const text of scenario.hoverSays) expect(outcome.hover).toContain(text);
    });

    test('finds every use of a name, and changes it everywhere as one undo', () => {
      expect(outcome.uses).toEqual(linesOfUses());
      expect(outcome.renamed).toBe(renamedText());
      expect(outcome.undone).toBe(true);
    });

    test('shows hints behind values, where it can', () => {
      if (outcome.hints) expect(outcome.hints.map((hint) => hint.trim())).toContain(scenario.hint);
      else process.stderr.write(`${name}: this version shows no hints\n`);
    });

    test('mends the text with one quick fix', () => {
      expect(outcome.fix).toBeTruthy();
      expect(outcome.mended).toBe(mendedText());
    });
  });
}
