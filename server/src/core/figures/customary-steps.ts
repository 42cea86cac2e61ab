// The steps that a good bench does beside those that the parts ask for.
import type { Build } from '../build/build';
import { pinsOn } from '../trade/names';
import type { StepKind } from '../trade/steps';
import { startNeeds } from './start-needs';
import { runsByProfile } from './asked-steps';

/** The steps of custom for this build's parts, in no order. */
export function customarySteps(build: Build): StepKind[] {
  const { board, processor, cooler, memory, case: box, radiators, drives } = build.parts;
  const { strap } = build.file.bench;
  const strapped = strap.$.stated && strap.worn.value !== false;
  const cables = startNeeds(build, 'first start').filter(
    ({ kind, truth }) => kind.startsWith('connect') && truth.is !== false && hasFor(build, kind),
  );
  const kinds: [boolean, readonly StepKind[]][] = [
    [true, ['read handbooks', 'take parts from bags', strapped ? 'wear strap' : 'equalise']],
    [strapped, ['take off strap']],
    [build.file.place['brought-from'].value !== undefined, ['let parts warm up']],
    [!!box, ['open case', 'check inside', 'close case']],
    [hasPower(build), ['unplug mains', 'drain residual charge', 'plug in mains', 'first start']],
    [!!(processor && board && pinsOn(board.part.socket.value ?? '') === 'board'), ['take off socket cover']],
    [!!cooler, ['clean surfaces']],
    [cooler?.part.film.value === true, ['remove film']],
    [!!cooler && cooler.at.mount.value !== undefined, ['fit radiator']],
    [true, cables.map(({ kind }) => kind)],
    // A loop is filled in its case: nothing runs on the bench before.
    [!!(board && processor && box) && radiators.length === 0, ['bench start']],
    [radiators.length > 0, ['leak test']],
    [memory.some((kit) => (kit.part.type.value ?? 'DDR5') === 'DDR5'), ['wait for memory training']],
    [memory.length > 0, ['default settings', 'memory test']],
    [memory.flatMap((kit) => runsByProfile(kit) ?? []).some(({ is }) => is !== false), ['set profile']],
    [true, ['install system', 'stress test', 'measure', 'record settings', 'hand over']],
    [drives.length > 0, ['drive test']],
  ];
  return kinds.flatMap(([is, these]) => (is ? these : []));
}

/** Whether the build has what a cable is plugged into: the board's own need the board and its power. */
const hasFor = (build: Build, kind: StepKind): boolean =>
  (kind !== 'connect 24-pin' && kind !== 'connect EPS') || (!!build.parts.board && hasPower(build));

/** Whether the build says what feeds it: a supply, or a board that takes no supply's cables. */
export function hasPower({ parts: { board, supply } }: Build): boolean {
  const connectors = board?.part['power-connectors'].value;
  return !!supply || (connectors !== undefined && !connectors.has('24-pin'));
}
