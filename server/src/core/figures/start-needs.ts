// What has to be done before a machine gets power, so that nothing is damaged: by the parts, and by the steps stated.
import type { Build } from '../build/build';
import type { Fact } from '../parts/fact';
import { pinsOn } from '../trade/names';
import type { StepKind } from '../trade/steps';
import { isLiquid, liquidFacts } from './coolers';
import { memoOf, memo } from './memo';
import { powers, statedSteps, type Step } from './steps';
import { any, fits, given, not, sure, type Truth } from './truth';

export type Start = 'bench start' | 'first start';

/** A step that a start needs before it, and whether these parts ask for it. */
export interface StartNeed {
  readonly kind: StepKind;
  readonly truth: Truth;
}

/** Whether a step is a start. */
export const isStart = (step: Step): step is Step & { readonly kind: Start } =>
  step.kind === 'bench start' || step.kind === 'first start';

/** What a start needs; on the bench the fans of the case are not there yet. */
export const startNeeds = memoOf((build: Build, start: Start): readonly StartNeed[] => [
  { kind: 'fit cooler', truth: wantsCooler(build) },
  { kind: 'fill loop', truth: hasLoop(build) },
  { kind: 'connect 24-pin', truth: feeds(build, ['24-pin']) },
  { kind: 'connect EPS', truth: feeds(build, ['EPS 8-pin', 'EPS 4-pin']) },
  { kind: 'connect fan cables', truth: hasFans(build, start) },
  { kind: 'connect pump cable', truth: hasPump(build) },
]);

/** A custom loop is one that the build has radiators for. */
function hasLoop({ parts: { radiators } }: Build): Truth {
  return given(sure(radiators.length > 0), ...radiators.map((one) => one.at.use));
}

/** Whether a processor has to be cooled by a cooler that is fitted: one soldered to its board may bring its own. */
function wantsCooler(build: Build): Truth {
  const { board, processor, cooler } = build.parts;
  if (cooler) return given(sure(true), cooler.at.use);
  if (!processor) return sure(false);
  const socket = board?.part.socket.value ?? processor.part.socket.value ?? '';
  return given(sure(pinsOn(socket) !== 'none'), board?.part.socket, processor.part.socket, processor.at.use);
}

/** Whether the board has one of these power connectors; a board fed by a barrel socket has none of them. */
function feeds(build: Build, connectors: readonly string[]): Truth {
  const { board } = build.parts;
  if (!board) return sure(true);
  const stated = board.part['power-connectors'] as Fact<ReadonlyMap<string, Fact<number>>>;
  // Where the steps plug in one of the two cables, the board is one that has both.
  if (stated.value === undefined && statedSteps(build).some(({ kind }) => kind && boardCables.has(kind)))
    return sure(true);
  return fits(stated, `power connectors of ${board.label}`, (held) =>
    connectors.some((name) => held.has(name) && held.get(name)!.value !== 0),
  );
}

/** The cables that feed a board. Source: ATX12V design guides: a board has both. */
export const boardCables: ReadonlySet<StepKind> = new Set(['connect 24-pin', 'connect EPS']);

function hasFans(build: Build, start: Start): Truth {
  const { cooler, fans, case: box } = build.parts;
  const places = [...(box?.part['fan-places'].value?.values() ?? [])];
  const fitted = places.filter((place) => (place.fitted.value ?? 0) > 0);
  if (start === 'first start' && (fans.length > 0 || fitted.length > 0))
    return given(sure(true), ...fans.map((fan) => fan.at.use), ...fitted.map((place) => place.fitted));
  return cooler ? fits(cooler.part.fans.count, `fans of ${cooler.label}`, (count) => count > 0) : sure(false);
}

/** Whether there is a pump: a loop has one; a cooler says so, or has what only one with a pump has. */
const hasPump = memo((build: Build): Truth => {
  const { cooler, radiators } = build.parts;
  if (radiators.length > 0) return hasLoop(build);
  if (!cooler) return sure(false);
  return given(sure(isLiquid(cooler)), ...liquidFacts(cooler), cooler.at.use);
});

/** What a start lacks: steps that do not stand before it, or before the board was moved into the case. */
export function lacksBefore(build: Build, start: Step & { readonly kind: Start }): readonly StartNeed[] {
  const steps = statedSteps(build);
  const before = steps.slice(0, start.index);
  if (isRefit(build, before)) return [];
  const moved = benchedAt(build, before);
  return startNeeds(build, start.kind).filter(({ kind, truth }) => {
    if (truth.is === false) return false;
    const from = moved >= 0 && boardCables.has(kind) ? moved : 0;
    if (before.some((step) => step.kind === kind && step.index >= from)) return false;
    // What stands behind the start is a matter of order, and judged as such.
    return !ordered.has(kind) || !steps.some((step) => step.kind === kind);
  });
}

const ordered: ReadonlySet<StepKind> = new Set(['fit cooler', 'fill loop']);

/** Work on a machine that has run: it is unplugged or opened first, and neither its board nor its processor goes in. */
function isRefit(build: Build, before: readonly Step[]): boolean {
  const opened = before.findIndex(({ kind }) => kind === 'unplug mains' || kind === 'open case');
  const built = before.some(({ kind }) => kind !== undefined && building.has(kind));
  return !build.parts.board && opened >= 0 && !built;
}

const building: ReadonlySet<StepKind> = new Set([
  'fit board',
  'fit processor',
  'fit cooler',
  'fit supply',
  'fill loop',
  'connect 24-pin',
  'connect EPS',
]);

/** Where a board last had power on the bench, that went into the case after; −1 where none did. */
export function benchedAt(build: Build, before: readonly Step[]): number {
  const fit = before.findLastIndex((step) => step.kind === 'fit board');
  return before.findLastIndex(
    (step, i) => i < fit && (step.kind === 'bench start' || (step.kind === 'update firmware' && powers(build, step))),
  );
}

/** An update that runs on a processor which a step before it fits: it needs what any start does. */
export function isUpdateOnProcessor(build: Build, step: Step): boolean {
  const by = build.file.bench['firmware-update'].by.value;
  return (
    step.kind === 'update firmware' &&
    (by === 'older processor' || by === 'with this processor') &&
    statedSteps(build).some((other) => other.index < step.index && other.kind === 'fit processor')
  );
}

/** Whether nothing of what a start needs is missing; undecided where a fact would ask for more. */
export const startReady = (lacking: readonly StartNeed[]): Truth => not(any(...lacking.map(({ truth }) => truth)));
