// Sees to it that what a test needs is there; where it cannot be, says so loudly and skips, or on CI fails.
import { existsSync } from 'node:fs';
import { expect, test } from 'vitest';
import { providePackages, provideWorkbench } from '../../provide.mjs';

export interface Needs {
  packages: string[];
  /** Built files; a missing one is a failure everywhere. */
  files: string[];
  workbench?: boolean;
}

/** What the needs came to: the workbench's folder when asked for, or why the tests cannot run. */
export interface Provided {
  missing?: string;
  workbench: string;
}

const say = (text: string) => process.stderr.write(`${text}\n`);

/** Provides `needs`. Throws when a built file is missing; a missing editor is an answer. */
export async function provide({ packages, files, workbench = false }: Needs): Promise<Provided> {
  const absent = files.filter((file) => !existsSync(file));
  if (absent.length > 0) throw new Error(`Not built: ${absent.join(', ')}`);
  const { missing, message } = await providePackages(packages, say);
  if (missing.length > 0) return { missing: message, workbench: '' };
  try {
    return { workbench: workbench ? await provideWorkbench(say) : '' };
  } catch (error) {
    return { missing: `The workbench is not installed. ${(error as Error).message}`, workbench: '' };
  }
}

/** Stands in for the tests of an editor that is not there: fails on CI, elsewhere shows as skipped with the reason. */
export function reportMissing(editor: string, missing: string): void {
  if (process.env.CI) {
    test(`${editor} is there`, () => expect.fail(missing));
    return;
  }
  say(`\n!!! ${editor} IS NOT TESTED. ${missing}\n`);
  test.skip(`${editor} is not tested: ${missing.split('\n')[0]}`);
}
