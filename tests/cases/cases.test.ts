// Builds as technicians judged them: what must be found, with its grade, what would be a false alarm, what stays open.
// `differs.json` says of each that is judged otherwise why; the list only ever shrinks.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { judgeBuild } from '../../server/src/core/judge/judge';
import { bench } from '../support/bench';

interface Case {
  readonly id: string;
  readonly area: string;
  readonly name: string;
  /** The build’s text below its name. */
  readonly build: string;
  /**
   * `+id=grade`: a finding is expected; `-id`: it would be a false alarm, `-*`: any above a note would; `?id`: it cannot
   * be decided, or is found, `?id@path`: for want of that fact.
   */
  readonly want: readonly string[];
}

const read = <T>(name: string): T => JSON.parse(readFileSync(join(__dirname, name), 'utf8')) as T;
const cases = read<readonly Case[]>('cases.json');
/** More of them, each with the source of what is wanted: borders on both sides, facts left out, whole builds. */
const sourced = ['bench.json', 'whole.json'].flatMap((name) =>
  read<readonly (Omit<Case, 'id'> & { readonly source: string })[]>(name),
);
/** Checks that mean the same as an expected id. */
const same = read<Record<string, readonly string[]>>('same.json');
/** Why a case is judged otherwise, by its id. */
const differs = read<Record<string, string>>('differs.json');

function wrongIn({ name, build, want }: Omit<Case, 'id'>): string[] {
  const text = `format: 1\nbuild: ${JSON.stringify(name)}\n${build}`;
  const { findings } = judgeBuild(bench([{ name: 'case.pcbuild.yaml', text }]).build!, { throwOn: true });
  return want.filter((one) => {
    const [, sign, id = '', grade, path] = /^([+?-])([^=@]+)(?:=([^@]*))?(?:@(.*))?$/.exec(one)!;
    const hits = findings.filter(
      (found) =>
        (sign === '?' || found.grade !== 'unknown') &&
        (id === '*' ? found.grade !== 'note' : found.id === id || same[id]?.includes(found.id)) &&
        (grade === undefined || found.grade === grade) &&
        (path === undefined || found.missing.some((fact) => fact.path.endsWith(path))),
    );
    return (hits.length === 0) !== (sign === '-');
  });
}

describe.each([...new Set(cases.map(({ area }) => area))])('%s', (area) => {
  it.each(cases.filter((one) => one.area === area && !Object.hasOwn(differs, one.id)).map((one) => [one.name, one]))(
    '%s',
    (_, one) => expect(wrongIn(one)).toEqual([]),
  );
});

describe.each([...new Set(sourced.map(({ area }) => area))])('with its source: %s', (area) => {
  it.each(sourced.filter((one) => one.area === area).map((one) => [one.name, one] as const))('%s', (_, one) => {
    expect(one.source).toMatch(/\w{3}/);
    expect(wrongIn(one)).toEqual([]);
  });
});

describe('what is judged otherwise', () => {
  it.each(Object.entries(differs))('%s still is, and says why', (id, why) => {
    const one = cases.find((other) => other.id === id);
    expect(one, 'there is no such case').toBeDefined();
    expect(wrongIn(one!), 'it agrees now: take it out of the list').not.toEqual([]);
    expect(why).toMatch(/\w{3}.*\w{3}/);
  });
});
