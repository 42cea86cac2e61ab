// The order of work on the sheet, in its stretches: on the bench, in the case, running, handed over.
import { listed } from '../../core/text';
import type { Step } from '../../core/figures/steps';
import { HANDLING, RUNNING, type StepKind } from '../../core/trade/steps';
import { reasonsOf, type SharedReason } from '../order';
import type { Context } from './context';
import { mergedSteps, type MergedStep, type OrderOf } from './merged-steps';
import { oneLine, upperFirst, type SheetStep } from './model';
import { StepCautions } from './step-cautions';
import { thingsOf } from './step-things';

export interface Work {
  readonly of: OrderOf;
  /** Before the first part is taken in hand. */
  readonly before: readonly SheetStep[];
  readonly bench: readonly SheetStep[];
  readonly inCase: readonly SheetStep[];
  readonly start: readonly SheetStep[];
  readonly tests: readonly SheetStep[];
  readonly handOver: readonly SheetStep[];
  readonly kinds: readonly StepKind[];
  /** The step of a kind by its number. */
  readonly numberOf: (kind: StepKind) => number | undefined;
}

const testing: ReadonlySet<StepKind> = new Set<StepKind>([
  'memory test',
  'set profile',
  'drive test',
  'install system',
  'stress test',
  'measure',
]);

/** What follows a start on the bench before the work goes on. */
const afterBench: ReadonlySet<StepKind> = new Set<StepKind>([
  'wait for memory training',
  'unplug mains',
  'drain residual charge',
  'equalise',
  'wear strap',
]);

export function workOf(context: Context): Work {
  const { of, steps } = mergedSteps(context.build, context.findings);
  const cautions = new StepCautions();
  const printed = steps.map((step, i) => sheetStep(context, step, i + 1, cautions));
  const cuts = cutsOf(steps.map(({ kind }) => kind));
  const part = (n: number): readonly SheetStep[] => printed.slice(cuts[n], cuts[n + 1]);
  return {
    of,
    before: part(0),
    bench: part(1),
    inCase: part(2),
    start: part(3),
    tests: part(4),
    handOver: part(5),
    kinds: steps.flatMap(({ kind }) => kind ?? []),
    numberOf: (kind) => {
      const i = steps.findIndex((step) => step.kind === kind);
      return i < 0 ? undefined : i + 1;
    },
  };
}

/** Where each stretch begins; they follow one another, so that no step changes its place. */
function cutsOf(kinds: readonly (StepKind | undefined)[]): readonly number[] {
  const end = kinds.length;
  const or = (at: number, other: number): number => (at < 0 ? other : at);
  const first = or(kinds.lastIndexOf('first start'), end);
  const plug = kinds.lastIndexOf('plug in mains', first);
  const run = plug >= 0 && plug > kinds.indexOf('bench start') ? plug : first;
  const test = or(
    kinds.findIndex((kind, i) => i >= run && kind !== undefined && testing.has(kind)),
    or(kinds.indexOf('record settings', run), or(kinds.indexOf('hand over', run), end)),
  );
  const lastTest = kinds.findLastIndex((kind) => kind !== undefined && testing.has(kind));
  const over = Math.max(test, lastTest + 1);
  const hand = Math.min(
    or(
      kinds.findIndex((kind) => kind !== undefined && HANDLING.has(kind)),
      run,
    ),
    run,
  );
  let bench = kinds.indexOf('bench start');
  if (bench < hand || bench >= run) bench = hand;
  else
    do bench++;
    while (bench < run && kinds[bench] !== undefined && afterBench.has(kinds[bench]!));
  return [0, hand, bench, run, test, over, end];
}

function sheetStep(context: Context, step: MergedStep, number: number, cautions: StepCautions): SheetStep {
  const { build, places } = context;
  const { derived, stated, kind } = step;
  const told = derived ?? (kind && { step: kind, ...(stated?.part ? { part: stated.part } : {}) });
  const things = told ? thingsOf(build, places, told) : [];
  const place = stated ? `steps.${stated.index}` : undefined;
  const notes = [
    ...(derived?.note ? [`${upperFirst(derived.note)}.`] : []),
    ...(stated ? ownNote(context, stated) : []),
    ...(stated && !derived && kind ? ['Listed by the build; its parts do not ask for it.'] : []),
  ];
  return {
    number,
    title: titleOf(step),
    ...(place === undefined ? {} : { place }),
    cautions: cautions.before(step, number),
    things,
    notes,
    reasons: derived
      ? reasonsOf(derived)
          .filter(({ after }) => !isPlain(derived.step, after))
          .map(reasonText)
      : [],
    findings: place === undefined ? [] : places.findingsAt(place),
  };
}

/** That a machine has to run before it is tested goes without saying. */
const isPlain = (kind: StepKind, after: readonly StepKind[]): boolean =>
  RUNNING.includes(kind) && after.length === 1 && after[0] === 'first start';

/** What the build says of a step; words that would do harm are not printed where someone might follow them. */
function ownNote({ findings, places }: Context, { index, path, group }: Step): readonly string[] {
  const text = oneLine(group.note.text);
  if (text === '') return [];
  const harms = findings.some(({ grade, subject }) => grade === 'harm' && subject === `${path}.note`);
  const numbers = places.findingsAt(`steps.${index}.note`);
  return [
    harms
      ? `The build’s own words for it would do harm, and are left out: see finding ${listed(numbers.map(String))}.`
      : text,
  ];
}

/** So many steps are named in a reason; more of them are all that came before. */
const mostNamed = 5;

function reasonText({ after, because }: SharedReason): string {
  return `After ${after.length > mostNamed ? `${after.length} of the steps above` : listed(after)}: ${because}.`;
}

function titleOf({ kind, stated }: MergedStep): string {
  const words = kind ?? oneLine(stated?.group.do.text ?? '');
  return words === '' ? 'Read the caution' : upperFirst(words);
}
