// Modules of a machine against the memory of its build: which kit each is of, and the slot of the board it sits in.
import type { Build } from '../build/build';
import type { BuiltModule } from '../manifest/as-built';
import type { Fact } from '../parts/fact';
import { reportsAs } from './built-names';
import { copyWith, figure, number, total, type Figure, writtenAt } from './figure';
import { valuesOf } from './lists';
import type { Board, Kit } from './memory';
import { memo } from './memo';

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
  board: Board,
  { slot, locator }: BuiltModule,
): { name: string; by: Fact<string> } | undefined {
  const { locators, slots } = board.part.memory;
  const all = valuesOf(slots) ?? [];
  const listed = [...(locators.value ?? [])].find(
    ([name, words]) => all.includes(name) && sameWords(words.value, locator.value),
  );
  if (listed) return { name: listed[0], by: locator };
  const named = all.find((name) => slot.value !== undefined && name.toUpperCase() === slot.value.toUpperCase());
  return named === undefined || locators.value?.size ? undefined : { name: named, by: slot };
}

const sameWords = (a: string | undefined, b: string | undefined): boolean =>
  a !== undefined && b !== undefined && bare(a) === bare(b);
const bare = (text: string): string => text.toLowerCase().replace(/[^a-z0-9]/g, '');

/** The kits that a module may be of: by its part number, else by its capacity. */
export function kitsOf(build: Build, module: BuiltModule): readonly Kit[] {
  const { memory } = build.parts;
  const named = memory.filter((kit) => reportsAs(kit, module.reports) === 'same');
  if (named.length > 0) return named;
  return memory.filter((kit) => reportsAs(kit, module.reports) === 'open' && holdsAsMuch(kit, module));
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
