// A build held against outputs, or against the record of them, by the command itself: findings as line, grade and check.
import { expect } from 'vitest';
import { fettle } from './command';

type Files = Record<string, string>;

const inFolder = (outputs: Files): Files =>
  Object.fromEntries(Object.entries(outputs).map(([name, text]) => [`out/${name}`, text]));

/** The first file of `build` is the build. */
const nameOf = (build: Files): string => Object.keys(build)[0]!;
const recordOf = (build: Files): string => nameOf(build).replace('.pcbuild.', '.asbuilt.');

interface Finding {
  readonly id: string;
  readonly grade: string;
  readonly range: { readonly start: { readonly line: number } };
}

const lines = (findings: readonly Finding[]): string[] =>
  findings.map(({ id, grade, range }) => `${range.start.line + 1} ${grade} ${id}`);

export async function told(build: Files, outputs: Files): Promise<string[]> {
  const files = { ...build, ...inFolder(outputs) };
  const { out, err } = await fettle(files, 'verify', nameOf(build), 'out', '--format', 'json');
  expect(err).toBe('');
  return lines((JSON.parse(out) as { findings: Finding[] }).findings);
}

/** The text of the record of outputs. */
export async function recorded(build: Files, outputs: Files): Promise<string> {
  const { files } = await fettle({ ...build, ...inFolder(outputs) }, 'verify', nameOf(build), 'out', '--record');
  return files.get(recordOf(build))!;
}

/** What a record brings, of the machine alone. */
export async function toldOfRecord(build: Files, record: string): Promise<string[]> {
  const files = { ...build, [recordOf(build)]: record };
  const { out } = await fettle(files, 'check', nameOf(build), '--format', 'json');
  const { files: checked } = JSON.parse(out) as { files: { findings: Finding[] }[] };
  return lines(checked.flatMap(({ findings }) => findings)).filter((line) => line.includes(' built-'));
}

/** All but what no output shows. */
export const known = (all: readonly string[]): string[] => all.filter((line) => !line.includes(' unknown '));
