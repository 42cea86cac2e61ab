// Devices outside of processor and board: which they are, where they sit, and the links that they run.
import type { Said, Told } from './as-built';
import type { SlotRow } from './dmidecode';
import type { Device, LinkEnd } from './lspci';
import { lesser, type PciTree } from './pci-tree';
import { saidAs } from './said';

/** The tree, the firmware’s table of slots, and how the machine stood when the links were read. */
export interface Pci {
  readonly tree: PciTree;
  readonly rows: readonly SlotRow[];
  readonly read: 'idle' | 'load';
}

/**
 * Classes that are bridges, and parts of the processor or chipset; 01.08 are drives.
 * Source: PCI Code and ID Assignment Specification.
 */
const OWN = /^(?:05|06|08|10|11|13|ff)|^0c(?:05|8)|^0108/;

/**
 * Devices that hang behind a port of the board by a link of their own, each once. What is built in has no link, or sits
 * on the root bus.
 */
export function outsideDevices({ tree }: Pci): readonly Device[] {
  return tree.devices.filter(
    (device) =>
      device.secondary === undefined &&
      device.address.endsWith('.0') &&
      !OWN.test(device.classCode ?? '') &&
      !/Integrated Endpoint/i.test(device.express ?? '') &&
      tree.parentOf(device)?.isInternal === false,
  );
}

export function deviceTold(pci: Pci, device: Device): Told {
  const { id, classCode, at, maker } = device;
  return {
    ...placeTold(pci, device),
    address: saidAs(at, device.address, 'lspci'),
    id: id && saidAs(id, id.text, 'lspci, vendor and device'),
    maker: maker && saidAs(maker, maker.text, 'lspci, Subsystem'),
    class: classCode === undefined ? undefined : saidAs(at, classCode, 'lspci, class'),
    ...linkTold(pci, device),
  };
}

/** The port that a device hangs on, and the slot by the firmware’s table where that can be believed. */
export function placeTold({ tree, rows }: Pci, device: Device): Told {
  const port = tree.portOf(device);
  const row = isBelieved(rows, tree)
    ? rows.find(({ address, inUse }) => inUse && (address === port?.address || address === device.address))
    : undefined;
  return { port: port && saidAs(port.at, port.address, 'lspci, bridge'), at: row?.name };
}

/** A table left over from another board names addresses that are none of this machine’s. */
function isBelieved(rows: readonly SlotRow[], tree: PciTree): boolean {
  const used = rows.filter(({ inUse }) => inUse);
  const isOf = (address: string): boolean =>
    tree.devices.some((one) => one.address === address && (one.secondary !== undefined || tree.parentOf(one)));
  const known = used.filter(({ address }) => isOf(address));
  return used.length > 0 && known.length * 2 > used.length;
}

/** The narrowest link on the way that is the device’s own, and what both ends of it could run. */
export function linkTold({ tree, read }: Pci, device: Device): Told {
  const links = tree.ownLinks(device);
  const trained = lesser(links.map(({ lower }) => lower.trained));
  const able = lesser(links.flatMap(({ lower, upper }) => [lower.able, ...(upper ? [upper.able] : [])]));
  return {
    link: said(trained, 'lspci, LnkSta'),
    able: said(able, 'lspci, LnkCap'),
    read: trained && saidAs(trained, read, 'the file’s name'),
  };
}

const said = (end: LinkEnd | undefined, what: string): Said | undefined =>
  end && saidAs(end, `PCIe ${end.generation} x${end.lanes}`, what);

/**
 * The switch that other devices share and that hangs on the processor itself: the chipset, where a PCI port shows it.
 * Undefined where there is none, or several.
 */
export function uplinkTold({ tree }: Pci): Told | undefined {
  const shared = tree.devices.filter((device) => {
    const port = tree.parentOf(device);
    return /^Upstream/i.test(device.express ?? '') && port && !tree.parentOf(port) && !tree.isOnePart(device);
  });
  const [top] = shared;
  const port = top && tree.parentOf(top);
  if (!top || !port || shared.length > 1) return undefined;
  return {
    port: saidAs(port.at, port.address, 'lspci, bridge'),
    link: said(top.trained, 'lspci, LnkSta'),
    able: said(lesser([top.able, port.able]), 'lspci, LnkCap'),
  };
}
