// A build held against outputs by the command itself: each finding as line, grade and check.
import { expect } from 'vitest';
import { fettle } from './command';

/** The first file of `build` is the build. */
export async function told(build: Record<string, string>, outputs: Record<string, string>): Promise<string[]> {
  const files = {
    ...build,
    ...Object.fromEntries(Object.entries(outputs).map(([name, text]) => [`out/${name}`, text])),
  };
  const { out, err } = await fettle(files, 'verify', Object.keys(build)[0]!, 'out', '--format', 'json');
  expect(err).toBe('');
  const { findings } = JSON.parse(out) as {
    findings: { id: string; grade: string; range: { start: { line: number } } }[];
  };
  return findings.map(({ id, grade, range }) => `${range.start.line + 1} ${grade} ${id}`);
}

/** All but what no output shows. */
export const known = (lines: readonly string[]): string[] => lines.filter((line) => !line.includes(' unknown '));
