// Every number that a finding prints is reproduced by its working: over all fixtures of checks, and over the samples.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { derive, figure, known, number, type Figure } from '../../server/src/core/figures/figure';
import { sentence } from '../../server/src/core/figures/sentence';
import { sure } from '../../server/src/core/figures/truth';
import { judgeBuild } from '../../server/src/core/judge/judge';
import type { Finding } from '../../server/src/core/judge/finding';
import { stepsOf, workingOf } from '../../server/src/core/judge/working-steps';
import { Doc } from '../../server/src/core/parts/doc';
import { columns } from '../../server/src/report/layout';
import { lineOf } from '../../server/src/report/section';
import { workingText } from '../../server/src/report/working-text';
import { bench } from '../support/bench';
import { readFixture } from '../support/fixture';
import { readSamples } from '../support/samples';
import { faultsOf, numbersIn } from '../support/working';

const fixtures = join(__dirname, '../checks');
const paths = readdirSync(fixtures, { recursive: true, encoding: 'utf8' })
  .filter((path) => path.endsWith('.md'))
  .sort();

/** A text’s own faults quote the text, and have no figures. */
const hasFigures = (finding: Finding): boolean => finding.check.on === 'build';

describe('the working of every finding in the fixtures', () => {
  it.each(paths)('%s', (path) => {
    for (const one of readFixture(readFileSync(join(fixtures, path), 'utf8'))) {
      const { build } = bench(one.files);
      if (!build) continue;
      const faults = judgeBuild(build).findings.filter(hasFigures).flatMap(faultsOf);
      expect(faults, one.title).toEqual([]);
    }
  });
});

describe.skipIf(!existsSync(join(__dirname, '../../samples')) || readSamples().builds.length === 0)(
  'the working of every finding in the samples',
  () => {
    it('reproduces every number', () => {
      const findings = readSamples().builds.flatMap((build) => judgeBuild(build).findings.filter(hasFigures));
      expect(findings.length).toBeGreaterThan(0);
      expect(findings.flatMap(faultsOf)).toEqual([]);
    });
  },
);

describe('a working on a terminal', () => {
  const look = { shown: (doc: { name: string }) => doc.name };
  const steps = (...figures: Figure[]): ReturnType<typeof stepsOf> => stepsOf(figures);
  const inFile = (label: string, name: string): Figure => {
    const doc = new Doc(name, 'part', 'kind: cooler\nheight: 158 mm\n');
    return {
      ...known(158, 'length', label, { unit: 'mm', source: '' }),
      from: { doc, span: { start: 13, end: 19 }, path: 'height' },
    };
  };

  it('is a table where it fits', () => {
    expect(
      workingText(
        steps(
          inFile('height of the cooler', 'parts/a/b.part.yaml'),
          known(100, 'length', 'room', { unit: 'mm', source: 'a table' }),
        ),
        4,
        look,
      ),
    ).toEqual(['    height of the cooler  158 mm  parts/a/b.part.yaml:2', '    room                  100 mm  a table']);
  });

  it('puts what stands behind every value below it where one does not fit', () => {
    const far = inFile('height of the cooler', `parts/${'quay/'.repeat(12)}b.part.yaml`);
    const sum = derive('twice the height', 'length', [far], 'height of the cooler × 2', (x) => x! * 2, { unit: 'mm' });
    expect(workingText(steps(sum, known(100, 'length', 'room', { unit: 'mm', source: 'a table' })), 4, look)).toEqual([
      '    twice the height        316 mm',
      '        = height of the cooler × 2',
      '      height of the cooler  158 mm',
      `          parts/${'quay/'.repeat(12)}b.part.yaml:2`,
      '    room                    100 mm',
      '        a table',
    ]);
  });

  it('keeps a label that is far too long on its line with its value, and cuts a path only between its steps', () => {
    const lines = workingText(
      steps(inFile(`height ${'of the part '.repeat(6)}`.trim(), `parts/${'quay/'.repeat(24)}b.part.yaml`)),
      11,
      look,
    );
    expect(lines[0]).toMatch(/^ {11}height of .*/);
    expect(lines.join(' ').replace(/\s+/g, ' ')).toContain('of the part: 158 mm');
    expect(
      lines
        .filter((line) => line.includes('quay'))
        .slice(0, -1)
        .every((line) => line.endsWith('/')),
    ).toBe(true);
    for (const line of lines) expect(columns(line)).toBeLessThanOrEqual(100);
  });

  it('shows every origin whole and nothing past the edge, over all samples', () => {
    const findings = readSamples().builds.flatMap((build) => judgeBuild(build).findings);
    const origins = (all: ReturnType<typeof workingOf>): string[] =>
      all.flatMap(({ from, inputs }) => [...(from ? [lineOf(from, look)] : []), ...origins(inputs)]);
    for (const finding of findings) {
      const working = workingOf(finding);
      const lines = workingText(working, 11, look);
      for (const line of lines) expect(columns(line), line).toBeLessThanOrEqual(100);
      const words = new Set(lines.flatMap((line) => line.split(/;? /)));
      expect(
        origins(working).filter((origin) => !words.has(origin)),
        finding.id,
      ).toEqual([]);
    }
  });
});

describe('holding a finding to its working', () => {
  const real = judgeBuild(
    bench([
      { name: 'a.pcbuild.yaml', text: 'parts:\n  cooler: { height: 158 mm }\n  case: { cooler-height: 155 mm }\n' },
    ]).build!,
  ).findings.find((finding) => finding.id === 'cooler-too-tall')!;
  const withFigures = (...figures: Figure[]): Finding => ({ ...real, said: sentence`It is ${figures[0]!}.`, uses: [] });

  it('passes a real finding', () => expect(faultsOf(real)).toEqual([]));

  it('meets a number that no figure tells', () => {
    const said = { ...real.said, text: real.said.text.replace('158', '157') };
    expect(faultsOf({ ...real, said })).toEqual([
      `cooler-too-tall at parts.cooler: 157 is not in the working: ${said.text}`,
    ]);
  });

  it('meets a figure that its formula does not give', () => {
    const two = number(2, 'two');
    const wrong = { ...derive('sum', 'count', [two, two], 'two + two', (a, b) => a! + b!), lo: 5, hi: 5 };
    expect(faultsOf(withFigures(wrong))[0]).toContain('sum (5) does not follow from its inputs by its formula');
  });

  it('meets a figure that comes from nowhere', () => {
    const { source: _, ...bare } = known(0.1, 'length', 'room', { source: 'a table' });
    expect(faultsOf(withFigures(bare))[0]).toContain('room (0.1 mm) comes from nowhere');
  });

  it('takes an absent fact for an origin', () => {
    const { build } = bench([{ name: 'a.pcbuild.yaml', text: 'parts:\n  cooler: {}\n' }]);
    expect(faultsOf(withFigures(figure(build!.parts.cooler!.part.height, 'height')))).toEqual([]);
  });

  it('takes no name for a number', () => {
    expect(numbersIn('M2_1 carries DDR5 at 4.5 GB/s of 16-pin on 2 lanes, LGA1851; holm/s750 draws -3 W.')).toEqual([
      '4.5',
      '2',
      '-3',
    ]);
  });

  it('knows that a truth without figures has nothing to reproduce', () => {
    expect(faultsOf({ ...real, said: sentence`The parts do not fit.`, uses: sure(false).uses })).toEqual([]);
  });
});
