// The order of work that a build’s parts give: its steps, which needs which, and what holds of each rule here.
import type { Build, Placed } from '../build/build';
import type { CautionId } from '../trade/cautions';
import { pinsOn } from '../trade/names';
import { RUNNING, STEP_CAUTIONS, STEP_KINDS, type StepKind } from '../trade/steps';
import { ORDER_RULES, topologicalOrder, type Edge, type OrderRule, type Strength } from '../trade/work-order';
import { askedSteps, binds } from './asked-steps';
import { memo } from './memo';

/** One step of the work, and the part it is done to where there are several of its kind. */
export interface WorkStep {
  readonly step: StepKind;
  readonly part?: Placed;
  /** What has to come before it, and why. */
  readonly reasons: readonly { readonly after: StepKind; readonly because: string }[];
  /** Cautions to be read before it. */
  readonly cautions: readonly CautionId[];
}

/** Steps that a good bench does beside those that the parts ask for. */
function customary(build: Build): StepKind[] {
  const { board, processor, cooler, memory, supply, case: box, radiators } = build.parts;
  const { strap } = build.file.bench;
  const strapped = strap.$.stated && strap.worn.value !== false;
  const kinds: [boolean, readonly StepKind[]][] = [
    [true, ['read handbooks', 'take parts from bags', strapped ? 'wear strap' : 'equalise']],
    [strapped, ['take off strap']],
    [build.file.place['brought-from'].value !== undefined, ['let parts warm up']],
    [!!box, ['open case', 'check inside', 'close case']],
    [!!box && box.part.standoffs.removable.value !== false, ['set standoffs']],
    [!!box && board?.part['shield-fitted'].value !== true, ['fit I/O shield']],
    [!!supply, ['unplug mains', 'drain residual charge', 'plug in mains', 'first start']],
    [!!(processor && board && pinsOn(board.part.socket.value ?? '') === 'board'), ['take off socket cover']],
    [!!cooler, ['clean surfaces', 'connect fan cables']],
    [!!cooler?.part.film.value, ['remove film']],
    [!!cooler?.part.pump.$.stated, ['connect pump cable']],
    [!!cooler && cooler.at.mount.value !== undefined, ['fit radiator']],
    [!!(board && supply), ['connect 24-pin', 'connect EPS']],
    [!!(board && processor && box), ['bench start']],
    [(box?.part['front-cables'].value?.length ?? 0) > 0, ['connect front cables']],
    [radiators.length > 0, ['leak test']],
    [memory.some((kit) => (kit.part.type.value ?? 'DDR5') === 'DDR5'), ['wait for memory training']],
    [memory.length > 0, ['default settings', 'memory test']],
    [memory.some(profiled), ['set profile']],
    [true, ['install system', 'stress test', 'measure', 'record settings', 'hand over']],
    [build.parts.drives.length > 0, ['drive test']],
  ];
  return kinds.flatMap(([is, these]) => (is ? these : []));
}

/** Whether a kit runs by its profile: said so without a speed, or set faster than it is known to run by itself. */
function profiled(kit: Placed<'memory'>): boolean {
  if (!kit.at.speed.entry) return kit.at.profile.value === 'used';
  const [speed, standard] = [kit.at.speed.value, kit.part['standard-speed'].value];
  return speed !== undefined && !(standard && speed.hi <= standard.lo);
}

/**
 * `before`, `after`: done for an earlier time with power, and undone after it; the rules of order speak of the other
 * steps.
 */
interface Node {
  readonly kind: StepKind;
  readonly part?: Placed;
  readonly before?: StepKind;
  readonly after?: StepKind;
}

const rank = new Map<StepKind, number>(STEP_KINDS.map((kind, i) => [kind, i]));

/** Whether the board is powered for an update by itself, before anything is fitted; a service does that elsewhere. */
function updatesFirst(build: Build): boolean {
  const update = build.file.bench['firmware-update'];
  return (
    update.$.stated &&
    !!build.parts.board &&
    !!build.parts.supply &&
    update.by.value !== 'service' &&
    update.by.value !== 'with this processor'
  );
}

/** The nodes of the derived order, in the order of the kinds; cards from the shortest. */
function nodesOf(build: Build): Node[] {
  const asked = askedSteps(build)
    .filter(({ truth }) => truth.is !== false)
    .map(({ kind, part }): Node => ({ kind, ...(part ? { part } : {}) }));
  const usual = customary(build).filter((kind) => !asked.some((node) => node.kind === kind));
  const nodes = [...asked, ...usual.map((kind): Node => ({ kind }))];
  const starts: StepKind[] = [
    ...(updatesFirst(build) ? ['update firmware' as const] : []),
    ...(usual.includes('bench start') ? ['bench start' as const] : []),
  ];
  return withStarts(nodes, starts).sort(
    (a, b) => rank.get(a.kind)! - rank.get(b.kind)! || cardLength(a.part) - cardLength(b.part),
  );
}

/** Loose parts are on no mains: the cable comes out after each time with power but the last, and hands go in again. */
function withStarts(nodes: readonly Node[], starts: readonly StepKind[]): Node[] {
  if (starts.length === 0) return [...nodes];
  const has = (kind: StepKind): boolean => nodes.some((node) => node.kind === kind);
  const early = new Set<StepKind>();
  const extra = starts.flatMap((start): Node[] => {
    const cables = (start === 'bench start' ? benchCables : boardCables).filter(
      (kind) => has(kind) && !early.has(kind),
    );
    cables.forEach((kind) => early.add(kind));
    const waits =
      start === 'bench start' && has('wait for memory training')
        ? [{ kind: 'wait for memory training' as const, after: start }]
        : [];
    return [
      ...[...cables, ...(has('take off strap') ? ['take off strap' as const] : [])].map(
        (kind): Node => ({ kind, before: start }),
      ),
      ...waits,
      ...handsIn.filter(has).map((kind): Node => ({ kind, after: start })),
    ];
  });
  const moved = (kind: StepKind): boolean =>
    kind === 'unplug mains' ||
    kind === 'drain residual charge' ||
    (kind === 'wait for memory training' && starts.includes('bench start'));
  return [...nodes.filter(({ kind }) => !moved(kind)), ...extra];
}

const boardCables: readonly StepKind[] = ['connect 24-pin', 'connect EPS'];
const benchCables: readonly StepKind[] = [...boardCables, 'connect fan cables', 'connect pump cable'];
/** What is done, in this order, before hands go in again. */
const handsIn: readonly StepKind[] = ['unplug mains', 'drain residual charge', 'equalise', 'wear strap'];

const cardLength = (part: Placed | undefined): number =>
  part && (part.role === 'graphics' || part.role === 'cards')
    ? ((part as Placed<'cards'>).part.length.value?.lo ?? 0)
    : 0;

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

  constructor(
    private readonly build: Build,
    private readonly nodes: readonly Node[],
  ) {
    this.later = nodes.map(() => []);
    for (const start of ['update firmware', 'bench start'] as const) this.addStart(start);
    for (const strength of strengths)
      for (const rule of ORDER_RULES) if (rule.strength === strength) this.addRule(rule);
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
    const own = (node: Node): boolean => node.before === start || node.after === start;
    if (at < 0 || !nodes.some(own)) return;
    const off = nodes.findIndex(({ kind, before }) => kind === 'take off strap' && before === start);
    const out = nodes.findIndex(({ kind, after }) => kind === 'unplug mains' && after === start);
    nodes.forEach(({ kind, before, after }, i) => {
      if (before === start)
        this.add(i, at, { before: kind, after: start, because: 'it is needed for it', strength: 'needed' });
      if (before === start && off >= 0 && i !== off)
        this.add(i, off, {
          before: kind,
          after: 'take off strap',
          because: 'the strap is worn until then',
          strength: 'usual',
        });
      if (after === start)
        this.add(at, i, { before: start, after: kind, because: 'it undoes what was done for it', strength: 'usual' });
      if (after === start && kind === 'wait for memory training' && out >= 0)
        this.add(i, out, { before: kind, after: 'unplug mains', because: 'it runs on power', strength: 'usual' });
      if (this.comesLater(start, this.nodes[i]!))
        this.add(at, i, { before: start, after: kind, because: 'hands are off while it has power', strength: 'usual' });
    });
    this.chain(start);
  }

  /**
   * What is begun only after an early time with power: all of it after an update; after the start on the bench, the
   * work in the case.
   */
  private comesLater(start: StepKind, { kind, before, after }: Node): boolean {
    if (after) return false;
    if (start === 'update firmware') return before !== start && kind !== start && rank.get(kind)! > rank.get(start)!;
    return !before && (inCase.has(kind) || this.nodes.some((other) => other.kind === kind && other.before));
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

  private addRule(rule: OrderRule): void {
    this.nodes.forEach((after, j) => {
      if (after.kind !== rule.after || after.before || after.after) return;
      this.nodes.forEach((before, i) => {
        if (before.kind !== rule.before || before.before || before.after) return;
        const { is } = binds(this.build, rule.when, before.part, after.part);
        if (is !== false) this.add(i, j, rule, is === true && rule.strength === 'needed');
      });
    });
  }
}

/**
 * The order of work for this build: what its parts ask for and a good bench adds, each after what it needs. The same
 * build gives the same order; what nothing decides keeps the order of `STEP_KINDS`. Rules whose facts are missing are
 * kept.
 */
export const workOrder = memo((build: Build): readonly WorkStep[] => {
  const nodes = nodesOf(build);
  const { edges } = new Graph(build, nodes);
  const warned = new Set<StepKind>();
  return topologicalOrder(
    nodes.length,
    edges.map(({ edge }) => edge),
  ).map((i) => {
    const { kind, part } = nodes[i]!;
    const reasons = edges
      .filter(({ edge, rule }) => edge[1] === i && rule.strength !== 'usual' && rule.before !== 'read handbooks')
      .map(({ rule }) => ({ after: rule.before, because: rule.because }));
    // A step that comes again repeats no caution: what is read three times is not read.
    const cautions = warned.has(kind) ? [] : cautionsOf(build, kind);
    warned.add(kind);
    return { step: kind, reasons, cautions, ...(part ? { part } : {}) };
  });
});

/** The cautions of a step for these parts. */
function cautionsOf(build: Build, kind: StepKind): readonly CautionId[] {
  const { paste, case: box } = build.parts;
  const more: CautionId[] = [];
  if (kind === 'apply paste' && paste?.part.gallium.value === true) more.push('gallium-paste');
  if (kind === 'open case' && box?.part['glass-panel'].value === true) more.push('glass-panel');
  if (kind === 'hand over' && build.file['hand-over'].transport.value !== undefined) more.push('lifting');
  return [...(STEP_CAUTIONS[kind] ?? []), ...more];
}
