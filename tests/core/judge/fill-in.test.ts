// Keys put in to be filled in: where they stand, what stands behind them, and that nothing is known better for it.
import { describe, expect, it } from 'vitest';
import { fillIn, type FillIn } from '../../../server/src/core/judge/fill-in';
import { judgeBuild } from '../../../server/src/core/judge/judge';
import { withDoc } from '../../../server/src/core/judge/prove';
import { waiting } from '../../../server/src/core/judge/waiting';
import { Doc } from '../../../server/src/core/parts/doc';
import { applyEdits } from '../../../server/src/core/text';
import { bench } from '../../support/bench';
import { readSamples } from '../../support/samples';

const desk = 'desk.pcbuild.yaml';

/** What can be filled in of a build, by the path of the fact. */
function filled(files: Readonly<Record<string, string>>): {
  readonly of: (path: string) => FillIn | undefined;
  readonly text: (path: string) => string | undefined;
} {
  const { build } = bench(Object.entries(files).map(([name, text]) => ({ name, text })));
  const judgement = judgeBuild(build!, { throwOn: true });
  const missingFacts = waiting(judgement.findings).map(({ lack }) => lack);
  const of = (path: string): FillIn | undefined => {
    const lack = missingFacts.find((one) => one.path === path);
    expect(lack, `${path} is not missing; missing are ${missingFacts.map((one) => one.path).join(', ')}`).toBeDefined();
    return fillIn({ build: build!, judgement }, lack!);
  };
  return {
    of,
    text: (path) => {
      const one = of(path);
      return one && applyEdits(one.doc.text, one.edits);
    },
  };
}

const used = 'parts:\n  cooler: { use: boreas/tower }\n  case: { use: tarn/mid }\n';
const mid = 'kind: case\ncooler-height: 155 mm\n';

describe('a key to be filled in', () => {
  it('goes into the part file, after the key that it usually follows, with where such a fact is found', () => {
    const { of, text } = filled({
      [desk]: used,
      'parts/boreas/tower.part.yaml':
        'kind: cooler\nmaker: Boreas   # invented\nsockets: [AM5]\n\n# as fitted\ndraw: { peak: 4 W }\n',
      'parts/tarn/mid.part.yaml': mid,
    });
    expect(of('height')).toMatchObject({
      title: 'Add `height:` to parts/boreas/tower.part.yaml, to be filled in',
      doc: { name: 'parts/boreas/tower.part.yaml' },
    });
    expect(text('height')).toMatch(
      /^kind: cooler\nmaker: Boreas {3}# invented\nsockets: \[AM5\]\nheight: {2}# \S.*[^.]\n\n# as fitted\ndraw: \{ peak: 4 W \}\n$/,
    );
  });

  it('names who usually states it where that is known', () => {
    const { text } = filled({
      [desk]: 'parts:\n  board: { use: norrvik/b7 }\n  processor: { socket: AM5 }\n',
      'parts/norrvik/b7.part.yaml': 'kind: board\n',
    });
    expect(text('socket')).toBe('kind: board\nsocket:  # Usually stated by the specification table\n');
  });

  it('makes the groups that are absent, in the file’s own step and line ends', () => {
    const part = 'kind: processor\r\nmemory:\r\n    types: [DDR5]\r\n';
    const { of, text } = filled({
      [desk]: 'parts:\n  processor: { use: calder/c7 }\n  supply: { rating: 550 W }\n',
      'parts/calder/c7.part.yaml': part,
    });
    expect(of('power.sustained')?.title).toBe('Add `power.sustained:` to parts/calder/c7.part.yaml, to be filled in');
    expect(text('power.sustained')).toBe(
      'kind: processor\r\npower:\r\n    sustained:  # Usually stated by the data sheet, under processor ' +
        'power\r\nmemory:\r\n    types: [DDR5]\r\n',
    );
  });

  it('goes into the build where no part file is used, in braces without a comment', () => {
    const { of, text } = filled({
      [desk]: 'parts:\n  cooler: { maker: Boreas, draw: { peak: 4 W } }\n  case: { cooler-height: 155 mm }\n',
    });
    expect(of('parts.cooler.height')?.title).toBe(
      'Add `height:` to parts.cooler in desk.pcbuild.yaml, to be filled in',
    );
    expect(text('parts.cooler.height')).toBe(
      'parts:\n  cooler: { maker: Boreas, height:, draw: { peak: 4 W } }\n  case: { cooler-height: 155 mm }\n',
    );
  });

  it('fills a group that stands there empty', () => {
    const { text } = filled({ [desk]: 'parts:\n  processor:\n    power:\n  supply: { rating: 550 W }\n' });
    expect(text('parts.processor.power.sustained')).toBe(
      'parts:\n  processor:\n    power:\n      sustained:\n  supply: { rating: 550 W }\n',
    );
  });

  it.each([
    [
      'stands there already',
      'parts:\n  cooler: { height: }\n  case: { cooler-height: 155 mm }\n',
      'parts.cooler.height',
    ],
    [
      'would stand under an anchor',
      'parts:\n  cooler: &c { maker: Boreas }\n  case: { cooler-height: 155 mm }\n',
      'parts.cooler.height',
    ],
    [
      'is a name that only the maker can give',
      'parts:\n  processor: { graphics: false }\n  graphics: { outputs: { DP_1: { link: DisplayPort HBR3 } ' +
        '} }\n  displays: [{ port: HDMI }]\n',
      'parts.graphics[0].outputs.HDMI',
    ],
  ])('is not offered where it %s', (_, text, path) => {
    expect(filled({ [desk]: text }).of(path) === undefined).toBe(true);
  });
});

describe('over all samples', () => {
  const { builds } = readSamples();
  const without = (name: string, text: string): string =>
    /part\.yaml$/.test(name)
      ? text.replace(/^(?!kind|maker|model|source)[a-z-]+: [^\n{[]*\n/gm, (line, at: number) =>
          at % 3 === 0 ? '' : line,
        )
      : text;

  it.each(builds.map((build) => [build.doc.name, build] as const))(
    '%s: each parses, brings nothing and leaves its fact missing',
    (_, whole) => {
      // With a third of the plain facts taken out, hundreds are missing.
      const thinned = [...whole.dependsOn].reduce((build, name) => {
        const doc = build.find(name);
        return doc ? withDoc(build, doc, new Doc(doc.name, doc.kind, without(doc.name, doc.text))) : build;
      }, whole);
      const before = judgeBuild(thinned, { throwOn: true });
      const missingFacts = waiting(before.findings).map(({ lack }) => lack);
      const made = missingFacts.flatMap((lack) => fillIn({ build: thinned, judgement: before }, lack) ?? []);
      expect(made.length).toBeGreaterThan(missingFacts.length / 2);
      for (const { doc, edits, lack } of made) {
        const changed = new Doc(doc.name, doc.kind, applyEdits(doc.text, edits));
        expect(changed.parsed.problems).toEqual(doc.parsed.problems);
        expect(changed.text.length - doc.text.length, lack.path).toBe(
          edits.reduce((sum, { text, span }) => sum + text.length - (span.end - span.start), 0),
        );
        const after = judgeBuild(withDoc(thinned, doc, changed), { throwOn: true });
        const broken = (findings: typeof after.findings): string[] =>
          findings
            .filter(({ grade }) => grade !== 'unknown')
            .map(({ id, said }) => `${id}: ${said.text}`)
            .sort();
        expect(broken(after.findings), lack.path).toEqual(broken(before.findings));
        const again = waiting(after.findings).find(
          (one) => one.lack.path === lack.path && one.lack.doc.name === doc.name,
        );
        expect(again, lack.path).toBeDefined();
      }
    },
  );
});
