// Steps that are to come after each other.
import type { Build } from '../../build/build';
import { stepGroups, type StepGroup } from '../../figures/step-order';
import { sentence } from '../../figures/sentence';
import { lacking, sure, type Truth } from '../../figures/truth';
import { binds } from '../../figures/asked-steps';
import type { StepKind } from '../../trade/steps';
import type { Fact } from '../../parts/fact';
import { ORDER_RULES, wayFrom, type Edge } from '../../trade/work-order';
import { check } from '../check';
import { atFact, outcome } from '../kit';
import { takeNameOut } from './steps-kit';

export default check({
  id: 'steps-circular',
  area: 'work',
  grade: 'stop',
  what: 'What a step’s `after:` asks for can be had together with the rest of the order.',
  why:
    'Two steps that are each to come after the other can never both be done in order; one of the reasons is ' +
    'mistaken.',
  source: 'common practice; a partial order has no cycles',
  examples: [
    {
      faulty: `
steps:
  - equalise
  - { do: fit processor, after: [fit cooler] }
#                                ^^^^^^^^^^
  - fit cooler
`,
      mended: `
steps:
  - equalise
  - { do: fit processor }
  - fit cooler
`,
    },
  ],
  test(build, report) {
    const groups = stepGroups(build);
    if (!groups.some((group) => group.steps.some((step) => step.group.after.node))) return;
    const order = new Order(build, groups);
    for (const group of groups)
      for (const step of group.steps)
        for (const [i, name] of (step.group.after.value ?? []).entries()) {
          if (name.value === undefined || !name.node) continue;
          const { truth, way } = order.way(group.kind, name.value);
          report(
            outcome(atFact(name, `${step.path}.after:${name.value}`), truth, {
              broken: () =>
                way!.length === 1
                  ? sentence`${step.label} is to come after itself.`
                  : sentence`${step.label} is to come after ${name}, which itself comes after it: ${way!.join(' → ')}.`,
              fixes: () => [takeNameOut(build, step.group.after, i, name.text)],
            }),
          );
        }
  },
});

interface OrderEdge {
  readonly edge: Edge;
  readonly truth: Truth;
}

/** All that is said of the order of the stated kinds: by rules, and by `after:`. */
class Order {
  private readonly kinds: readonly StepKind[];
  private readonly numbers: ReadonlyMap<StepKind, number>;
  /** What states the steps of each kind. */
  private readonly dos: readonly (readonly Fact<unknown>[])[];
  private readonly edges: readonly OrderEdge[];

  constructor(build: Build, groups: readonly StepGroup[]) {
    this.kinds = [...new Set(groups.map((group) => group.kind))];
    this.dos = this.kinds.map((kind) =>
      groups.filter((one) => one.kind === kind).map(({ steps }) => steps[0].group.do),
    );
    this.numbers = new Map(this.kinds.map((kind, i) => [kind, i]));
    const edges: OrderEdge[] = [];
    const add = (before: StepKind | undefined, after: StepKind, truth: Truth): void => {
      const edge = [this.numbers.get(before as StepKind), this.numbers.get(after)] as const;
      if (edge[0] !== undefined && edge[1] !== undefined && truth.is !== false)
        edges.push({ edge: [edge[0], edge[1]], truth });
    };
    for (const rule of ORDER_RULES) {
      if (
        rule.strength !== 'needed' ||
        !this.numbers.has(rule.before) ||
        !this.numbers.has(rule.after) ||
        (rule.or !== undefined && this.numbers.has(rule.or))
      )
        continue;
      add(rule.before, rule.after, binds(build, rule.when));
    }
    for (const group of groups)
      for (const step of group.steps)
        for (const name of step.group.after.value ?? []) add(name.value, group.kind, sure(true));
    this.edges = edges;
  }

  /** Whether nothing has `from` before `to`; where something has, the steps on the way. */
  way(from: StepKind, to: StepKind): { readonly truth: Truth; readonly way?: readonly string[] } {
    const [start, end] = [this.numbers.get(from) ?? -1, this.numbers.get(to) ?? -1];
    const sureWay = this.find(start, end, (one) => one.truth.is === true);
    if (sureWay)
      return { truth: sure(false, ...sureWay.flatMap((i) => this.dos[i]!)), way: sureWay.map((i) => this.kinds[i]!) };
    const openWay = this.find(start, end, () => true);
    if (!openWay) return { truth: sure(true) };
    const passed = this.edges.filter(
      ({ edge, truth }) =>
        truth.is === undefined && openWay.some((at, i) => at === edge[0] && openWay[i + 1] === edge[1]),
    );
    return { truth: lacking(passed.flatMap(({ truth }) => truth.missing)) };
  }

  private find(start: number, end: number, counts: (edge: OrderEdge) => boolean): number[] | undefined {
    return end < 0
      ? undefined
      : wayFrom(
          start,
          end,
          this.edges.filter(counts).map(({ edge }) => edge),
        );
  }
}
