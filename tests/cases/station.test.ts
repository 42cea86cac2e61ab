// Builds as a technician would make them, in the words of data sheets: nothing above a note is found of them as they
// are, and every fault that is planted, one at a time, is found.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { judgeBuild } from '../../server/src/core/judge/judge';
import { bench } from '../support/bench';

interface Fault {
  readonly fault: string;
  /** Texts of the build, each put in another’s place once. */
  readonly replace: readonly (readonly [from: string, to: string])[];
  /** `+id=grade`: the finding that it brings. */
  readonly want: readonly string[];
}

interface Good {
  readonly name: string;
  /** Where the expectations come from. */
  readonly source: string;
  readonly build: string;
  readonly faults: readonly Fault[];
}

const builds = JSON.parse(readFileSync(join(__dirname, 'station.json'), 'utf8')) as readonly Good[];

const findings = (name: string, build: string) =>
  judgeBuild(
    bench([{ name: 'case.pcbuild.yaml', text: `format: 1\nbuild: ${JSON.stringify(name)}\n${build}` }]).build!,
    { throwOn: true },
  ).findings;

function planted(build: string, { replace }: Fault): string {
  return replace.reduce((text, [from, to]) => {
    expect(text, 'the text is in the build').toContain(from);
    return text.replace(from, () => to);
  }, build);
}

describe.each(builds)('$name', ({ name, source, build, faults }) => {
  it('is found good', () => {
    expect(source).toMatch(/\w{3}/);
    const bad = findings(name, build).filter(
      ({ grade, accepted }) => !accepted && grade !== 'note' && grade !== 'unknown',
    );
    expect(bad.map(({ id, said }) => `${id}: ${said.text}`)).toEqual([]);
  });

  if (faults.length > 0)
    it.each(faults.map((one) => [one.fault, one] as const))('brings its finding: %s', (_, one) => {
      const found = new Set(
        findings(name, planted(build, one)).flatMap(({ id, grade }) => [`+${id}`, `+${id}=${grade}`]),
      );
      expect(one.want.filter((want) => !found.has(want))).toEqual([]);
    });
});
