// The rules of order and the sums on orders: what the rules say, and that they can be kept.
import { describe, expect, it } from 'vitest';
import { CAUTIONS } from '../../../server/src/core/trade/cautions';
import {
  ASSEMBLING,
  ENERGISING,
  EQUALISING,
  HANDLING,
  RUNNING,
  STATIC_SENSITIVE,
  STEP_CAUTIONS,
  STEP_KINDS,
  type StepKind,
} from '../../../server/src/core/trade/steps';
import {
  ORDER_RULES,
  topologicalOrder,
  wayFrom,
  type Edge,
  type Strength,
} from '../../../server/src/core/trade/work-order';

const number = (kind: StepKind): number => STEP_KINDS.indexOf(kind);
const edges = (strengths: readonly Strength[], when = true): Edge[] =>
  ORDER_RULES.filter((rule) => strengths.includes(rule.strength) && (when || rule.when === undefined)).map((rule) => [
    number(rule.before),
    number(rule.after),
  ]);

describe('kinds of step', () => {
  it('are each listed once', () => expect(new Set(STEP_KINDS).size).toBe(STEP_KINDS.length));

  it('are sorted into groups that fit together', () => {
    for (const kind of STATIC_SENSITIVE) expect(HANDLING).toContain(kind);
    for (const kind of [...ENERGISING, ...EQUALISING, ...RUNNING]) expect(HANDLING).not.toContain(kind);
    expect(ASSEMBLING).toContain('fit I/O shield');
    expect(ASSEMBLING).toContain('connect EPS');
    expect(ASSEMBLING).not.toContain('first start');
    expect([...ENERGISING]).toEqual(['bench start', 'plug in mains', 'first start']);
    expect([...EQUALISING]).toEqual(['equalise', 'wear strap']);
  });

  it('carry cautions that there are', () => {
    for (const ids of Object.values(STEP_CAUTIONS)) for (const id of ids) expect(Object.keys(CAUTIONS)).toContain(id);
    expect(STEP_CAUTIONS['change coin cell']).toEqual(['coin-cell']);
  });
});

describe('rules', () => {
  it('each stand once, with a reason that ends a sentence', () => {
    const keys = ORDER_RULES.map((rule) => `${rule.before}\n${rule.after}\n${rule.strength}`);
    expect(keys.filter((key, i) => keys.indexOf(key) !== i)).toEqual([]);
    for (const { because, before, after } of ORDER_RULES) {
      expect(because).toMatch(/^[a-z].*[^.]$/);
      expect(before).not.toBe(after);
    }
  });

  // Custom has some steps twice, on the bench and in the case; what is needed or a matter of reach has to go together.
  it('of need and reach can all be kept at once, but for the two ways of updating firmware', () => {
    const all = ORDER_RULES.filter(
      (rule) => rule.strength !== 'usual' && rule.when !== 'firmware with this processor',
    ).map((rule): Edge => [number(rule.before), number(rule.after)]);
    expect(topologicalOrder(STEP_KINDS.length, all)).toHaveLength(STEP_KINDS.length);
    expect(topologicalOrder(STEP_KINDS.length, edges(['needed'], false))).toHaveLength(STEP_KINDS.length);
  });

  it.each<[StepKind, StepKind]>([
    ['read handbooks', 'fit processor'],
    ['update firmware', 'fit processor'],
    ['fit processor', 'fit cooler'],
    ['fit back plate', 'fit board'],
    ['apply paste', 'fit cooler'],
    ['remove film', 'fit cooler'],
    ['set standoffs', 'fit board'],
    ['fit I/O shield', 'fit board'],
    ['fit board', 'fit card'],
    ['fill loop', 'first start'],
    ['fit cooler', 'bench start'],
    ['fit cooler', 'first start'],
    ['connect 24-pin', 'plug in mains'],
    ['connect card power', 'plug in mains'],
    ['default settings', 'set profile'],
    ['set profile', 'stress test'],
    ['memory test', 'hand over'],
  ])('need %s before %s', (before, after) =>
    expect(ORDER_RULES).toContainEqual(expect.objectContaining({ before, after, strength: 'needed' })),
  );

  // Sound benches differ here: a memory test with the profile on, an install before the test, a board that starts in
  // its case.
  it.each<[StepKind, StepKind]>([
    ['bench start', 'fit board'],
    ['memory test', 'set profile'],
    ['memory test', 'install system'],
    ['drive test', 'install system'],
    ['install system', 'stress test'],
    ['unplug mains', 'open case'],
    ['fill loop', 'leak test'],
    ['fit board', 'connect front cables'],
    ['fit graphics', 'connect card power'],
  ])('prefer %s before %s, and judge nothing by it', (before, after) =>
    expect(
      ORDER_RULES.filter((rule) => rule.before === before && rule.after === after).map(({ strength }) => strength),
    ).toEqual(['usual']),
  );

  it.each<[StepKind, StepKind]>([
    ['fit memory', 'fit cooler'],
    ['fit M.2 drive', 'fit cooler'],
    ['fit M.2 drive', 'fit graphics'],
    ['connect EPS', 'fit radiator'],
    ['connect front cables', 'fit card'],
  ])('reach %s more easily before %s', (before, after) =>
    expect(ORDER_RULES).toContainEqual(expect.objectContaining({ before, after, strength: 'reach' })),
  );

  it('leave it open whether the supply or the board goes in first', () => {
    expect(ORDER_RULES.filter(({ before, after }) => [before, after].sort().join() === 'fit board,fit supply')).toEqual(
      [],
    );
  });
});

describe('an order', () => {
  it('keeps the edges and otherwise the numbers', () => {
    expect(topologicalOrder(4, [])).toEqual([0, 1, 2, 3]);
    expect(
      topologicalOrder(4, [
        [3, 0],
        [2, 1],
      ]),
    ).toEqual([2, 1, 3, 0]);
    expect(
      topologicalOrder(3, [
        [2, 0],
        [2, 0],
        [0, 1],
      ]),
    ).toEqual([2, 0, 1]);
    expect(topologicalOrder(0, [])).toEqual([]);
  });

  it('leaves out what lies on or behind a cycle', () => {
    expect(
      topologicalOrder(4, [
        [1, 2],
        [2, 1],
        [2, 3],
      ]),
    ).toEqual([0]);
    expect(topologicalOrder(2, [[0, 0]])).toEqual([1]);
  });

  it('has ways through it', () => {
    expect(
      wayFrom(0, 3, [
        [0, 1],
        [1, 2],
        [2, 3],
        [0, 2],
      ]),
    ).toEqual([0, 2, 3]);
    expect(wayFrom(0, 0, [])).toEqual([0]);
    expect(
      wayFrom(3, 0, [
        [0, 1],
        [1, 3],
      ]),
    ).toBeUndefined();
    expect(
      wayFrom(0, 2, [
        [0, 1],
        [1, 0],
      ]),
    ).toBeUndefined();
  });
});
