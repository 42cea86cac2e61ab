// The order of work that a build’s parts give: its steps, which needs which, and what holds of each rule here.
import type { Build, Placed } from '../build/build';
import type { CautionId } from '../trade/cautions';
import { RUNNING, STEP_CAUTIONS, type StepKind } from '../trade/steps';
import { ORDER_RULES, topologicalOrder, type Edge, type OrderRule, type Strength } from '../trade/work-order';
import { binds } from './asked-steps';
import { memo } from './memo';
import { boardCables } from './start-needs';
import { handsIn, rankOf, workNodes, type WorkNode } from './work-nodes';

/** One step of the work, and the part it is done to where there are several of its kind. */
export interface WorkStep {
  readonly step: StepKind;
  readonly part?: Placed;
  /** What is particular about it this time. */
  readonly note?: string;
  /** What has to come before it, and why. */
  readonly reasons: readonly { readonly after: StepKind; readonly because: string }[];
  /** Cautions to be read before it. */
  readonly cautions: readonly CautionId[];
}

/** The work in the case, which a start on the bench comes before. */
const inCase: ReadonlySet<StepKind> = new Set(
  ORDER_RULES.filter((rule) => rule.before === 'bench start' && !RUNNING.includes(rule.after)).map(
    (rule) => rule.after,
  ),
);

const strengths: readonly Strength[] = ['needed', 'reach', 'usual'];

/** One edge of the derived graph, with the rule behind it. */
interface RuleEdge {
  readonly edge: Edge;
  readonly rule: OrderRule;
}

/**
 * The derived graph: rules of need first; one of reach or of custom, or one whose facts are missing, is left out
 * where it would close a circle.
 */
class Graph {
  readonly edges: RuleEdge[] = [];
  private readonly later: number[][];
  /** The nodes that rules of order speak of, by their kind. */
  private readonly ruled = new Map<StepKind, number[]>();

  constructor(
    private readonly build: Build,
    private readonly nodes: readonly WorkNode[],
  ) {
    this.later = nodes.map(() => []);
    nodes.forEach(({ kind, before, after }, i) => {
      if (!before && !after) this.ruled.set(kind, [...(this.ruled.get(kind) ?? []), i]);
    });
    for (const start of ['update firmware', 'bench start'] as const) this.addStart(start);
    for (const strength of strengths)
      for (const sure of [true, false])
        for (const rule of ORDER_RULES) if (rule.strength === strength) this.addRule(rule, sure);
  }

  private add(before: number, after: number, rule: OrderRule, certain = rule.strength === 'needed'): void {
    if (!certain && this.reaches(after, before)) return;
    this.edges.push({ edge: [before, after], rule });
    this.later[before]!.push(after);
  }

  private reaches(from: number, to: number): boolean {
    const seen = new Set([from]);
    for (const at of seen) for (const next of this.later[at]!) seen.add(next);
    return seen.has(to);
  }

  /**
   * What is done for an early time with power comes before it, what undoes it after it, and what is done again after
   * that.
   */
  private addStart(start: StepKind): void {
    const { nodes } = this;
    const at = nodes.findIndex(({ kind }) => kind === start);
    const own = (node: WorkNode): boolean => node.before === start || node.after === start;
    if (at < 0 || !nodes.some(own)) return;
    const off = nodes.findIndex(({ kind, before }) => kind === 'take off strap' && before === start);
    const plug = nodes.findIndex(({ kind, before }) => kind === 'plug in mains' && before === start);
    const out = nodes.findIndex(({ kind, after }) => kind === 'unplug mains' && after === start);
    nodes.forEach(({ kind, before, after }, i) => {
      if (before === start)
        this.add(i, at, { before: kind, after: start, because: 'nothing starts without it', strength: 'needed' });
      if (before === start) this.beforePower(i, off, plug);
      if (after === start)
        this.add(at, i, { before: start, after: kind, because: 'it undoes what was done for it', strength: 'usual' });
      if (after === start && kind === 'wait for memory training' && out >= 0)
        this.add(i, out, { before: kind, after: 'unplug mains', because: 'it runs on power', strength: 'usual' });
      if (this.comesLater(start, this.nodes[i]!))
        this.add(at, i, { before: start, after: kind, because: 'hands are off while it has power', strength: 'usual' });
    });
    this.chain(start);
  }

  /** Before an early time with power: the work, the strap off, the mains in. */
  private beforePower(i: number, off: number, plug: number): void {
    const { kind } = this.nodes[i]!;
    const rule = { before: kind, strength: 'usual' } as const;
    if (off >= 0 && i !== off && i !== plug)
      this.add(i, off, { ...rule, after: 'take off strap', because: 'the strap is worn until then' });
    if (plug >= 0 && i !== plug) this.add(i, plug, { ...rule, after: 'plug in mains', because: 'hands are off then' });
  }

  /**
   * What is begun only after an early time with power: all of it after an update; after the start on the bench, the
   * work in the case.
   */
  private comesLater(start: StepKind, { kind, before, after }: WorkNode): boolean {
    if (after) return false;
    if (start === 'update firmware')
      return before !== start && kind !== start && rankOf.get(kind)! > rankOf.get(start)!;
    const again = (other: WorkNode): boolean =>
      other.kind === kind && (boardCables.has(kind) ? other.before !== undefined : other.before === start);
    return !before && (inCase.has(kind) || this.nodes.some(again));
  }

  /** Out, drained, equalised: in this order, and before the next work. */
  private chain(start: StepKind): void {
    const hands = handsIn.flatMap((kind) =>
      this.nodes.flatMap((node, i) => (node.kind === kind && node.after === start ? [i] : [])),
    );
    const edge = (before: number, after: number): void =>
      this.add(before, after, {
        before: this.nodes[before]!.kind,
        after: this.nodes[after]!.kind,
        because: 'hands go in after it',
        strength: 'usual',
      });
    hands.forEach((i, n) => n > 0 && edge(hands[n - 1]!, i));
    const last = hands.at(-1);
    if (last !== undefined) this.nodes.forEach((node, i) => this.comesLater(start, node) && edge(last, i));
  }

  /** What is known to bind comes before what may. */
  private addRule(rule: OrderRule, sure: boolean): void {
    for (const j of this.ruled.get(rule.after) ?? [])
      for (const i of this.ruled.get(rule.before) ?? []) {
        const { is } = binds(this.build, rule.when, this.nodes[i]!.part, this.nodes[j]!.part);
        if (is !== false && (is === true) === sure) this.add(i, j, rule, sure && rule.strength === 'needed');
      }
  }

  /** The rules by which something comes before each node. */
  rulesBefore(): readonly (readonly OrderRule[])[] {
    const rules = this.nodes.map((): OrderRule[] => []);
    for (const { edge, rule } of this.edges) rules[edge[1]]!.push(rule);
    return rules;
  }
}

/**
 * The order of work for this build: what its parts ask for and a good bench adds, each after what it needs. The same
 * build gives the same order; what nothing decides keeps the order of `STEP_KINDS`. Rules whose facts are missing are
 * kept.
 */
export const workOrder = memo((build: Build): readonly WorkStep[] => {
  const nodes = workNodes(build);
  const graph = new Graph(build, nodes);
  const rules = graph.rulesBefore();
  const warned = new Set<StepKind>();
  return topologicalOrder(
    nodes.length,
    graph.edges.map(({ edge }) => edge),
  ).map((i) => {
    const { kind, part, note } = nodes[i]!;
    const reasons = rules[i]!.filter(({ strength, before }) => strength !== 'usual' && before !== 'read handbooks').map(
      ({ before, because }) => ({ after: before, because }),
    );
    // A step that comes again repeats no caution: what is read three times is not read.
    const cautions = warned.has(kind) ? [] : cautionsOf(build, kind);
    warned.add(kind);
    return { step: kind, reasons, cautions, ...(part ? { part } : {}), ...(note ? { note } : {}) };
  });
});

/** The cautions of a step for these parts. */
function cautionsOf(build: Build, kind: StepKind): readonly CautionId[] {
  const { paste, case: box } = build.parts;
  const more: CautionId[] = [];
  if (kind === 'apply paste' && paste?.part.gallium.value === true) more.push('gallium-paste');
  if (kind === 'open case' && box?.part['glass-panel'].value === true) more.push('glass-panel');
  if (kind === 'update firmware') more.push('update-interrupted');
  if (kind === 'hand over' && build.file['hand-over'].transport.value !== undefined) more.push('lifting');
  return [...(STEP_CAUTIONS[kind] ?? []), ...more];
}
