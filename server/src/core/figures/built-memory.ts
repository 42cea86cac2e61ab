// Modules of a machine against the memory of its build: which kit each is of, and the slot of the board it sits in.
import type { Build } from '../build/build';
import type { BuiltModule } from '../manifest/as-built';
import type { Fact } from '../parts/fact';
import { reportsAs } from './built-names';
import { copyWith, figure, number, total, type Figure, writtenAt } from './figure';
import { valuesOf } from './lists';
import type { Board, Kit } from './memory';
import { memo } from './memo';
import { howMany } from './power';

export const builtModules = (build: Build): readonly BuiltModule[] | undefined => build.machine?.memory.value;

/** All that the modules of a machine hold. */
export const builtCapacity = memo((build: Build): Figure | undefined => {
  const modules = builtModules(build);
  return (
    modules &&
    total(
      'memory found',
      'data-size',
      modules.map(({ capacity }, i) => figure(capacity, `module ${i + 1} found`)),
      { unit: 'GiB' },
    )
  );
});

/** How many modules a machine has. */
export function builtCount(modules: readonly BuiltModule[]): Figure {
  const first = modules[0]?.capacity;
  const count = number(modules.length, 'modules found', 'counted in the machine');
  return first?.node ? copyWith(count, { from: writtenAt(first) }) : count;
}

/** The slot of the board that a module sits in; undefined where the firmware’s words do not tell. */
export function moduleSlot(
  build: Build,
  board: Board,
  { slot, locator }: BuiltModule,
): { name: string; by: Fact<string> } | undefined {
  const { locators, slots } = board.part.memory;
  const all = valuesOf(slots) ?? [];
  const words = wordsOf(build, locator.value);
  const listed = [...(locators.value ?? [])].find(
    ([name, { value }]) => all.includes(name) && words.includes(bare(value ?? '')),
  );
  if (listed) return { name: listed[0], by: locator };
  if (locators.value?.size) return undefined;
  const own = slot.value === undefined ? [] : all.filter((name) => isSlot(name, slot.value!));
  if (own.length === 1) return { name: own[0]!, by: slot };
  const printed = slot.value === undefined ? all.find((name) => words.includes(bare(name))) : undefined;
  return printed === undefined ? undefined : { name: printed, by: locator };
}

/** `DIMM_A2` and `a2` name one slot. */
export const isSlot = (a: string, b: string): boolean => plainSlot(a) === plainSlot(b);
const plainSlot = (name: string): string => name.toUpperCase().replace(/^DIMM[_ -]?/, '');

/** All words of a module’s place; the locator by itself too, where no other module’s is the same. */
function wordsOf(build: Build, locator: string | undefined): readonly string[] {
  if (locator === undefined) return [];
  const last = (text: string): string => bare(text.slice(text.lastIndexOf('/') + 1));
  const alike = (builtModules(build) ?? []).filter(({ locator: { value } }) => last(value ?? '') === last(locator));
  return alike.length === 1 ? [bare(locator), last(locator)] : [bare(locator)];
}

const bare = (text: string): string => text.toLowerCase().replace(/[^a-z0-9]/g, '');

/** The kits that a module may be of: by its part number, else by its capacity. */
export function kitsOf(build: Build, module: BuiltModule): readonly Kit[] {
  const { memory } = build.parts;
  const named = memory.filter((kit) => reportsAs(kit, module.reports) === 'same');
  if (named.length > 0) return named;
  return memory.filter((kit) => reportsAs(kit, module.reports) === 'open' && holdsAsMuch(kit, module));
}

/** The modules that can be of one kit alone. */
export const modulesOf = (build: Build, kit: Kit): readonly BuiltModule[] =>
  (builtModules(build) ?? []).filter((module) => {
    const [own, ...others] = kitsOf(build, module);
    return own === kit && others.length === 0;
  });

export const isFitted = (build: Build, kit: Kit): boolean => modulesOf(build, kit).length > 0;

/** A module that no kit of the build lists; `kit`: the one that it may belong to, or stand for. */
interface StrangeModule {
  readonly module: BuiltModule;
  readonly kit: Kit | undefined;
}

/** Modules of no kit, and those of a kit that has its own already; memory that is soldered down is none of them. */
export function strangeModules(build: Build): readonly StrangeModule[] {
  const { memory, board } = build.parts;
  const [first, ...others] = memory;
  if (!first) return [];
  const soldered = board?.part.memory.soldered;
  if (soldered?.node && !memory.some(({ at }) => at.soldered.value === true)) return [];
  const none = (builtModules(build) ?? []).filter(
    (module) => kitsOf(build, module).length === 0 && module.capacity.value,
  );
  const more = memory.flatMap((kit) => {
    const { hi } = kit.at.soldered.value === true ? { hi: Number.POSITIVE_INFINITY } : howMany(kit);
    return modulesOf(build, kit)
      .slice(Number.isFinite(hi) ? hi : Number.POSITIVE_INFINITY)
      .map((module) => ({ module, kit }));
  });
  const stands = others.length === 0 && !isFitted(build, first) ? first : undefined;
  return [...none.map((module) => ({ module, kit: stands })), ...more];
}

/** A GB of memory is a GiB. */
function holdsAsMuch({ part: { capacity } }: Kit, { capacity: found }: BuiltModule): boolean {
  if (!capacity.value || !found.value) return false;
  const [size, has] = [capacity.value.hi, found.value.hi];
  return size === has || Math.round(size / 1e9) === has / 1024 ** 3;
}

/** The rate that all modules of a machine run at: the slowest of them. */
export function slowest(modules: readonly BuiltModule[]): BuiltModule | undefined {
  const told = modules.filter(({ running }) => running.value);
  const [first] = told;
  return first && told.reduce((a, b) => (b.running.value!.lo < a.running.value!.lo ? b : a), first);
}
