// The tree of PCI devices: which port a device hangs on, and the links on the way to it.
import { busOf, type Device, type LinkEnd } from './lspci';

/** A link as both of its ends see it: the part’s own end, and the port’s above it. */
export interface TreeLink {
  readonly lower: Device;
  readonly upper: Device | undefined;
}

export class PciTree {
  private readonly byBus = new Map<string, Device>();

  constructor(readonly devices: readonly Device[]) {
    for (const device of devices) if (device.secondary !== undefined) this.byBus.set(device.secondary, device);
  }

  parentOf(device: Device): Device | undefined {
    return this.byBus.get(busOf(device.address));
  }

  /** From the device itself up to its port on the processor or chipset. */
  wayUp(device: Device): readonly Device[] {
    const way = [device];
    for (let up = this.parentOf(device); up && !way.includes(up); up = this.parentOf(up)) way.push(up);
    return way;
  }

  /**
   * The links that are a part’s own: its own and those of switches on it, under which nothing else hangs. A switch
   * that others share is the chipset’s.
   */
  ownLinks(device: Device): readonly TreeLink[] {
    const links: TreeLink[] = [];
    for (const one of this.wayUp(device)) {
      const upper = this.parentOf(one);
      const isLower = one === device || /^Upstream/i.test(one.express ?? '');
      if (one !== device && isLower && !this.isAlone(one, device)) break;
      if (isLower) links.push({ lower: one, upper });
    }
    return links;
  }

  /** The port of the board that a part hangs on: above its own switch, where it has one. */
  portOf(device: Device): Device | undefined {
    return this.ownLinks(device).at(-1)?.upper;
  }

  /** Whether all that hangs below a switch are functions of one device. */
  isOnePart(top: Device): boolean {
    const below = this.devices.find((one) => one.secondary === undefined && this.wayUp(one).includes(top));
    return below !== undefined && this.isAlone(top, below);
  }

  /** Whether all endpoints below a switch are functions of one device. */
  private isAlone(top: Device, device: Device): boolean {
    const own = device.address.replace(/\.[0-7]$/, '');
    return this.devices.every(
      (one) =>
        one.secondary !== undefined || one.address.replace(/\.[0-7]$/, '') === own || !this.wayUp(one).includes(top),
    );
  }
}

/** The narrower of two ends of a link, and the slower: what they can run together. */
export function lesser(ends: readonly (LinkEnd | undefined)[]): LinkEnd | undefined {
  const known = ends.filter((end): end is LinkEnd => end !== undefined);
  const [first] = known;
  if (!first || known.length < ends.length) return undefined;
  return known.reduce((a, b) => {
    const generation = Math.min(a.generation, b.generation);
    const lanes = Math.min(a.lanes, b.lanes);
    const place = b.generation * b.lanes < a.generation * a.lanes ? b : a;
    return { ...place, generation, lanes };
  }, first);
}
