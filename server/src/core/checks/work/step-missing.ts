// Steps that the build’s parts ask for and that its list leaves out.
import type { Build } from '../../build/build';
import { sentence } from '../../figures/sentence';
import { statedSteps, type Step } from '../../figures/steps';
import { isStart } from '../../figures/start-needs';
import { all, not, sure } from '../../figures/truth';
import { askedOnceRunning, askedSteps, type AskedStep } from '../../figures/asked-steps';
import { RUNNING, STEP_KINDS, type StepKind } from '../../trade/steps';
import { ORDER_RULES } from '../../trade/work-order';
import type { Value } from '../../yaml';
import { listed } from '../../text';
import { check } from '../check';
import type { FixIdea } from '../kit';
import { aroundPower, atSteps, insertSteps, stepAnswer } from './steps-kit';

export default check({
  id: 'step-missing',
  area: 'work',
  grade: 'stop',
  what:
    'Where the order of work is stated, it fits every part of the build, and does every test of its ' +
    'acceptance. What a start harms without is judged at the start.',
  why: 'A sheet that leaves a step out is followed as it stands; what was forgotten is found when the case is closed.',
  source: 'common practice',
  limits: ['One finding for the whole list.', 'Tests are asked for once a step starts the machine.'],
  remarks: [
    'The connections for a first start, the leak test, the bench start, training and the cold plate’s ' +
      'film have checks of their own.',
  ],
  examples: [
    {
      faulty: `
parts:
  processor: { socket: AM5 }
  memory: [{ slots: [A2] }]
steps:
#^^^^
  - equalise
  - fit processor
`,
      mended: `
parts:
  processor: { socket: AM5 }
  memory: [{ slots: [A2] }]
steps:
  - equalise
  - fit processor
  - fit memory
`,
    },
  ],
  test(build, report) {
    const steps = statedSteps(build);
    if (!steps.some((step) => step.kind !== undefined)) return;
    const asked = askedOf(build, steps);
    if (asked.length === 0) return;
    const open = asked.filter((one) => one.truth.is !== false && !steps.some((step) => does(step, one)));
    const [sure, perhaps] = [left(open), open.filter((one) => one.truth.is === undefined)];
    // One finding for all of them: a list that is half written is one thing to do.
    if (sure.length > 0 || perhaps.length === 0)
      report(
        stepAnswer(build, atSteps(build, 'missing'), all(...sure.map((one) => not(one.truth))), {
          broken: () =>
            sentence`The build asks for ${shortened(sure.map(nameOf))}; no step does
              ${sure.length > 1 ? 'them' : 'it'}.`,
          ...(sure.every(({ kind }) => lighter.has(kind)) ? { grade: 'shortfall' as const } : {}),
          fixes: () => [insertAll(build, sure)],
        }),
      );
    // What may be asked for is an answer of its own only beside a finding, which its fix has to clear.
    if (perhaps.length > 0)
      report(
        stepAnswer(
          build,
          atSteps(build, sure.length > 0 ? 'perhaps missing' : 'missing'),
          all(...perhaps.map((one) => not(one.truth))),
          {
            broken: () => sentence`The build may ask for ${shortened(perhaps.map(nameOf))}.`,
          },
        ),
      );
  },
});

/** Without these a machine is built and runs; it is less well made, or less proven. */
const lighter: ReadonlySet<StepKind> = new Set([
  'set standoffs',
  'fit I/O shield',
  'fit card support',
  'memory test',
  'set profile',
  'drive test',
  'stress test',
  'measure',
  'record settings',
]);

/** What the parts ask for, and, once a step starts the machine, what its acceptance does. */
function askedOf(build: Build, steps: readonly Step[]): readonly AskedStep[] {
  const starts = steps.some(isStart);
  const asked = askedSteps(build).filter(({ kind }) => !starts || !atStart.has(kind));
  return [
    ...asked,
    ...(starts ? askedOnceRunning(build) : []),
    ...(startsAfterMove(steps) ? [] : [{ kind: 'first start' as const, truth: yes }]),
  ];
}

/** Judged at the start, which does harm without them. */
const atStart: ReadonlySet<StepKind> = new Set(['fit cooler', 'fill loop']);

/** Whether what needs a running machine comes behind a start that the last move of the board did not undo. */
function startsAfterMove(steps: readonly Step[]): boolean {
  const runs = steps.findLastIndex(({ kind }) => kind !== undefined && RUNNING.includes(kind));
  const moved = steps.findLastIndex(({ kind }, i) => i < runs && (kind === 'fit board' || kind === 'plug in mains'));
  return moved < 0 || steps.some((step, i) => i < runs && isStart(step) && (i > moved || step.kind === 'first start'));
}

const yes = sure(true);

/** Those that are known to be asked for. */
const left = (open: readonly AskedStep[]): AskedStep[] => open.filter((one) => one.truth.is === true);

const nameOf = ({ kind, part }: AskedStep): string => (part ? `${kind} ${part.label}` : kind);
const shortened = (names: readonly string[]): string =>
  listed(names.length > 4 ? [...names.slice(0, 3), 'others'] : names);

/** Whether a step does what is asked: of the right kind, and for this part or for all of its kind. */
function does(step: Step, asked: AskedStep): boolean {
  if (step.kind === undefined || !(asked.instead ?? [asked.kind]).includes(step.kind)) return false;
  return !asked.part || step.group.part.value === undefined || step.part === asked.part;
}

/** One change that puts each of them in its place among those stated and those put in before it. */
function insertAll(build: Build, asked: readonly AskedStep[]): FixIdea | undefined {
  const row: Item[] = statedSteps(build).map(({ index, kind }) => ({ index, ...(kind ? { kind } : {}) }));
  for (const one of [...asked].sort((a, b) => rank(a.kind) - rank(b.kind))) {
    const place = placeFor(row, one.kind);
    const next = row.slice(place).find((item) => item.index !== undefined)?.index ?? statedSteps(build).length;
    const around = one.kind === 'update firmware' ? aroundPower(build, next, 'update firmware') : [];
    row.splice(
      place,
      0,
      ...(around.length > 0
        ? around.map((kind) => ({ kind, value: kind }))
        : [{ kind: one.kind, value: written(build, one) }]),
    );
  }
  const groups = new Map<number, Value[]>();
  row.forEach((item, i) => {
    if (item.value === undefined) return;
    const next = row.slice(i).find((later) => later.index !== undefined)?.index ?? statedSteps(build).length;
    groups.set(next, [...(groups.get(next) ?? []), item.value]);
  });
  const edits = [...groups].map(([index, values]) => insertSteps(build, index, values, '')?.edits);
  const title = asked.length > 2 ? 'Insert the steps that the parts ask for' : `Insert ${listed(asked.map(nameOf))}`;
  return edits.every((some) => some !== undefined)
    ? { type: 'text', title, doc: build.doc, edits: edits.flat() }
    : undefined;
}

interface Item {
  readonly kind?: StepKind;
  /** Its number among those stated. */
  readonly index?: number;
  readonly value?: Value;
}

function written(build: Build, { kind, part }: AskedStep): Value {
  const several = part && askedSteps(build).some((other) => other.kind === kind && other.part !== part);
  return several ? { do: kind, part: part.label } : kind;
}

const rank = (kind: StepKind): number => STEP_KINDS.indexOf(kind);

/** Where a new step may stand: behind what it needs, before what needs it, and there by the order of the kinds. */
function placeFor(row: readonly Item[], kind: StepKind): number {
  const rules = ORDER_RULES.filter((rule) => rule.strength !== 'usual');
  const first = (of: StepKind, from = 0): number => row.findIndex((item, i) => i >= from && item.kind === of);
  const from = 1 + Math.max(-1, ...rules.filter((rule) => rule.after === kind).map((rule) => first(rule.before)));
  const to = Math.min(
    row.length,
    ...rules
      .filter((rule) => rule.before === kind)
      .map((rule) => first(rule.after, from))
      .filter((at) => at >= 0),
  );
  const next = row.findIndex(
    (item, i) => i >= from && i < to && item.kind !== undefined && rank(item.kind) > rank(kind),
  );
  return next < 0 ? to : next;
}
