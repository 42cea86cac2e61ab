// A slot of the right kind for each card and each drive that sits in one.
import type { Build } from '../../build/build';
import { uniqueMissing } from '../../figures/missing-facts';
import { copyWith, between, missing, number, total, type Figure } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { freeSockets, waitsForSocket } from '../../figures/free-sockets';
import { howMany } from '../../figures/power';
import { carrierIn, freeSlots, seatOf, type Seat, type Slot } from '../../figures/slots';
import type { Drive } from '../../figures/storage';
import { agree, any, atMost, given, lacking, sure, type Truth } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, putOn, swap, type FixIdea, type Outcome } from '../kit';
import { cardsOf, modulesAmong, type Card } from './slots-kit';

export default check({
  id: 'card-slot-missing',
  area: 'slots',
  grade: 'stop',
  what: 'Each card, each M.2 drive, and each drive that sits in a slot, has a slot of its kind.',
  why: 'A card without a slot stays on the bench; small boards have one slot, and that one goes to the graphics card.',
  source: 'PCI Express Card Electromechanical Specification; drive makers’ M.2 module manuals',
  limits: [
    'M.2 drives that name no slot are counted against the free sockets that may hold one, those of carrier cards ' +
      'among them.',
    'An M.2 drive in a PCIe slot needs an adapter; a card in that slot that carries drives is one.',
  ],
  remarks: ['Drives that name a slot of the wrong kind are judged here, too.'],
  examples: [
    {
      faulty: `
parts:
  board: { slots: { PCIE_1: { kind: PCIe }, M2_1: { kind: M.2 } } }
  graphics: { edge: x16, slot: PCIE_1 }
  cards:
    - { model: Capture Two, edge: x4 }
#     ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
`,
      instead: 'Choose a board with one PCIe slot more, or leave the card out.',
    },
  ],
  test(build, report) {
    if (!build.parts.board) return;
    let waiting = 0;
    for (const card of cardsOf(build)) {
      const seat = seatOf(build, card);
      if (seat.name !== undefined) report(inSlot(build, card, seat));
      else report(waits(build, card, (waiting += card.at.count.value ?? 1)));
    }
    for (const module of modulesAmong(build))
      if (module.at.slot.value !== undefined) report(inSlot(build, module, seatOf(build, module)));
    for (const drive of build.parts.drives)
      if (drive.at.slot.value !== undefined) report(inSlot(build, drive, seatOf(build, drive)));
    const modules = build.parts.drives.filter(waitsForSocket);
    for (const [i, drive] of modules.entries()) report(wantsSocket(build, drive, modules.slice(0, i + 1)));
  },
});

/** A card’s edge or a drive’s shape, and the kind of slot it goes into. */
function goesInto(placed: Card | Drive): {
  readonly fact: Card['part']['edge'] | Drive['part']['shape'];
  readonly kind: (value: string) => string;
} {
  if (placed.role === 'drives')
    return { fact: (placed as Drive).part.shape, kind: (shape) => (shape === 'card' ? 'PCIe' : shape) };
  return { fact: (placed as Card).part.edge, kind: (edge) => (edge === 'M.2' ? edge : 'PCIe') };
}

function inSlot(build: Build, placed: Card | Drive, { name, slot, missingFacts }: Seat): Outcome {
  const { fact, kind } = goesInto(placed);
  const word = placed.role === 'drives' ? 'shape' : 'edge';
  const truth = !slot
    ? lacking(missingFacts)
    : isOnAdapter(placed, slot)
      ? carried(build, placed, name)
      : agree<string, string>(
          fact,
          `${word} of ${placed.label}`,
          slot.kind,
          `kind of ${name}`,
          (value, wanted) => kind(value) === wanted,
        );
  return outcome(at(placed, placed.at.slot), truth, {
    broken: () => sentence`${placed.label} has the ${word} ${fact}; ${placed.at.slot} is a slot of kind ${slot!.kind}.`,
    *fixes(): Iterable<FixIdea | undefined> {
      for (const [other, free] of freeSlots(build))
        if (free.kind.value === kind(fact.value!))
          yield putOn(placed, 'slot', other, `Move ${placed.label} to ${other}`);
    },
  });
}

/** An M.2 drive in a PCIe slot sits on an adapter or a carrier; a 2.5 in NVMe drive (U.2) hangs on one in any slot. */
function isOnAdapter({ role, part }: Card | Drive, slot: Slot): boolean {
  if (role !== 'drives') return false;
  const { shape, bus } = part as Drive['part'];
  return shape.value === 'M.2' ? slot.kind.value === 'PCIe' : shape.value === '2.5 in' && bus.value === 'NVMe';
}

/** Whether a card in that slot carries M.2 drives. */
function carried(build: Build, drive: Card | Drive, name: string): Truth {
  const carrier = carrierIn(build, name);
  return carrier
    ? sure(true, carrier.part.carries)
    : lacking([missing(drive.at.slot, `the adapter card that holds ${drive.label} in ${name}`)]);
}

/** A card that names no slot takes any PCIe slot that is free, after those that waited before it. */
function waits(build: Build, card: Card, place: number): Outcome {
  const free = freePcie(build);
  const { edge } = card.part;
  const enough = atMost(number(place, 'cards that name no slot'), free);
  const truth: Truth =
    edge.value === undefined ? any(enough, lacking([missing(edge, `edge of ${card.label}`)])) : enough;
  return outcome(at(card), truth, {
    broken: () =>
      sentence`${card.label} finds no PCIe slot: of the cards that name none it is number
        ${number(place, 'place among them')}, and free slots number ${free}.`,
    fixes: () => [swap(build.parts.board!)],
  });
}

/** A module that names no slot takes any socket that is free, after those of its bus that waited before it. */
function wantsSocket(build: Build, drive: Drive, waiting: readonly Drive[]): Outcome {
  const bus = drive.part.bus.value;
  const alike = waiting.filter(({ part }) => bus === undefined || part.bus.value === bus);
  const wanted = total('modules that name no slot', 'count', alike.map(howMany));
  const free = freeSockets(build, bus);
  return outcome(at(drive), given(atMost(wanted, free), drive.part.bus, drive.part.shape), {
    broken: () =>
      sentence`${drive.label} finds no M.2 socket: modules that name no slot number ${wanted}, and free sockets that may
        hold one number ${free}.`,
    fixes: () => [swap(build.parts.board!)],
  });
}

function freePcie(build: Build): Figure {
  const { board } = build.parts;
  const { slots } = board!.part;
  if (!slots.value)
    return copyWith(between(0, Infinity, 'count', 'free PCIe slots', { source: 'not stated' }), {
      missing: [missing(slots, `slots of ${board!.label}`)],
    });
  const free = freeSlots(build);
  const sure = free.filter(([, slot]) => slot.kind.value === 'PCIe').length;
  const open = free.flatMap(([name, slot]) =>
    slot.kind.value === undefined ? [missing(slot.kind, `kind of ${name}`)] : [],
  );
  return copyWith(between(sure, sure + open.length, 'count', 'free PCIe slots', { source: 'the board’s facts' }), {
    missing: uniqueMissing([{ missing: open }]),
  });
}
