// The steps of the derived order before they are put in order: what is asked for, and what an early start adds.
import type { Build, Placed } from '../build/build';
import { STEP_KINDS, type StepKind } from '../trade/steps';
import { askedSteps } from './asked-steps';
import { customarySteps, hasPower } from './customary-steps';
import { boardCables, startNeeds } from './start-needs';

/**
 * `before`, `after`: done for an earlier time with power, and undone after it; the rules of order speak of the other
 * steps.
 */
export interface WorkNode {
  readonly kind: StepKind;
  readonly part?: Placed;
  readonly before?: StepKind;
  readonly after?: StepKind;
  readonly note?: string;
}

export const rankOf = new Map<StepKind, number>(STEP_KINDS.map((kind, i) => [kind, i]));

/** The nodes of the derived order, in the order of the kinds; cards from the shortest. */
export function workNodes(build: Build): WorkNode[] {
  const asked = askedSteps(build)
    .filter(({ truth }) => truth.is !== false)
    .map(({ kind, part }): WorkNode => ({ kind, ...(part ? { part } : {}) }));
  const usual = customarySteps(build).filter((kind) => !asked.some((node) => node.kind === kind));
  const nodes = [...asked, ...usual.map((kind): WorkNode => ({ kind }))];
  const starts: StepKind[] = [
    ...(updatesFirst(build) ? ['update firmware' as const] : []),
    ...(usual.includes('bench start') ? ['bench start' as const] : []),
  ];
  return withStarts(build, nodes, starts).sort(
    (a, b) => rankOf.get(a.kind)! - rankOf.get(b.kind)! || cardLength(a.part) - cardLength(b.part),
  );
}

/**
 * Whether the board is powered for an update by itself, before its own parts are fitted; a service does that
 * elsewhere.
 */
function updatesFirst(build: Build): boolean {
  const update = build.file.bench['firmware-update'];
  return (
    update.$.stated &&
    !!build.parts.board &&
    hasPower(build) &&
    update.by.value !== 'service' &&
    update.by.value !== 'with this processor'
  );
}

/** Loose parts are on no mains: the cable comes out after each time with power but the last, and hands go in again. */
function withStarts(build: Build, nodes: readonly WorkNode[], starts: readonly StepKind[]): WorkNode[] {
  if (starts.length === 0) return [...nodes];
  const kinds = new Set(nodes.map(({ kind }) => kind));
  const donor =
    starts.includes('update firmware') && build.file.bench['firmware-update'].by.value === 'older processor';
  const early = new Set<StepKind>();
  const extra = starts.flatMap((start): WorkNode[] => {
    const before = start === 'bench start' ? forBench(build) : forUpdate(build, donor);
    const own = before.filter(({ kind }) => (kinds.has(kind) || donorOnly.has(kind)) && !early.has(kind));
    for (const { kind } of own) if (boardCables.has(kind)) early.add(kind);
    return [
      ...[...own, ...only(kinds, 'take off strap')].map((node): WorkNode => ({ ...node, before: start })),
      ...(start === 'bench start'
        ? only(kinds, 'wait for memory training').map((one) => ({ ...one, after: start }))
        : []),
      ...handsIn.flatMap((kind) => only(kinds, kind).map((one): WorkNode => ({ ...one, after: start }))),
    ];
  });
  const moved = new Set<StepKind>([
    'unplug mains',
    'drain residual charge',
    ...(starts.includes('bench start') ? ['wait for memory training' as const] : []),
    ...(donor ? ['fit memory' as const, 'take off socket cover' as const] : []),
  ]);
  const again = donor ? `take out ${olderProcessor(build)} first` : undefined;
  const left = nodes
    .filter(({ kind }) => !moved.has(kind))
    .map((node) => (again && node.kind === 'fit processor' ? { ...node, note: again } : node));
  return [...left, ...extra];
}

const only = (kinds: ReadonlySet<StepKind>, kind: StepKind): WorkNode[] => (kinds.has(kind) ? [{ kind }] : []);

/** What a start on the bench has plugged in. */
const forBench = (build: Build): WorkNode[] =>
  startNeeds(build, 'bench start').flatMap(({ kind, truth }) =>
    kind.startsWith('connect') && truth.is !== false ? [{ kind }] : [],
  );

/**
 * What an update has in before it: the cables of the board and the mains; an older processor runs as any other does.
 */
function forUpdate(build: Build, donor: boolean): WorkNode[] {
  const cables = [...boardCables].map((kind): WorkNode => ({ kind }));
  if (!donor) return [...cables, { kind: 'plug in mains' }];
  return [
    { kind: 'fit processor', note: olderProcessor(build) },
    { kind: 'take off socket cover' },
    { kind: 'fit memory' },
    { kind: 'apply paste', note: 'for the update' },
    { kind: 'fit cooler', note: 'for the update' },
    ...cables,
    { kind: 'connect fan cables', note: 'for the update' },
    { kind: 'connect pump cable', note: 'for the update' },
    { kind: 'plug in mains' },
  ];
}

/** An older processor wants a cooler, whether or not the build's own stands in the list. */
const donorOnly: ReadonlySet<StepKind> = new Set(['fit processor', 'fit cooler']);

function olderProcessor(build: Build): string {
  const { model, family } = build.file.bench['firmware-update']['older-processor'];
  const name = model.text || family.text;
  return name === '' ? 'the older processor' : `the older ${name}`;
}

/** What is done, in this order, before hands go in again. */
export const handsIn: readonly StepKind[] = ['unplug mains', 'drain residual charge', 'equalise', 'wear strap'];

const cardLength = (part: Placed | undefined): number =>
  part && (part.role === 'graphics' || part.role === 'cards')
    ? ((part as Placed<'cards'>).part.length.value?.lo ?? 0)
    : 0;
