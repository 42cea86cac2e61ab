// Figures of M.2 sockets: how many are left for the drives that name none.
import type { Build, Placed } from '../build/build';
import { between, copyWith, counted, missing, times, total, type Figure, type Missing } from './figure';
import { memoOf } from './memo';
import { uniqueMissing } from './missing-facts';
import { howMany } from './power';
import { carriesBus, freeSlots, linkBuses, type Slot } from './slots';
import type { Drive } from './storage';

/** Whether a module waits for a socket: it names neither slot nor port, and no bay for modules. */
export const waitsForSocket = ({ part, at }: Drive): boolean =>
  part.shape.value === 'M.2' && !at.slot.entry && !at.port.entry && at.bay.value !== 'M.2';

/** Keys of sockets for radio modules, into which no drive goes. Source: PCI Express M.2 Specification. */
const radioKeys: readonly (string | undefined)[] = ['A', 'E', 'A+E'];

/** Sockets that nothing sits in and that may hold a drive of this bus, those of carrier cards among them. */
export const freeSockets = memoOf((build: Build, bus: keyof typeof linkBuses | undefined): Figure => {
  const label = `free M.2 sockets${bus ? ` for ${bus}` : ''}`;
  const { board, cards } = build.parts;
  const free = freeSlots(build).filter(([, slot]) => mayHold(slot, bus));
  const sure = free.filter((one) => openIn(one, bus).length === 0).length;
  const slots = board?.part.slots;
  const own = copyWith(
    between(sure, slots?.value ? free.length : Infinity, 'count', label, { source: 'the board’s facts' }),
    {
      missing: slots?.value
        ? uniqueMissing(free.map((one) => ({ missing: openIn(one, bus) })))
        : slots
          ? [missing(slots, `slots of ${board.label}`)]
          : [],
    },
  );
  if (bus === 'SATA') return own;
  const carriers = cards.filter(({ part }) => part.edge.value !== 'M.2').map(carriedBy);
  return carriers.length === 0 ? own : total(label, 'count', [own, ...carriers]);
});

/** Drives that a card carries; one that says nothing of it may be a carrier. */
function carriedBy(card: Placed<'cards'>): Figure {
  const { carries } = card.part;
  const label = `drives that ${card.label} carries`;
  if (carries.entry) return times(counted(carries, label), howMany(card));
  const source = 'nothing is stated of carrying';
  return copyWith(between(0, Infinity, 'count', label, { source }), { missing: [missing(carries, label)] });
}

const mayHold = (slot: Slot, bus: keyof typeof linkBuses | undefined): boolean =>
  slot.kind.value !== 'PCIe' &&
  !radioKeys.includes(slot.key.value) &&
  (bus === undefined || carriesBus(slot, linkBuses[bus]) !== false);

/** What would tell whether a slot holds a drive of that bus. */
const openIn = ([name, slot]: readonly [string, Slot], bus: keyof typeof linkBuses | undefined): Missing[] => [
  ...(slot.kind.value === undefined ? [missing(slot.kind, `kind of ${name}`)] : []),
  ...(bus !== undefined && carriesBus(slot, linkBuses[bus]) === undefined
    ? [missing(slot.carries, `the buses ${name} carries`)]
    : []),
];
