// Drives, cards and displays of a build, each with what a machine has of its kind.
import type { Build, Placed } from '../build/build';
import type { BuiltDevice, BuiltDisplay, BuiltDrive } from '../manifest/as-built';
import type { Fact } from '../parts/fact';
import { CAPACITY_SHARE, isGraphicsClass } from '../trade/reported';
import { reportsAs } from './built-names';
import { outputKinds } from './built-outputs';
import { paired, type Pair, type Pairs } from './built-pairing';
import { memo } from './memo';
import type { Drive } from './storage';

/** Whether a place of the build and one of the machine are the same; undefined where either is not told. */
function samePlace(build: Build, slot: Fact<string>, { at, port }: BuiltDevice | BuiltDrive): boolean | undefined {
  const named = slot.value;
  if (named === undefined) return undefined;
  const slotPort = build.parts.board?.part.slots.value?.get(named)?.at.value;
  if (slotPort !== undefined && port.value !== undefined) return plainPort(slotPort) === plainPort(port.value);
  return at.value === undefined ? undefined : plainName(at.value) === plainName(named);
}

const plainPort = (port: string): string => port.toLowerCase().replace(/^0000:/, '');

/** `PCIE_1` and `PCIE1 ` are one name; a firmware’s table drops signs. */
export const plainName = (name: string): string => name.toUpperCase().replace(/[^A-Z0-9]/g, '');

/** The slot in which a thing sits, by the board’s own list of ports, else by the firmware’s table; with its fact. */
export function slotBuilt(
  build: Build,
  thing: BuiltDevice | BuiltDrive,
): { name: string; by: Fact<string> } | undefined {
  const slots = [...(build.parts.board?.part.slots.value ?? [])];
  const { port, at } = thing;
  const byPort = slots.find(
    ([, slot]) =>
      slot.at.value !== undefined && port.value !== undefined && plainPort(slot.at.value) === plainPort(port.value),
  );
  if (byPort) return { name: byPort[0], by: port };
  const byName = slots.find(([name]) => at.value !== undefined && plainName(name) === plainName(at.value));
  return byName && { name: byName[0], by: at };
}

export const driveThings = (build: Build): readonly BuiltDrive[] => build.machine?.drives.value ?? [];
const devices = (build: Build): readonly BuiltDevice[] => build.machine?.devices.value ?? [];

/** Drives of the build against drives of the machine. */
export const drivePairs = memo(
  (build: Build): Pairs<Drive, BuiltDrive> =>
    paired(build.parts.drives, driveThings(build), {
      names: (placed, { reports }) => reportsAs(placed, reports),
      place: (placed, thing) => samePlace(build, placed.at.slot, thing),
      fits: (placed, thing) => sameCapacity(placed, thing) && isKin(placed, thing),
      kin: isKin,
      mark: ({ key, address, hours }) => [key, address, hours].map(({ text }) => text).join(' '),
    }),
);

/** No drive of another bus stands for it, where both are told. */
const isKin = ({ part: { bus } }: Drive, thing: BuiltDrive): boolean =>
  bus.value === undefined || thing.bus.value === undefined || bus.value === thing.bus.value;

/** What a drive says of its room is within a hundredth of what its maker states; false where either is not told. */
export function sameCapacity({ part: { capacity } }: Drive, { capacity: found }: BuiltDrive): boolean {
  if (!capacity.value || !found.value) return false;
  const off = capacity.value.hi * CAPACITY_SHARE;
  return found.value.hi >= capacity.value.lo - off && found.value.lo <= capacity.value.hi + off;
}

/** Cards of the build, graphics among them, against devices of the machine. */
export type Card = Placed<'graphics'> | Placed<'cards'>;
export const cardPairs = memo(
  (build: Build): Pairs<Card, BuiltDevice> =>
    paired<Card, BuiltDevice>([...build.parts.graphics, ...build.parts.cards], devices(build), {
      names: (placed, { id, reports }) => reportsAs(placed, id, reports),
      place: (placed, thing) => samePlace(build, placed.at.slot, thing),
      // Of graphics there is one class; what another card is, its class does not tell.
      fits: (placed, thing) =>
        isKinCard(placed, thing) && (placed.role === 'graphics' || samePlace(build, placed.at.slot, thing) === true),
      kin: isKinCard,
      mark: ({ address }) => address.text,
    }),
);

const isKinCard = ({ role }: Card, { class: code }: BuiltDevice): boolean =>
  code.value === undefined || (role === 'graphics') === isGraphicsClass(code.value);

/** Displays of the build against those that the machine sees. */
export const displayPairs = memo(
  (build: Build): Pairs<Placed<'displays'>, BuiltDisplay> =>
    paired(build.parts.displays, build.machine?.displays.value ?? [], {
      names: (placed, { id, reports }) => reportsAs(placed, id, reports),
      // Of several outputs of the right kind, none is known to be the one.
      place: (placed, thing) => (outputKinds(build, placed, thing)?.isSame === false ? false : undefined),
      fits: () => true,
      kin: () => true,
      mark: ({ connector }) => connector.text,
    }),
);

/** One place of the build with what the machine has for it, of whatever kind. */
export type AnyPair = Pair<Drive, BuiltDrive> | Pair<Card, BuiltDevice> | Pair<Placed<'displays'>, BuiltDisplay>;

export const anyPairs = (build: Build): readonly AnyPair[] => [
  ...drivePairs(build).pairs,
  ...cardPairs(build).pairs,
  ...displayPairs(build).pairs,
];
