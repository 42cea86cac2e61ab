// What is read of a build: a view of its parts that notes every role that is looked at.
import { roleNames, type RoleName } from '../manifest/places';
import type { Parts } from './placed';

/** A set of roles, a bit each: two sets are joined whenever a figure is read. */
export type RoleSet = number;

const bitOf = Object.fromEntries(roleNames.map((role, i) => [role, 1 << i])) as Readonly<Record<RoleName, RoleSet>>;

export const rolesOf = (names: Iterable<RoleName>): RoleSet => [...names].reduce((set, name) => set | bitOf[name], 0);
export const haveCommon = (some: RoleSet, others: RoleSet): boolean => (some & others) !== 0;

/** The roles that one figure or one check has read so far. */
export class Reads {
  private readSoFar: RoleSet = 0;

  get roles(): RoleSet {
    return this.readSoFar;
  }

  add(roles: RoleSet): void {
    this.readSoFar |= roles;
  }
}

/** The parts by role; whoever looks at a role has it noted. */
export class PartsView implements Parts {
  constructor(
    private readonly held: Parts,
    private readonly reads: Reads,
  ) {}

  private read<R extends RoleName>(role: R): Parts[R] {
    this.reads.add(bitOf[role]);
    return this.held[role];
  }

  get board(): Parts['board'] {
    return this.read('board');
  }
  get processor(): Parts['processor'] {
    return this.read('processor');
  }
  get cooler(): Parts['cooler'] {
    return this.read('cooler');
  }
  get paste(): Parts['paste'] {
    return this.read('paste');
  }
  get memory(): Parts['memory'] {
    return this.read('memory');
  }
  get drives(): Parts['drives'] {
    return this.read('drives');
  }
  get graphics(): Parts['graphics'] {
    return this.read('graphics');
  }
  get cards(): Parts['cards'] {
    return this.read('cards');
  }
  get supply(): Parts['supply'] {
    return this.read('supply');
  }
  get case(): Parts['case'] {
    return this.read('case');
  }
  get fans(): Parts['fans'] {
    return this.read('fans');
  }
  get radiators(): Parts['radiators'] {
    return this.read('radiators');
  }
  get displays(): Parts['displays'] {
    return this.read('displays');
  }
  get cables(): Parts['cables'] {
    return this.read('cables');
  }
  get fixings(): Parts['fixings'] {
    return this.read('fixings');
  }
  get sticks(): Parts['sticks'] {
    return this.read('sticks');
  }
}
