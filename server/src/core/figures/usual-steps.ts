// Steps that a good bench does and that a list leaves out: by themselves, and each time hands go in again.
import type { Build } from '../build/build';
import { STATIC_SENSITIVE, EQUALISING, type StepKind } from '../trade/steps';
import { askedSteps } from './asked-steps';
import { customarySteps } from './customary-steps';
import { benchedAt, isUpdateOnProcessor, startNeeds, type Start } from './start-needs';
import { powers, statedSteps, type Step } from './steps';

/** Steps of which four make a list that is meant to be whole. */
const frame: ReadonlySet<StepKind> = new Set([
  'fit processor',
  'fit board',
  'close case',
  'plug in mains',
  'first start',
  'install system',
  'hand over',
]);

/** Whether the list is meant to lead from the parts to a machine. */
export const isWhole = (build: Build): boolean =>
  new Set(statedSteps(build).flatMap(({ kind }) => (kind && frame.has(kind) ? [kind] : []))).size >= 4;

/** Judged by checks of their own. */
const elsewhere: ReadonlySet<StepKind> = new Set([
  'equalise',
  'wear strap',
  'take off strap',
  'bench start',
  'first start',
  'wait for memory training',
  'remove film',
  'set profile',
  'connect 24-pin',
  'connect EPS',
  'connect fan cables',
  'connect pump cable',
  'leak test',
  'unplug mains',
  'drain residual charge',
]);

/** The steps of custom that a list nowhere has, in the order of the work. */
export function usualLeftOut(build: Build): readonly StepKind[] {
  const stated = new Set(statedSteps(build).map(({ kind }) => kind));
  const asked = new Set(askedSteps(build).map(({ kind }) => kind));
  return customarySteps(build).filter((kind) => !stated.has(kind) && !asked.has(kind) && !elsewhere.has(kind));
}

/** A time with power after which hands go in again, with what is not done in between. */
export interface Reopened {
  readonly power: Step;
  readonly next: Step;
  readonly lacks: readonly StepKind[];
}

/** Each time hands go in again after power: drained, and equalised once more. */
export function reopened(build: Build): readonly Reopened[] {
  const steps = statedSteps(build);
  return steps.flatMap((power, i): Reopened[] => {
    if (!powers(build, power)) return [];
    const next = steps.findIndex((step, j) => j > i && (powers(build, step) || isTouch(step)));
    if (next < 0 || !isTouch(steps[next]!)) return [];
    const between = steps.slice(i + 1, next).map(({ kind }) => kind);
    const lacks: StepKind[] = [
      ...(between.includes('unplug mains') && !between.includes('drain residual charge')
        ? ['drain residual charge' as const]
        : []),
      ...(between.some((kind) => kind && EQUALISING.has(kind)) ? [] : ['equalise' as const]),
    ];
    return lacks.length === 0 ? [] : [{ power, next: steps[next]!, lacks }];
  });
}

const isTouch = ({ kind }: Step): boolean => kind !== undefined && STATIC_SENSITIVE.has(kind);

/** A step that has power without one before it that plugs the mains in; a start on the bench says so by itself. */
export function unplugged(build: Build): Step | undefined {
  let live = false;
  for (const step of statedSteps(build)) {
    if (step.kind === 'unplug mains') live = false;
    else if (step.kind === 'plug in mains' || step.kind === 'bench start') live = true;
    else if (!live && powers(build, step)) return step;
  }
  return undefined;
}

/** Cables of fans and pump that were in on the bench and are not plugged in again once the board is in its case. */
export function notAgain(build: Build, start: Step & { readonly kind: Start }): readonly StepKind[] {
  const steps = statedSteps(build);
  const bench = benchedAt(build, steps.slice(0, start.index));
  if (bench < 0) return [];
  const since = new Set(steps.slice(bench, start.index).map(({ kind }) => kind));
  const then = new Set(steps.slice(0, bench).map(({ kind }) => kind));
  return startNeeds(build, 'first start').flatMap(({ kind, truth }) =>
    again.has(kind) && truth.is === true && then.has(kind) && !since.has(kind) ? [kind] : [],
  );
}

const again: ReadonlySet<StepKind> = new Set(['connect fan cables', 'connect pump cable']);

/** What an update that runs on a processor wants before it, as any start does, and does not have. */
export function unreadyUpdate(build: Build): { readonly step: Step; readonly lacks: readonly StepKind[] } | undefined {
  const steps = statedSteps(build);
  const step = steps.find((one) => isUpdateOnProcessor(build, one));
  if (!step) return undefined;
  const done = new Set(steps.slice(0, step.index).map(({ kind }) => kind));
  const other = build.file.bench['firmware-update'].by.value === 'older processor';
  const lacks = startNeeds(build, 'first start').flatMap(({ kind, truth }) =>
    // An older processor runs under whatever cooler is at hand.
    truth.is === true && kind !== 'fill loop' && !(other && kind === 'connect pump cable') && !done.has(kind)
      ? [kind]
      : [],
  );
  return lacks.length === 0 ? undefined : { step, lacks };
}

/** A cooler that goes on again without fresh paste, in a list that spreads some. */
export function dryCooler(build: Build): Step | undefined {
  const steps = statedSteps(build);
  const wanted = askedSteps(build).some(({ kind, truth }) => kind === 'apply paste' && truth.is === true);
  // One cooler and one paste are a matter of order.
  if (!wanted || steps.filter(({ kind }) => kind === 'fit cooler').length < 2) return undefined;
  return steps.find((step, i) => {
    if (step.kind !== 'fit cooler') return false;
    const last = steps.findLastIndex(({ kind }, j) => j < i && kind === 'fit cooler');
    return !steps.slice(last + 1, i).some(({ kind }) => kind === 'apply paste');
  });
}
