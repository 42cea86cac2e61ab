// The slots that a machine finds its modules in, against those of its build.
import type { Build } from '../../build/build';
import { builtModules, isSlot, kitsOf, moduleSlot } from '../../figures/built-memory';
import { channelsFilled } from '../../trade/memory';
import { channelsOf, filling, type Board, type Kit } from '../../figures/memory';
import { sentence } from '../../figures/sentence';
import { lacking, sure } from '../../figures/truth';
import type { BuiltModule } from '../../manifest/as-built';
import type { Fact } from '../../parts/fact';
import { valuesOf } from '../../figures/lists';
import { missing } from '../../figures/figure';
import { check } from '../check';
import { at, change, outcome, type Reporter } from '../kit';

export default check({
  id: 'built-memory-misplaced',
  area: 'built',
  grade: 'shortfall',
  what: 'The modules sit in the slots that the build names.',
  why: 'In other slots modules share a channel, or run slower than the board lists.',
  source: 'board makers’ handbooks: the page on fitting memory; DMTF DSP0134, SMBIOS: type 17',
  remarks: ['Other slots that fill as many channels are a note.'],
  examples: [
    {
      faulty: `
parts:
  board: { memory: { slots: [A1, A2, B1, B2], channels: { A: [A1, A2], B: [B1, B2] } } }
  memory: [{ capacity: 32 GB, count: 2, slots: [A2, B2] }]
#                                              ^^^^^^^^
`,
      instead: 'Switch off, unplug, and move the module from A1 to B2.',
      beside: {
        'example.asbuilt.yaml':
          '\nfrom: [dmidecode]\nmemory: [{ slot: A2, capacity: 32 GiB }, { slot: A1, capacity: 32 GiB }]\n',
      },
    },
  ],
  test(build, report) {
    if (!build.machine) return;
    const { board, memory } = build.parts;
    const found = builtModules(build);
    if (!board || !found || found.length === 0) return;
    for (const kit of memory) if (kit.at.slots.value) judge(build, board, kit, found, report);
  },
});

/** Of a board that states no slots, a module that says it sits in one that the build names sits there. */
function asNamed(
  board: Board,
  named: readonly string[],
  { slot }: BuiltModule,
): { name: string; by: Fact<string> } | undefined {
  const { slots, locators } = board.part.memory;
  if (slots.node || locators.node || slot.value === undefined) return undefined;
  const name = named.find((one) => isSlot(one, slot.value!));
  return name === undefined ? undefined : { name, by: slot };
}

function judge(build: Build, board: Board, kit: Kit, found: readonly BuiltModule[], report: Reporter): void {
  const named = valuesOf(kit.at.slots);
  if (!named) return;
  const own = found.filter((module) => kitsOf(build, module).includes(kit));
  const seats = own.map((module) => ({
    module,
    seat: moduleSlot(build, board, module) ?? asNamed(board, named, module),
  }));
  const facts = seats.flatMap(({ seat, module }) => seat?.by ?? module.locator);
  const open = seats.find(({ seat }) => !seat);
  if (own.length === 0) return;
  if (open) {
    const { locator, slot } = open.module;
    const says = locator.value === undefined ? slot : locator;
    const lacks = missing(board.part.memory.locators, `what the firmware of ${board.label} calls its memory slots`);
    return report(
      outcome(at(kit, kit.at.slots), lacking([lacks], ...facts), {
        broken: () => sentence`A module sits elsewhere.`,
        open: () => sentence`The firmware says of a module that it sits in ${says}.`,
      }),
    );
  }
  const slots = seats.map(({ seat }) => seat!.name);
  const strays = seats.filter(({ seat }) => !named.includes(seat!.name));
  const other = build.parts.memory.some(
    (one) => one !== kit && own.some((module) => kitsOf(build, module).includes(one)),
  );
  // Modules that may be of either kit are at home in the slots of both.
  const allowed = other ? filling(build).byKit.flat() : named;
  const stray = strays.find(({ seat }) => !allowed.includes(seat!.name));
  const isSame = !stray;
  const channels = channelsOf(board);
  const used = (of: readonly string[]): number | undefined => channels && channelsFilled(channels, of);
  const asGood = used(slots) !== undefined && used(slots) === used(named) && slots.length === named.length;
  report(
    outcome(at(kit, kit.at.slots), sure(isSame, kit.at.slots, ...facts), {
      broken: () => sentence`A module sits in ${stray!.seat!.by}; ${kit.label} is to sit in ${kit.at.slots}.`,
      ...(asGood ? { grade: 'note' as const } : {}),
      fixes: () =>
        other ? [] : [change(kit.at.slots, slots, `Write the slots that they sit in: ${slots.join(', ')}`)],
    }),
  );
}
