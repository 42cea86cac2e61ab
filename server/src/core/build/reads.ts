// What is read of a build: views of its parts and of its file that note every area that is looked at.
import { expect, place, type buildFile } from '../manifest/build-file';
import { roleNames, type RoleName } from '../manifest/places';
import type { Group } from '../parts/fact';
import type { Table } from '../parts/field';
import type { Parts } from './placed';

/** A set of areas of a build, a bit each: two sets are joined whenever a figure is read. */
export type RoleSet = number;
export type BuildFile = Group<typeof buildFile>;
/** A section of a build’s file beside `parts:`. */
export type SectionName = Exclude<keyof typeof buildFile, symbol>;
/** What is told apart in a build: its parts by role, the sections of its file, and some fields by themselves. */
export type AreaName = RoleName | SectionName | FieldName;

export const sectionNames: readonly SectionName[] = [
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
/**
 * Fields that are told apart from the rest of their section, by their paths: different figures read the room and the
 * mains, and each promise is read by few.
 */
const fieldNames = ['place.ambient', 'place.humidity', 'place.altitude', 'place.mains', 'place.mains.voltage'] as const;
/**
 * The same, where no bit of a number is left: each shares that of an area of which little is read. Whoever read the one
 * counts as having read the other.
 */
const sharing = {
  'expect.drives': 'format',
  'expect.memory': 'build',
  'expect.displays': 'purpose',
  'expect.power': 'hand-over',
  'expect.noise': 'accept',
  'expect.cost': 'place.altitude',
} as const satisfies Readonly<Record<string, SectionName | (typeof fieldNames)[number]>>;
type FieldName = (typeof fieldNames)[number] | keyof typeof sharing;

const withBit = [...roleNames, ...sectionNames, ...fieldNames] as const;
const bitOf = Object.fromEntries([
  ...withBit.map((name, i) => [name, 1 << i]),
  ...Object.entries(sharing).map(([name, other]) => [name, 1 << withBit.indexOf(other)]),
]) as Readonly<Record<AreaName, RoleSet>>;
const areaNames = Object.keys(bitOf) as readonly AreaName[];
/** Whoever reads the text itself has read all that stands in it. */
export const everything: RoleSet = Object.values(bitOf).reduce((set, bit) => set | bit, 0);

export const isSection = (name: string): name is SectionName => (sectionNames as readonly string[]).includes(name);
export const isArea = (path: string): path is AreaName => path in bitOf;
/** A section or field with all that is told apart in it. */
export const areasIn = (path: AreaName): readonly AreaName[] =>
  areaNames.filter((name) => name === path || name.startsWith(`${path}.`));
export const rolesOf = (names: Iterable<AreaName>): RoleSet => [...names].reduce((set, name) => set | bitOf[name], 0);
export const haveCommon = (some: RoleSet, others: RoleSet): boolean => (some & others) !== 0;

/** The areas that one figure or one check has read so far. */
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

/** What the view of a group looks at, behind names that no field has. */
interface GroupView {
  readonly $held: Readonly<Record<string, unknown>>;
  readonly $reads: Reads;
}

const placeShape = shapeOf('place', place.fields);
const expectShape = shapeOf('expect', expect.fields);

/** The prototype of views of a group: a field that is looked at is noted by itself where it is told apart. */
function shapeOf(area: AreaName, fields: Table): object {
  const shape = Object.create(null) as object;
  const define = (key: string, enumerable: boolean, noted: RoleSet, inner?: object): void =>
    void Object.defineProperty(shape, key, {
      enumerable,
      get(this: GroupView) {
        this.$reads.add(noted);
        const value = this.$held[key];
        return inner ? viewOf(inner, value, this.$reads) : value;
      },
    });
  define('$', false, rolesOf(areasIn(area)));
  for (const [key, field] of Object.entries(fields)) {
    const path = `${area}.${key}`;
    if (!isArea(path)) define(key, true, bitOf[area]);
    else if (field.type === 'group' && areasIn(path).length > 1) define(key, true, 0, shapeOf(path, field.fields));
    else define(key, true, bitOf[path]);
  }
  return shape;
}

function viewOf(shape: object, held: unknown, reads: Reads): unknown {
  const view = Object.create(shape) as { -readonly [K in keyof GroupView]: GroupView[K] };
  view.$held = held as GroupView['$held'];
  view.$reads = reads;
  return view;
}

/** The sections of the file; whoever looks at one has it noted, or what of it is told apart. */
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
    return viewOf(placeShape, this.held.place, this.reads) as BuildFile['place'];
  }
  get expect(): BuildFile['expect'] {
    return viewOf(expectShape, this.held.expect, this.reads) as BuildFile['expect'];
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
