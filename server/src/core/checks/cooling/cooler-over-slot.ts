// A cooler that reaches down to a slot in which a card sits.
import type { Build, Placed } from '../../build/build';
import { isLiquid } from '../../figures/coolers';
import {
  copyWith,
  between,
  counted,
  derive,
  figure,
  least,
  missing,
  number,
  unknown,
  type Figure,
} from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { freeSlots, seatOf, type Slot } from '../../figures/slots';
import { atMost, lacking } from '../../figures/truth';
import { CARD_BACK_MM, CARD_BACK_SOURCE, SLOT_PITCH_MM } from '../../trade/forms';
import { check } from '../check';
import { at, outcome, putOn, swap, type FixIdea } from '../kit';

type Card = Placed<'graphics'> | Placed<'cards'>;

export default check({
  id: 'cooler-over-slot',
  area: 'cooling',
  grade: 'stop',
  what: 'The cooler ends above the back of every card.',
  why: 'A wide cooler stands over the first slot; the card then does not go in, or touches metal with its back.',
  source: 'common practice; slot pitch 20.32 mm, PCI Express Card Electromechanical Specification',
  limits: ['A card on a riser stands elsewhere, and is not judged.'],
  examples: [
    {
      faulty: `
parts:
  board: { socket-to-first-slot: 70 mm, slots: { PCIE_1: { kind: PCIe }, M2_1: { kind: M.2 } } }
  cooler: { overhang-slot: 75 mm }
  graphics: [{ slot: PCIE_1 }]
#                    ^^^^^^
`,
      instead: 'Move the card to a slot further down, or choose a narrower cooler.',
    },
  ],
  test(build, report) {
    const { board, cooler, graphics, cards } = build.parts;
    if (!board || !cooler || isLiquid(cooler)) return;
    const reach = figure(cooler.part['overhang-slot'], `reach of ${cooler.label} towards the slots`);
    for (const card of [...graphics, ...cards] as readonly Card[]) {
      // On a riser it stands elsewhere: its slot holds a flat plug.
      if (card.at.riser.entry) continue;
      const { name, slot, missingFacts } = seatOf(build, card);
      if (slot?.kind.value === 'M.2') continue;
      const distance = backOf(card, distanceTo(board, name));
      const there = atMost(reach, distance);
      report(
        outcome(at(card, card.at.slot), missingFacts.length > 0 && there.is !== true ? lacking(missingFacts) : there, {
          broken: () =>
            sentence`The cooler reaches ${reach} from the socket’s centre; the back of ${card.label} in
              ${name ?? 'its slot'} begins at ${distance}. Move the card to a slot further down, or take a narrower
              cooler.`,
          fixes: () => fixes(build, card, cooler),
          ...(isPlain(board, cooler)
            ? { usual: () => `${cooler.label} with its fan of ${plainFanMm} mm or less ends above the first slot` }
            : {}),
        }),
      );
    }
  },
});

/** Coolers as wide as a fan of this size end above the first slot of any board. Source: common practice. */
const plainFanMm = 120;

/** Whether nothing is stated of reach and distance, and the cooler is no wider than most. */
const isPlain = ({ part: board }: Placed<'board'>, { part: cooler }: Placed<'cooler'>): boolean =>
  !cooler['overhang-slot'].node &&
  !board['socket-to-first-slot'].node &&
  (cooler.fans.size.value?.hi ?? Infinity) <= plainFanMm;

/** Where the back of a card begins: its slot’s middle, less what stands out behind its board. */
function backOf(card: Card, slot: Figure): Figure {
  const stated = card.part['back-room'];
  const label = `what stands out behind the board of ${card.label}`;
  const { low, high } = card.role === 'graphics' ? CARD_BACK_MM.withPlate : CARD_BACK_MM.bare;
  const back = stated.value
    ? figure(stated, label)
    : copyWith(between(low, high, 'length', label, { unit: 'mm', source: CARD_BACK_SOURCE }), {
        missing: [missing(stated, label)],
      });
  return derive(
    `distance from socket to the back of ${card.label}`,
    'length',
    [slot, back],
    'distance to its slot − what stands out behind its board',
    (mm, out) => mm - out,
    { unit: 'mm' },
  );
}

/** From the socket's centre to a slot: to the first, and as many slot pitches more as its position is further down. */
function distanceTo(board: Placed<'board'>, name: string | undefined): Figure {
  const first = figure(board.part['socket-to-first-slot'], `distance from socket to first slot on ${board.label}`);
  const further = pitchesTo(board, name);
  return derive(
    `distance from socket to ${name ?? 'the slot'}`,
    'length',
    [first, further],
    'distance to the first slot + slots further × 20.32 mm',
    (mm, n) => mm + (n === 0 ? 0 : n * SLOT_PITCH_MM),
    { unit: 'mm' },
  );
}

/** How many slots further down than the first a slot is; never less than none. */
function pitchesTo(board: Placed<'board'>, name: string | undefined): Figure {
  const label = `slots from the first to ${name ?? 'the slot'}`;
  const all = [...(board.part.slots.value ?? [])].filter(([, slot]) => slot.kind.value !== 'M.2');
  if (all.length === 1 && all[0]![0] === name) return number(0, label, 'the board has one slot for cards');
  const own = all.find(([other]) => other === name)?.[1];
  if (!own) return between(0, Infinity, 'count', label, { source: 'not among the slots stated' });
  const positions = all.map(([other, slot]) => positionOf(other, slot));
  const difference = derive(
    label,
    'count',
    [positionOf(name!, own), least('position of the first slot', positions)],
    'its position − position of the first',
    (a, b) => a - b,
  );
  return copyWith(difference, { lo: Math.max(0, difference.lo) });
}

/** Its position among the openings; of a slot of no stated kind nobody knows whether it has one. */
function positionOf(name: string, { kind, position }: Slot): Figure {
  const stated = counted(position, `position of ${name}`);
  return kind.value === undefined
    ? unknown('count', stated.label, [missing(kind, `kind of ${name}`), ...stated.missing])
    : stated;
}

function* fixes(build: Build, card: Card, cooler: Placed<'cooler'>): Iterable<FixIdea | undefined> {
  for (const [name, slot] of freeSlots(build))
    if (slot.kind.value === 'PCIe') yield putOn(card, 'slot', name, `Move ${card.label} to ${name}`);
  yield swap(cooler);
}
