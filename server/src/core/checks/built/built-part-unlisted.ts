// What a finished machine finds and its build does not list.
import type { Build } from '../../build/build';
import { cardPairs, displayPairs, drivePairs, slotBuilt } from '../../figures/built-pairs';
import { isFitted, modulesOf, moduleSlot, strangeModules } from '../../figures/built-memory';
import type { Kit } from '../../figures/memory';
import { sentence, type Sentence } from '../../figures/sentence';
import { sure } from '../../figures/truth';
import type { BuiltDevice, BuiltDisplay, BuiltDrive } from '../../manifest/as-built';
import type { Fact } from '../../parts/fact';
import { isGraphicsClass } from '../../trade/reported';
import { check } from '../check';
import { addToList } from '../costs/costs-kit';
import { atBuild, change, type FixIdea, outcome, putOn, swap, type TextFix } from '../kit';
import { described } from './built-kit';

export default check({
  id: 'built-part-unlisted',
  area: 'built',
  grade: 'note',
  what: 'The build lists each drive, display, module and card in a slot that the machine finds.',
  why: 'What nobody listed was counted in no sum of power, lanes or cost, and may be somebody else’s.',
  source: 'common practice',
  limits: [
    'Devices of the processor and the board are none; one counts as a card where it sits in a slot.',
    'A drive on USB may be what the machine was read from, and is left out.',
  ],
  examples: [
    {
      faulty: `
build: Desk
#      ^^^^
parts:
  drives: [{ name: scratch, bus: NVMe, capacity: 2 TB }]
`,
      instead: 'List it in the build, or take it out of the machine.',
      beside: {
        'example.asbuilt.yaml':
          '\nfrom: [lsblk]\ndrives: [{ bus: NVMe, capacity: 2 TB }, { reports: SLAB-2T, bus: SATA, capacity: 2 TB }]\n',
      },
    },
  ],
  test(build, report) {
    if (!build.machine) return;
    const told = new Map<string, number>();
    for (const { what, fact, said, listed } of strangers(build)) {
      const count = (told.get(what) ?? 0) + 1;
      told.set(what, count);
      report(
        outcome(atBuild(build, `built.${what}.${count}`), sure(false, fact), {
          broken: () => sentence`The machine has a ${what} that the build does not list: ${said}.`,
          ...(listed ? { fixes: () => [listed()] } : {}),
        }),
      );
    }
  },
});

interface Stranger {
  readonly what: string;
  readonly fact: Fact<unknown>;
  readonly said: Sentence;
  /** Lists it in the build, where it says plainly what it is. */
  readonly listed?: () => FixIdea | undefined;
}

function* strangers(build: Build): Iterable<Stranger> {
  // A drive on USB may be what the machine was read from.
  for (const drive of drivePairs(build).left)
    if (drive.bus.value !== 'USB')
      yield {
        what: 'drive',
        fact: stated(drive.reports, drive.capacity),
        said: described(drive),
        listed: () => driveListed(build, drive),
      };
  for (const card of cardPairs(build).left) {
    const slot = slotBuilt(build, card);
    const where = slot?.by ?? (card.at.node ? card.at : undefined);
    if (where)
      yield {
        what: 'card',
        fact: stated(card.id, card.reports),
        said: sentence`${described(card)} in ${where}`,
        listed: () => cardListed(build, card, slot?.name ?? where.text),
      };
  }
  for (const display of displayPairs(build).left)
    yield {
      what: 'display',
      fact: stated(display.reports, display.id),
      said: described(display),
      listed: () => displayListed(build, display),
    };
  for (const { module, kit } of strangeModules(build))
    yield {
      what: 'memory module',
      fact: stated(module.reports, module.capacity),
      said: described(module),
      // Beside another kit it would be a mixed one, which is as bad: only more of the kit, or another kit, mends it.
      listed: () => kit && (isFitted(build, kit) ? moreOf(build, kit) : swap(kit)),
    };
}

/** Lists all modules of a kit, in the slots that they sit in. */
function moreOf(build: Build, kit: Kit): TextFix | undefined {
  const own = modulesOf(build, kit);
  const count = putOn(kit, 'count', own.length, `List ${own.length} modules, which the machine has`);
  const { slots } = kit.at;
  const { board } = build.parts;
  if (!count || slots.value === undefined) return count;
  const seats = own.flatMap((module) => (board ? (moduleSlot(build, board, module)?.name ?? []) : []));
  const moved = seats.length === own.length ? change(slots, seats, count.title) : undefined;
  return moved && { ...count, edits: [...count.edits, ...moved.edits] };
}

function driveListed(build: Build, { reports, bus, capacity }: BuiltDrive): TextFix | undefined {
  if (reports.value === undefined || bus.value === undefined || capacity.value === undefined) return undefined;
  const item = { model: reports.value, bus: bus.value, capacity: capacity.text };
  return addToList(build, 'drives', item, 'List the drive in the build');
}

/** A card says no model: its numbers tell it. */
function cardListed(build: Build, { id, reports, class: code }: BuiltDevice, slot: string): TextFix | undefined {
  if (id.value === undefined || code.value === undefined) return undefined;
  const own = { 'identified-by': [id.value], slot };
  const item = reports.value === undefined ? own : { model: reports.value, ...own };
  return addToList(build, isGraphicsClass(code.value) ? 'graphics' : 'cards', item, 'List the card in the build');
}

const displayListed = (build: Build, { reports, id }: BuiltDisplay): TextFix | undefined =>
  reports.value === undefined
    ? undefined
    : addToList(
        build,
        'displays',
        { model: reports.value, ...(id.value === undefined ? {} : { 'identified-by': [id.value] }) },
        'List the display in the build',
      );

const stated = (...facts: readonly Fact<unknown>[]): Fact<unknown> => facts.find(({ node }) => node) ?? facts[0]!;
