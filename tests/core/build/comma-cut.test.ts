// A value that YAML ends at a comma within braces is told once, and mended without loss.
import { describe, expect, it } from 'vitest';
import { inspect } from '../../../server/src/core/build/inspect';
import { Doc } from '../../../server/src/core/parts/doc';
import { applyEdits } from '../../../server/src/core/text';

const cooler = (inner: string): string => `format: 1\nbuild: A\nparts:\n  cooler: { ${inner} }\n`;
const read = (text: string) => inspect(new Doc('a.pcbuild.yaml', 'build', text)).problems;

/** What is written within braces, and what may be written for it. */
const cut: readonly (readonly [string, readonly string[]])[] = [
  ['mass: 1,2 kg', ['mass: 1.2 kg']],
  ['mass: 1,2 kg, height: 155 mm', ['mass: 1.2 kg, height: 155 mm']],
  ['height: 155 mm, mass: 1,200 g', ['height: 155 mm, mass: "1,200 g"']],
  ['height: 15,5cm', ['height: 15.5 cm']],
  ['model: Reed 2,5 S', ['model: "Reed 2,5 S"']],
  ['model: Reed 2, with fan kit', ['model: "Reed 2, with fan kit"']],
  ['fans: { speed: 1,500 rpm }', ['fans: { speed: "1,500 rpm" }']],
];

describe('a comma within braces', () => {
  it.each(cut)('%s: one finding, mended by %j', (inner, mended) => {
    const text = cooler(inner);
    const problems = read(text);
    expect(problems).toHaveLength(1);
    const { message, span, mends } = problems[0]!;
    expect(message).toContain(text.slice(span.start, span.end));
    expect(mends.map(({ edits }) => applyEdits(text, edits))).toEqual(mended.map(cooler));
    for (const one of mended) expect(read(cooler(one))).toEqual([]);
  });

  it('that cuts a number of a names map is told once', () => {
    const text = 'format: 1\nbuild: A\nparts:\n  case: { cable-paths: { 24-pin: 38,5 cm, EPS 8-pin: 52 cm } }\n';
    expect(read(text).map(({ mends }) => mends.map(({ edits }) => applyEdits(text, edits)))).toEqual([
      [text.replace('38,5 cm', '38.5 cm')],
    ]);
  });

  it('that leaves no number that can be says so once', () => {
    const text = 'format: 1\nbuild: A\nparts:\n  drives: [{ name: a, count: 1,5 }]\n';
    expect(read(text).map(({ code, mends }) => [code, mends])).toEqual([['number-odd', []]]);
  });

  it.each(['mass: 1 kg, 2 kg', 'mass: 1 kg, hieght: 155 mm', 'mass: 1 kg, colour', 'model: Reed 2, height 155 mm'])(
    '%s is left as it was',
    (inner) => {
      expect(read(cooler(inner)).map(({ code }) => code)).toEqual(['unknown-key']);
    },
  );
});
