// Hints at missing facts: one for each part, however little its file states, and the rest on hover.
import { describe, expect, test } from 'vitest';
import { factKey, waiting } from '../../server/src/core/judge/waiting';
import { diagnosticsOf } from '../../server/src/features/diagnostics';
import { hover } from '../../server/src/features/hover';
import { hintsOf } from '../../server/src/features/hints';
import { view } from '../support/view';

/** A board and a cooler of which little more is stated than that they are there. */
const others = {
  'parts/tarn/mid-3.part.yaml': 'kind: case\ncooler-height: 150 mm\nprice: 90 EUR\n',
  'parts/norrvik/bare.part.yaml': 'kind: board\nsize: ATX\n',
  'parts/boreas/bare.part.yaml': 'kind: cooler\nmass: 700 g\n',
  'parts/lumen/kit.part.yaml': 'kind: memory\ntype: DDR5\nshape: DIMM\ncapacity: 32 GB\nmodules-in-kit: 2\n',
  'parts/lumen/low.part.yaml': 'kind: drive\nform: M.2 2280\n',
};
const marked = `parts:
  board: { use: norrvik/b¦are }
  cooler: { use: boreas/bare }
  case: { use: tarn/mid-3 }
  processor: { power: 65 W, socket: AM5 }
  memory:
    - { use: lumen/kit, slots: [A1, B1], speed: 6000 MT/s }
  drives:
    - { name: system, use: lumen/low, slot: M2_1 }
`;
const { view: judged, position } = view(marked, others);
const told = diagnosticsOf(judged, { from: 'unknown', related: true }).filter(({ code }) => code === 'fact-not-stated');
const lacking = waiting(
  judged.judgement.findings.filter(({ grade }) => grade === 'unknown'),
  judged.build,
);
const inFile = (name: string): number => lacking.filter(({ lack }) => lack.doc.name === name).length;
const ofBoard = inFile('parts/norrvik/bare.part.yaml');

describe('missing facts', () => {
  test('of one part are one hint, which counts all of them and all that wait', () => {
    expect(ofBoard).toBeGreaterThan(12);
    const [hint, ...more] = told.filter(({ message }) => message.includes('of norrvik/bare'));
    expect(more).toEqual([]);
    expect(hint!.range.start.line).toBe(1);
    expect(hint!.message).toContain(` and ${ofBoard - 3} more. `);
    const waits = lacking.filter(({ lack }) => lack.doc.name === 'parts/norrvik/bare.part.yaml');
    const ids = new Set(waits.flatMap(({ findings }) => findings.map(({ id }) => id)));
    expect(hint!.message).toContain(`${ids.size} checks wait for them: `);
    expect(hint!.relatedInformation).toEqual([
      expect.objectContaining({ message: expect.stringContaining(`${ofBoard}`) }),
    ]);
  });

  test('that a part spelled out in the build lacks are one hint too, by the keys below it', () => {
    const [hint, ...more] = told.filter(({ message }) => message.includes('of parts.processor'));
    expect(more).toEqual([]);
    expect(hint!.message).toMatch(/^Not stated of parts\.processor: (?!.*parts\.processor\.)/);
  });

  test('are each in one hint and lost in none', () => {
    const hinted = hintsOf(judged, 'unknown').flatMap(({ facts }) => facts.map(({ lack }) => factKey(lack)));
    expect(hinted.sort()).toEqual(lacking.map(({ lack }) => factKey(lack)).sort());
  });

  test('are listed on hover, what may bring most first, where the hint cannot name all', () => {
    const said = hover(judged, position, { kind: 'plaintext' })!.contents.value;
    const list = said.slice(said.indexOf('Not stated of norrvik/bare'));
    expect(list.split('\n').filter((line) => line.startsWith('- '))).toHaveLength(Math.min(ofBoard, 12));
    expect(list).toContain(`… and ${ofBoard - 12} more: fettle missing lists them all.`);
    // What an airflow may be short of is a shortfall at worst, a socket that differs stops the work.
    expect(list.indexOf('- socket:')).toBeGreaterThan(0);
    expect(list.indexOf('- draw.peak:')).not.toBeGreaterThan(0);
    expect(hover(judged, position, { kind: 'plaintext', shownFrom: 'note' })?.contents.value).not.toContain(
      'Not stated',
    );
  });
});
