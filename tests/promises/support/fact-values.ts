// What a fact may be that no file states: the ends of its range, every word of its vocabulary, names of its build.
import type { Build } from '../../../server/src/core/build/build';
import { thingLists } from '../../../server/src/core/build/named-things';
import type { Doc } from '../../../server/src/core/parts/doc';
import type {
  Field,
  FormField,
  GroupField,
  NamedField,
  Referent,
  ScalarField,
  Table,
} from '../../../server/src/core/parts/field';
import { readScalar } from '../../../server/src/core/parts/scalar';
import { inUnit, plainNumber } from '../../../server/src/core/quantity';
import { treeOf, type Tree } from './fact-trees';
import { scalarsOf } from './scalars';

/** Chance that is the same in every run. */
export class Chance {
  constructor(private state: number) {}

  below(many: number): number {
    this.state = (Math.imul(this.state, 1_664_525) + 1_013_904_223) >>> 0;
    return Math.floor((this.state / 2 ** 32) * many);
  }

  of<T>(some: readonly T[]): T {
    return some[this.below(some.length)]!;
  }

  some<T>(all: readonly T[], many: number): readonly T[] {
    return all.length <= many ? all : Array.from({ length: many }, () => this.of(all));
  }
}

/** Texts and maps that stand under a key in any file: what people write there. */
export type Seen = ReadonlyMap<string, readonly Tree[]>;

/** What stands under each key in some files; under `key[]` and `key.*` the items of lists and what names stand for. */
export function seenIn(docs: readonly Doc[]): Seen {
  const seen = new Map<string, Tree[]>();
  const visit = (tree: Tree, keys: readonly string[]): void => {
    for (const key of keys) seen.set(key, [...(seen.get(key) ?? []), tree]);
    if (tree instanceof Map) for (const [key, value] of tree) visit(value, [key, `${keys[0] ?? ''}.*`]);
    else if (Array.isArray(tree)) for (const item of tree) visit(item, [`${keys[0] ?? ''}[]`]);
  };
  for (const { parsed } of docs) visit(treeOf(parsed.root), []);
  return seen;
}

const mostOfAKind = 40;

const fewKinds = 12;

export class Values {
  constructor(
    private readonly build: Build,
    private readonly seen: Seen,
    private readonly chance: Chance,
  ) {}

  /** Whole values of a field, the ends of what it may be first; every fact of a group is put in. */
  of(field: Field, key: string): readonly Tree[] {
    const seen = (this.seen.get(key) ?? []).filter((tree) => isOf(field, tree)).map((tree) => this.filled(field, tree));
    return unique([...this.made(field, key), ...this.chance.some(seen, mostOfAKind)]);
  }

  private made(field: Field, key: string): readonly Tree[] {
    switch (field.type) {
      case 'group':
        return this.groups(field);
      case 'list': {
        const items = this.of(field.of as Field, `${key}[]`);
        return [
          [],
          ...this.chance.some(items, mostOfAKind).map((one) => [one]),
          this.chance.some(items, fewKinds),
          items,
        ];
      }
      case 'named':
        return this.maps(field, key);
      default:
        return this.texts(field).filter((text) => readScalar(field, text).slip === undefined);
    }
  }

  private maps({ names, refersTo, of }: NamedField<Field>, key: string): readonly Tree[] {
    const known = names?.words ?? [...new Set([...this.names(refersTo), ...this.spoken().map(({ name }) => name)])];
    const values = this.of(of, `${key}.*`);
    const whole = this.chance
      .some(values, fewKinds)
      .map((value) => new Map(known.map((name) => [name, value] as const)));
    return [new Map(), ...whole, ...known.map((name) => new Map([[name, this.chance.of(values)]]))];
  }

  private groups({ fields }: GroupField): readonly Tree[] {
    const values = Object.entries(fields as Table).map(([key, field]) => [key, this.of(field as Field, key)] as const);
    const one = (): Tree => new Map(values.map(([key, some]) => [key, this.chance.of(some)]));
    return Array.from({ length: mostOfAKind }, one);
  }

  /** What someone wrote, with the facts put in that they left out. */
  private filled(field: Field, tree: Tree): Tree {
    if (field.type === 'list') return (tree as readonly Tree[]).map((item) => this.filled(field.of as Field, item));
    if (field.type === 'named')
      return new Map(
        [...(tree as ReadonlyMap<string, Tree>)].map(([key, value]) => [key, this.filled(field.of as Field, value)]),
      );
    if (field.type !== 'group' || !(tree instanceof Map)) return tree;
    return new Map(
      Object.entries(field.fields as Table).map(([key, one]) => {
        const stated = tree.get(key) as Tree | undefined;
        return [
          key,
          stated === undefined ? this.chance.of(this.of(one as Field, key)) : this.filled(one as Field, stated),
        ];
      }),
    );
  }

  private texts(field: ScalarField): readonly string[] {
    switch (field.type) {
      case 'quantity': {
        const write = (base: number): string => `${plainNumber(inUnit(base, field.unit))} ${field.unit}`;
        const read = readScalar(field, field.example).value as { lo: number } | undefined;
        const near = read ? [0.01, 0.1, 0.25, 0.5, 1, 2, 4, 10, 100].map((factor) => write(read.lo * factor)) : [];
        return [
          ...field.range.map(write),
          ...near,
          ...(field.dimension === 'money' ? ['10 USD', '1000 USD', '10 EUR'] : []),
        ];
      }
      case 'count':
        return [
          ...new Set([field.least, Math.min(field.most, 64), 0, 1, 2, 3, 4, 5, 6, 8, 16, Number(field.example)]),
        ].map(String);
      case 'flag':
        return ['true', 'false'];
      case 'choice':
        return field.choices;
      case 'date':
        return ['1995-01-01', '2026-11-01', '2095-01-01'];
      case 'version':
        return field.refersTo && this.names(field.refersTo).length > 0
          ? this.names(field.refersTo)
          : ['0.01', '99.99', field.example];
      case 'form':
        return [
          ...(field.usual ?? []),
          field.example,
          ...formTexts.filter((text) => field.parse(text) !== undefined),
          ...boxItemsOf(field),
          ...this.names(field.refersTo),
        ];
      case 'text': {
        const words = [...(field.usual ?? []), ...(field.spellings?.words ?? []), ...this.names(field.refersTo)];
        return [...words, field.example, ...(words.length > 0 ? [] : ['elsewhere'])];
      }
    }
  }

  private names(refersTo: Referent | readonly Referent[] | undefined): readonly string[] {
    const kinds = refersTo === undefined ? [] : Array.isArray(refersTo) ? refersTo : [refersTo as Referent];
    const listed = kinds.flatMap((kind: Referent) =>
      thingLists(this.build, kind).flatMap(({ things }) => things?.map(({ name }) => name) ?? []),
    );
    const spoken = this.spoken().filter(({ kinds: of }) => of.some((kind) => kinds.includes(kind)));
    return [...new Set([...listed, ...spoken.map(({ name }) => name)])];
  }

  /** The names of slots, ports, places and the like that the build speaks of, whether anything lists them or not. */
  private spoken(): readonly { readonly name: string; readonly kinds: readonly Referent[] }[] {
    return (this.said ??= [...scalarsOf(this.build.doc)].flatMap(({ node, field }) => {
      const kinds = field && 'refersTo' in field ? ([field.refersTo].flat() as Referent[]) : [];
      const isName = kinds.some((kind) => named.includes(kind)) && node.text !== '';
      return isName ? [{ name: node.text, kinds }] : [];
    }));
  }

  private said?: readonly { readonly name: string; readonly kinds: readonly Referent[] }[];
}

const boxThings = [
  'DisplayPort cable',
  'HDMI cable',
  'AC power cord',
  'SATA data cable',
  'drive screws',
  'standoff screws',
  'fan screws',
  'M.2 screw',
  'screw set',
  'USB stick',
  'I/O shield',
  'fan splitter',
  'low-profile bracket',
  'full-height bracket',
  'SFX to ATX bracket',
];
const boxItemsOf = ({ form }: FormField): readonly string[] =>
  form === 'a thing and how many' ? boxThings.flatMap((thing) => [thing, `${thing} x99`]) : [];
/** What is listed by name in part files. */
const named: readonly Referent[] = [
  'slot',
  'port',
  'header',
  'memory slot',
  'fan place',
  'radiator place',
  'bay',
  'display output',
];

/** Texts of several forms. */
const formTexts: readonly string[] = [
  ...[1, 3, 4, 5].flatMap((generation) => [1, 4, 8, 16].map((lanes) => `PCIe ${generation} x${lanes}`)),
  'SATA 3',
  'SATA 6 Gb/s',
  '2230',
  '2242',
  '2260',
  '22110',
  '1',
  '4',
  '10 slots',
  '640x480 @ 60 Hz',
  '7680x4320 @ 240 Hz',
];

/** Whether a tree has the shape of a field’s values. */
function isOf(field: Field, tree: Tree): boolean {
  if (field.type === 'group' || field.type === 'named') return tree instanceof Map;
  if (field.type === 'list') return Array.isArray(tree);
  return typeof tree === 'string' && readScalar(field, tree).value !== undefined;
}

const unique = (trees: readonly Tree[]): readonly Tree[] => [
  ...new Map(trees.map((tree) => [JSON.stringify(plain(tree)), tree])).values(),
];

const plain = (tree: Tree): unknown =>
  tree instanceof Map
    ? ['map', ...[...tree].map(([key, value]) => [key, plain(value)])]
    : Array.isArray(tree)
      ? tree.map(plain)
      : tree;
