// Orders of work against POSIX tsort, which sorts and finds cycles for itself.
import fc from 'fast-check';
import { describe, expect } from 'vitest';
import { STEP_KINDS } from '../../server/src/core/trade/steps';
import { ORDER_RULES, topologicalOrder, type Edge } from '../../server/src/core/trade/work-order';
import { itWithOracle, runOracle } from './oracle';

/** Whether tsort finds an order, and the one it finds. Source: IEEE Std 1003.1, tsort. */
function tsort(edges: readonly Edge[]): { sorted: boolean; order: number[] } {
  const { status, stdout } = runOracle('tsort', [], edges.map(([before, after]) => `${before} ${after}\n`).join(''));
  return {
    sorted: status === 0,
    order: stdout
      .trim()
      .split('\n')
      .filter((line) => line !== '')
      .map(Number),
  };
}

const keeps = (order: readonly number[], edges: readonly Edge[]): boolean =>
  edges.every(([before, after]) => before === after || order.indexOf(before) < order.indexOf(after));

describe('orders', () => {
  itWithOracle('tsort', 'exist exactly where tsort finds one, and keep every edge as its own does', () => {
    const graphs = fc.integer({ min: 2, max: 9 }).chain((size) =>
      fc
        .array(
          fc.tuple(fc.nat(size - 1), fc.nat(size - 1)).filter(([a, b]) => a !== b),
          { minLength: 1, maxLength: 14 },
        )
        .map((edges) => ({ size, edges })),
    );
    let sorted = 0;
    fc.assert(
      fc.property(graphs, ({ size, edges }) => {
        const ours = topologicalOrder(size, edges);
        const theirs = tsort(edges);
        expect(ours.length === size).toBe(theirs.sorted);
        if (!theirs.sorted) return;
        sorted++;
        expect(keeps(theirs.order, edges)).toBe(true);
        expect(keeps(ours, edges)).toBe(true);
      }),
      { numRuns: 60, seed: 1851 },
    );
    expect(sorted).toBeGreaterThan(5);
  });

  itWithOracle(
    'tsort',
    'of the work: tsort keeps all rules of need and reach but those that exclude each other',
    () => {
      const rules = ORDER_RULES.filter((rule) => rule.strength !== 'usual');
      const edgesOf = (some: typeof rules): Edge[] =>
        some.map((rule) => [STEP_KINDS.indexOf(rule.before), STEP_KINDS.indexOf(rule.after)]);
      expect(tsort(edgesOf(rules.filter((rule) => rule.when !== 'firmware with this processor'))).sorted).toBe(true);
      expect(tsort(edgesOf(rules)).sorted).toBe(false);
    },
  );
});
