// What is worked out once for a slot or for all free ones, so that many slots times many drives stay quick.
import { describe, expect, it } from 'vitest';
import { uniqueMissing } from '../../../server/src/core/figures/missing-facts';
import { lanesLeft, wiringOf } from '../../../server/src/core/figures/lanes';
import { effectsOn } from '../../../server/src/core/figures/slots';
import { bench } from '../../support/bench';

function board() {
  const build = bench([
    {
      name: 'desk.pcbuild.yaml',
      text: `format: 1
build: Desk
parts:
  board:
    slots:
      A: { kind: M.2, key: M, carries: [PCIe 4 x4], halves: [E] }
      B: { kind: M.2, key: M, carries: [PCIe 4 x4] }
      C: { kind: M.2, key: M, carries: [PCIe 4 x4] }
      D: { kind: M.2, key: M, carries: [PCIe 4 x4] }
      E: { kind: M.2, key: M, carries: [PCIe 4 x4] }
  drives:
    - { name: one, slot: A }
    - { name: two, slot: B }
`,
    },
  ]).build!;
  const slots = build.parts.board!.part.slots.value!;
  const [one, two] = build.parts.drives;
  return { build, slot: (name: string) => slots.get(name)!, one: one!, two: two! };
}
type Board = ReturnType<typeof board>;
const told = ({ build }: Board, name: string, mover?: Board['one']) =>
  effectsOn(build, name, 'halves', mover).map(({ by, does, missingFacts }) => [
    by,
    does,
    missingFacts.map(({ path }) => path),
  ]);
const open = ['B', false, ['parts.board.slots.B.halves']];

describe('effects of filled slots', () => {
  it('are one list for all free slots that none of them names', () => {
    const { build } = board();
    expect(effectsOn(build, 'C', 'halves')).toBe(effectsOn(build, 'D', 'halves'));
  });

  it('are told apart by the slot that is named, that is filled, or that its part leaves', () => {
    const all = board();
    for (const turn of ['first', 'from what is kept']) {
      expect(told(all, 'C'), turn).toEqual([open]);
      expect(told(all, 'E'), turn).toEqual([['A', true, []], open]);
      expect(told(all, 'B'), turn).toEqual([]);
      expect(told(all, 'C', all.two), turn).toEqual([]);
      expect(told(all, 'C', all.one), turn).toEqual([open]);
      expect(told(all, 'E', all.one), turn).toEqual([open]);
    }
  });

  it('leave the lanes they leave', () => {
    const { build, slot, one, two } = board();
    const left = (name: string, mover?: typeof one) => lanesLeft(build, slot(name), name, mover);
    expect([left('E').lo, left('E').hi]).toEqual([2, 2]);
    expect([left('D').lo, left('D').hi]).toEqual([2, 4]);
    expect([left('D', two).lo, left('D', two).hi]).toEqual([4, 4]);
    expect(left('C', one).missing).toBe(left('D', one).missing);
  });
});

it('a slot is wired once, whoever asks', () => {
  const { build, slot } = board();
  expect(wiringOf(build, slot('C'))).toBe(wiringOf(build, slot('C')));
  expect(wiringOf(build, slot('C'))).not.toBe(wiringOf(build, slot('D')));
});

describe('missing facts, each once', () => {
  const { slot } = board();
  const lack = (path: string) => ({ doc: slot('A').kind.doc, path, fact: slot('A').kind, what: path });
  const many = (from: number, to: number) => Array.from({ length: to - from }, (_, i) => lack(`p${from + i}`));

  it.each([
    ['few', 3],
    ['many', 200],
  ])('of %s, also where another object names the same one', (_, n) => {
    const first = many(0, n);
    const twin = many(0, n);
    const more = many(n - 1, n + n);
    const paths = uniqueMissing([
      { missing: [] },
      { missing: first },
      { missing: first },
      { missing: twin },
      { missing: more },
      { missing: more },
    ]).map(({ path }) => path);
    expect(paths).toEqual(many(0, n + n).map(({ path }) => path));
    expect(uniqueMissing([{ missing: first }, { missing: twin }, { missing: first.slice(1) }])).toBe(first);
    expect(first).toHaveLength(n);
  });
});
