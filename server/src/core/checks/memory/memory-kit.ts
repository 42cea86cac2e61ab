// What checks of memory share: the place of all memory together, moves to the right slots, speeds to set.
import type { Build } from '../../build/build';
import { fillOrder, slotsNamed, type Kit } from '../../figures/memory';
import { memorySpeed, ratedSpeed, populationSpeed } from '../../figures/memory-speed';
import { howMany } from '../../figures/power';
import { inUnit } from '../../quantity';
import type { Edit } from '../../text';
import { setValue } from '../../yaml';
import { atPath, change, putOn, type FixIdea, type Target, type TextFix } from '../kit';

/** The place of all kits together: the key above them. */
export function atMemory(build: Build): Target {
  return atPath(build, 'parts.memory');
}

/** Kits by their part file; one that is spelled out stands alone. */
export function byPart(memory: readonly Kit[]): Iterable<readonly Kit[]> {
  const groups = new Map<string, Kit[]>();
  for (const kit of memory) {
    const name = kit.used?.name ?? kit.path;
    groups.set(name, [...(groups.get(name) ?? []), kit]);
  }
  return groups.values();
}

/** Moves every kit that names slots to those which the board fills first; undefined where no file states them. */
export function moveMemory(build: Build): TextFix | undefined {
  const { board, memory } = build.parts;
  const order = board && fillOrder(board);
  if (!order || 'missingFacts' in order) return undefined;
  const free = [...order.order];
  const edits = memory.map((kit) => {
    const slots = free.splice(0, howMany(kit).hi);
    const { node } = kit.at.slots;
    return slotsNamed(kit) && node ? setValue(build.doc.parsed, node, slots) : [];
  });
  const into = order.order.slice(0, order.order.length - free.length);
  const all = together(edits);
  return all && { type: 'text', title: `Move the memory to ${into.join(', ')}`, doc: build.doc, edits: all };
}

/** A speed as it is written: whole MT/s, never more than there is. */
export const writtenSpeed = (transfersPerSecond: number): string =>
  `${Math.floor(inUnit(transfersPerSecond, 'MT/s'))} MT/s`;

/** Sets every kit to the fastest that it and the board’s table allow, where that is faster than now. */
export function* fasterSetting(build: Build): Iterable<FixIdea | undefined> {
  const { memory } = build.parts;
  const now = memorySpeed(build);
  const population = populationSpeed(build);
  const reach = Math.min(...memory.map((kit) => ratedSpeed(kit).lo), population ? population.lo : Infinity);
  if (!now || !Number.isFinite(reach) || !(reach > now.lo)) return;
  const fixes = memory.map((kit) => setKitSpeed(kit, reach));
  const edits = together(fixes.map((fix) => fix?.edits));
  yield edits && fixes[0] && { ...fixes[0], edits };
}

/** Changes that go together: none where one of them is not safe. */
function together(each: readonly (readonly Edit[] | undefined)[]): Edit[] | undefined {
  return each.includes(undefined) ? undefined : each.flatMap((edits) => edits ?? []);
}

/** Sets one kit to a speed. */
export function setKitSpeed(kit: Kit, transfersPerSecond: number): TextFix | undefined {
  const speed = writtenSpeed(transfersPerSecond);
  return kit.at.speed.node
    ? change(kit.at.speed, speed, `Set the speed to ${speed}`)
    : putOn(kit, 'speed', speed, `Set the speed to ${speed}`);
}
