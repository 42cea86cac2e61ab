// Names for things of a board that a sheet counts and does not name: a number each, in the order of the sheet.
import type { Line } from './columns';
import type { Found } from './draft';
import { isCounted } from './takers/board-things';

export interface ReadLine {
  readonly line: Line;
  readonly found: readonly Found[];
}

/** One thing: all that a line says of it. */
interface Thing {
  readonly root: string;
  /** Of a thing that is printed by name, that name. */
  readonly stem: string;
  readonly isNamed: boolean;
  /** What it stands under: things of one list add up, two lists may say the same twice. */
  readonly section: string;
  readonly key: string;
  readonly facts: Found[];
}

const ROOTS = new Set(['slots', 'ports', 'headers']);
const BY_SOURCE = /cpu|processor|prozessor|chipset|chipsatz/i;

const sectionOf = ({ label, heading }: Line): string =>
  (label === '' || isCounted(label) ? heading : label).toLowerCase();

/** What lines found, with a number wherever a name was left open; where two lists may tell of the same, doubtful. */
export function numbered(read: readonly ReadLine[]): readonly Found[] {
  const things = thingsOf(read);
  const open = things.filter(({ isNamed }) => !isNamed);
  if (open.length === 0) return read.flatMap(({ found }) => found);
  const names = new Map<string, string | undefined>();
  const doubtful = new Set<string>();
  const lengths: Found[] = [];
  for (const stem of new Set(open.map((one) => one.stem))) {
    const own = open.filter((one) => one.stem === stem);
    const named = things.filter((one) => one.isNamed && isAlike(one, own[0]!));
    const { kept, isUnsure } = keptOf(own, named);
    lengths.push(...sharedLength(own, named));
    for (const one of own) names.set(one.key, undefined);
    const taken = new Set(named.map((one) => one.stem));
    const isAlone = kept.length === 1 && own[0]!.root === 'headers' && !taken.has(stem);
    let number = 0;
    for (const one of kept) {
      do number++;
      while (taken.has(`${stem}_${number}`));
      names.set(one.key, isAlone ? stem : `${stem}_${number}`);
      if (isUnsure) doubtful.add(one.key);
    }
  }
  return [
    ...read.flatMap(({ line, found }) => found.flatMap((one) => renamed(one, line, names, doubtful))),
    ...lengths,
  ];
}

/** `3x PCIe x16 slots` above three that are named, and of whose length nothing is said: that of each. */
function sharedLength(own: readonly Thing[], named: readonly Thing[]): Found[] {
  const isLength = ({ fact: { path } }: Found): boolean => path.at(-1) === 'length';
  const said = own.map(({ facts }) => facts.find(isLength));
  const [first] = said;
  const isOfAll = said.every((one) => one?.isPlain && one.fact.value === first?.fact.value);
  const stems = new Set(named.map(({ stem }) => stem));
  if (!first || !isOfAll || stems.size !== own.length || named.some(({ facts }) => facts.some(isLength))) return [];
  return [...stems].map((name) => ({ ...first, fact: { ...first.fact, path: ['slots', name, 'length'] } }));
}

function renamed(
  one: Found,
  line: Line,
  names: ReadonlyMap<string, string | undefined>,
  doubtful: ReadonlySet<string>,
): Found[] {
  const key = keyOf(one, line);
  if (!names.has(key)) return [one];
  const name = names.get(key);
  if (name === undefined) return [];
  const [root, , ...rest] = one.fact.path;
  return [{ fact: { ...one.fact, path: [root!, name, ...rest] }, isPlain: one.isPlain && !doubtful.has(key) }];
}

const keyOf = ({ fact: { path } }: Found, line: Line): string => `${line.line} ${line.label} ${path[0]} ${path[1]}`;

function thingsOf(read: readonly ReadLine[]): Thing[] {
  const things = new Map<string, Thing>();
  for (const { line, found } of read)
    for (const one of found) {
      const [root = '', name = ''] = one.fact.path;
      if (!ROOTS.has(root) || name === '') continue;
      const key = keyOf(one, line);
      const [stem = ''] = name.split('#');
      const thing = things.get(key) ?? {
        root,
        stem,
        isNamed: !name.includes('#'),
        section: sectionOf(line),
        key,
        facts: [],
      };
      thing.facts.push(one);
      things.set(key, thing);
    }
  return [...things.values()];
}

/** Whether a printed name may be that of one of the things. */
function isAlike(named: Thing, open: Thing): boolean {
  if (named.root !== open.root) return false;
  if (open.root !== 'slots') return open.root === 'ports' || named.stem.startsWith(open.stem);
  return named.stem[0] === open.stem[0] && named.stem.includes('WIFI') === open.stem.includes('WIFI');
}

/** The things that a sheet has, where it tells of them in one list, in several that add up, or twice the same. */
function keptOf(
  own: readonly Thing[],
  named: readonly Thing[],
): { readonly kept: readonly Thing[]; readonly isUnsure: boolean } {
  const printed = new Set(named.map(({ stem }) => stem)).size;
  if (printed >= own.length || (printed > 0 && own.every(isBare))) return { kept: [], isUnsure: false };
  if (named.some(({ section }) => !own.some((one) => one.section === section))) return { kept: own, isUnsure: true };
  const sections = [...new Set(own.map(({ section }) => section))];
  if (sections.length <= 1 || sections.every((one) => BY_SOURCE.test(one))) return { kept: own, isUnsure: false };
  const [first, ...others] = sections.map((section) => own.filter((one) => one.section === section));
  const isSame = others.every((other) => signOf(other) === signOf(first!));
  return isSame ? { kept: first!, isUnsure: false } : { kept: own, isUnsure: true };
}

/** What sums up the named ones beside it says of each no more than what it is. */
const isBare = ({ facts }: Thing): boolean =>
  facts.every(({ fact: { path, value } }) => value === '{}' || ['kind', 'length'].includes(path.at(-1)!));

const signOf = (things: readonly Thing[]): string =>
  things
    .map(({ facts }) =>
      facts
        .map(({ fact }) => `${fact.path.slice(2).join('.')}=${String(fact.value)}`)
        .sort()
        .join(),
    )
    .sort()
    .join('\n');
