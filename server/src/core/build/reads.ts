// What is read of a build: views of its parts and of its file that note every role and section that is looked at.
import type { buildFile } from '../manifest/build-file';
import { roleNames, type RoleName } from '../manifest/places';
import type { Group } from '../parts/fact';
import type { Parts } from './placed';

/** A set of roles and sections, a bit each: two sets are joined whenever a figure is read. */
export type RoleSet = number;
export type BuildFile = Group<typeof buildFile>;
/** A section of a build’s file beside `parts:`. */
export type SectionName = Exclude<keyof typeof buildFile, symbol>;

const sectionNames: readonly SectionName[] = [
  'format',
  'build',
  'purpose',
  'place',
  'expect',
  'bench',
  'steps',
  'acceptance',
  'hand-over',
  'accept',
];
const bitOf = Object.fromEntries([...roleNames, ...sectionNames].map((name, i) => [name, 1 << i])) as Readonly<
  Record<RoleName | SectionName, RoleSet>
>;
/** Whoever reads the text itself has read all that stands in it. */
export const everything: RoleSet = Object.values(bitOf).reduce((set, bit) => set | bit, 0);

export const isSection = (name: string): name is SectionName => (sectionNames as readonly string[]).includes(name);
export const rolesOf = (names: Iterable<RoleName | SectionName>): RoleSet =>
  [...names].reduce((set, name) => set | bitOf[name], 0);
export const haveCommon = (some: RoleSet, others: RoleSet): boolean => (some & others) !== 0;

/** The roles and sections that one figure or one check has read so far. */
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

/** The sections of the file; whoever looks at one has it noted. */
export class FileView implements BuildFile {
  constructor(
    private readonly held: BuildFile,
    private readonly reads: Reads,
  ) {}

  private read<S extends SectionName>(section: S): BuildFile[S] {
    this.reads.add(bitOf[section]);
    return this.held[section];
  }

  get $(): BuildFile['$'] {
    this.reads.add(everything);
    return this.held.$;
  }
  get format(): BuildFile['format'] {
    return this.read('format');
  }
  get build(): BuildFile['build'] {
    return this.read('build');
  }
  get purpose(): BuildFile['purpose'] {
    return this.read('purpose');
  }
  get place(): BuildFile['place'] {
    return this.read('place');
  }
  get expect(): BuildFile['expect'] {
    return this.read('expect');
  }
  get bench(): BuildFile['bench'] {
    return this.read('bench');
  }
  get steps(): BuildFile['steps'] {
    return this.read('steps');
  }
  get acceptance(): BuildFile['acceptance'] {
    return this.read('acceptance');
  }
  get 'hand-over'(): BuildFile['hand-over'] {
    return this.read('hand-over');
  }
  get accept(): BuildFile['accept'] {
    return this.read('accept');
  }
}
