// Which fields of a kind of part a label of a data sheet may mean, and what the label says beside its name.
import type { Field, Table } from '../parts/field';
import { kinds, type Kind } from '../parts/kinds';
import { isElsewhere, labelKey, plainLine, trimEnds, withoutMarks, wordSet } from './clean';

export interface Target {
  /** Keys from the part file’s root. */
  readonly path: readonly string[];
  readonly field: Field;
}

/** What stands in a label beside its name. */
export interface Qualified {
  /** `mm` of `Length (mm)`. */
  readonly unit?: string;
  /** `LWH` of `Dimensions (L x W x H)`. */
  readonly axes?: string;
  readonly isMost: boolean;
  /** Something that may take the value’s plainness away. */
  readonly isUnsure: boolean;
  /** The mark of a note. */
  readonly marks: string;
}

export interface Match extends Qualified {
  readonly targets: readonly Target[];
}

const UNITS = wordSet(
  'mm|cm|m|in|inch|inches|zoll|g|kg|kgs|lb|lbs|w|watt|watts|v|vdc|volt|a|ampere|ma|rpm|u/min|1/min|dba|db(a)|cfm|' +
    'm³/h|m3/h|pa|mmh2o|mmh₂o|mm h2o|mm-h2o|°c|℃|mb/s|gb/s|gb|tb|mhz|mt/s|ms|hz|%',
);
const AXIS = wordSet('l|w|h|d|b|t|length|width|height|depth|länge|breite|höhe|tiefe');
const MOST = /^(?:max\.?|maximum|maximal|up to|bis zu|bis|limit)$/i;
const HARMLESS = wordSet(
  'typ|typ.|typical|typisch|net|netto|product|produkt|operating|betrieb|nominal|rated|per fan|pro lüfter|each|' +
    'je lüfter|pro stück|per unit|per module|pro modul|sequential|sequenziell|sequentiell|tdp|tgp|tbp|tbw|tjmax|' +
    'mit lüfter|mit lüftern|with fan|with fans|incl. fan|incl fan|mit standfuß|with stand|psu|gpu|cpu|vga|ram|fan|' +
    'lüfter|atx|main|eps|atx12v|metric|metrisch|' +
    'tested|system|dependent on memory type|total|gesamt|total/usable|total / usable',
);

const AXIS_LETTERS: Readonly<Record<string, string>> = { b: 'W', l: 'L', w: 'W', h: 'H', d: 'D', t: 'D' };

const axisOf = (word: string): string => {
  const first = word.toLowerCase();
  if (first.startsWith('tief')) return 'D';
  if (first.startsWith('breit')) return 'W';
  return AXIS_LETTERS[first.charAt(0)] ?? '';
};

/** `LWH` of `L x W x H`, `L×B×H`, `length x width x height`. */
export function axesOf(text: string): string | undefined {
  const words = text
    .trim()
    .toLowerCase()
    .replace(/^in /, '')
    .split(/ ?[x×*/] ?/);
  if (words.length < 2 || words.length > 3 || !words.every((word) => AXIS.has(word))) return undefined;
  const axes = words.map(axisOf).join('');
  return new Set(axes).size === axes.length ? axes : undefined;
}

const PLAIN: Qualified = { isMost: false, isUnsure: false, marks: '' };

/** A label’s name and what stands in brackets, behind a comma or before it. */
function qualified(label: string): { readonly name: string; readonly said: Qualified } {
  const { text, marks } = withoutMarks(trimEnds(plainLine(label), ':. '));
  let said: Qualified = { ...PLAIN, marks };
  const name = text
    .replace(/[([]([^()[\]]{1,40}(?:\([^()]{1,6}\))?)[)\]]/g, (_whole, inner: string) => {
      said = withQualifier(said, inner);
      return ' ';
    })
    .replace(/, ?([^,]{1,20})$/, (whole, inner: string) => {
      const more = withQualifier(said, inner);
      if (more.isUnsure && !said.isUnsure) return whole;
      said = more;
      return '';
    });
  const axes = / ((?:[lwhdbt] ?[x×*] ?){1,2}[lwhdbt])$/i.exec(name.trim());
  if (axes) return { name: name.trim().slice(0, axes.index), said: withQualifier(said, axes[1]!) };
  return { name: name.trim(), said };
}

/** How a drive was measured: `128 KB`, `QD32`, `Q8T1`. */
const BLOCK = /^(?:\d{1,4} ?[KM]i?B?|QD? ?\d{1,3}(?: ?T\d{1,2})?)$/i;

function withQualifier(said: Qualified, inner: string): Qualified {
  const text = inner.replace(/,? ?(?:±|\+\/?-) ?\d{1,2} ?%/, '').trim();
  if (text === '' || BLOCK.test(text)) return said;
  const axes = axesOf(text);
  if (axes) return { ...said, axes };
  const unit = text.replace(/^in (?=\S)/i, '').replace(/\.$/, '');
  if (UNITS.has(unit.toLowerCase())) return { ...said, unit };
  if (MOST.test(text)) return { ...said, isMost: true };
  const parts = text.split(/[,;]\s?/);
  if (parts.length > 1) return parts.reduce(withQualifier, said);
  return HARMLESS.has(text.toLowerCase()) ? said : { ...said, isUnsure: true };
}

const LEADING =
  /^(?:max\.?|maximum|maximal[ers]?|maximale[rs]?|up to)[ .]{1,3}|[ ,]{1,3}(?:max\.?|maximum|maximal|up to|bis zu)$/i;
const HEADING_NOISE: readonly RegExp[] = [
  /\b(?:technical|technische?n?|specifications?|specs?|spezifikationen?|details|data|daten|info(?:rmation)?)\b/gi,
  /\b(?:parameters?|features|overview|general|allgemein\w{0,14}|support(?:ed)?|system|options?|section)\b/gi,
  /\b(?:properties|eigenschaften)\b/gi,
];

/** Headings of things that are no part of any fact here. */
const FOREIGN: readonly RegExp[] = [
  /\b(?:light\w{0,14}|rgb|argb|leds?|beleuchtung|controller|remote|audio|network|lan|wireless|wi-?fi|software)\b/i,
  /\b(?:accessor\w{0,14}|zubehör|bundle|lieferumfang|stand|standfuß|certificat\w{0,14}|hub|speakers?|lautsprecher)\b/i,
];

/** Names of labels kept by an index; a sheet asks after each of its own several times. */
const mostKept = 5000;

interface Named {
  readonly name: string;
  readonly said: Qualified;
}

/** What a label may be called: with all that stands beside its name, without that, without “max.” as well. */
function namesOf(label: string): readonly Named[] {
  const { text, marks } = withoutMarks(trimEnds(plainLine(label), ': '));
  const { name, said } = qualified(label);
  const bare = name.replace(LEADING, '');
  return [
    { name: text, said: { ...PLAIN, marks } },
    { name, said },
    ...(bare === name ? [] : [{ name: bare, said: { ...said, isMost: true } }]),
  ];
}

/** The indexes of a run, each made once. */
export class Indexes {
  private readonly made = new Map<string, LabelIndex>();

  of(kind: Kind, absent: readonly string[] = []): LabelIndex {
    const key = [kind, ...absent].join();
    const index = this.made.get(key) ?? new LabelIndex(kind, absent);
    this.made.set(key, index);
    return index;
  }
}

interface Entry extends Target {
  /** The labels of the group that it stands in; none where nothing above it has a label. */
  readonly group: readonly string[];
  /** Whether the label names the group too, and needs no heading. */
  readonly isWhole: boolean;
}

/** The labels of one kind of part. */
export class LabelIndex {
  private readonly byKey = new Map<string, Entry[]>();
  /** Headings of groups, in the plural too. */
  private readonly groups = new Set<string>();
  private readonly read = new Map<string, readonly Named[]>();

  constructor(
    readonly kind: Kind,
    /** Keys of groups that the part in question does not have. */
    private readonly absent: readonly string[] = [],
  ) {
    this.walk(kinds[kind], [], []);
  }

  private walk(table: Table, path: readonly string[], group: readonly string[]): void {
    for (const [key, each] of Object.entries(table)) {
      if (this.absent.includes(key)) continue;
      const field = each as Field;
      const own = [...path, key];
      const labels = field.labels ?? [];
      if (field.type === 'group') {
        for (const label of labels) for (const end of ['', 's', 'en']) this.groups.add(labelKey(label) + end);
        this.walk(field.fields, own, labels.length > 0 ? labels : group);
        continue;
      }
      for (const label of labels) this.add(labelKey(label), { path: own, field, group, isWhole: group.length === 0 });
      for (const above of group)
        for (const label of labels) {
          this.add(labelKey(above + label), { path: own, field, group, isWhole: true });
          this.add(labelKey(label + above), { path: own, field, group, isWhole: true });
        }
      const inner = field.type === 'named' || field.type === 'list' ? (field.of as Field) : undefined;
      if (inner?.type === 'group') this.walk(inner.fields, [...own, '*'], group);
    }
  }

  private add(key: string, entry: Entry): void {
    const all = this.byKey.get(key) ?? [];
    if (!all.some(({ path }) => path.join() === entry.path.join())) this.byKey.set(key, [...all, entry]);
  }

  /** Whether some field has this label, whatever stands beside it. */
  has(label: string): boolean {
    const hasOne = (one: string): boolean => this.names(one).some(({ name }) => this.byKey.has(labelKey(name)));
    return hasOne(label) || (halvesOf(label)?.every(hasOne) ?? false);
  }

  private names(label: string): readonly Named[] {
    const known = this.read.get(label);
    if (known) return known;
    const names = namesOf(label);
    if (this.read.size < mostKept) this.read.set(label, names);
    return names;
  }

  /** The fields that a label may mean under a heading; undefined where it is none of this kind’s, or not the part’s. */
  match(label: string, heading: string): Match | undefined {
    if (isElsewhere(label, this.kind) || isElsewhere(heading, this.kind)) return undefined;
    const bare = HEADING_NOISE.reduce((text, noise) => text.replace(noise, ' '), heading);
    const above = labelKey(bare.replace(/\(.{0,20}\)/g, ' '));
    for (const { name, said } of this.names(label)) {
      const targets = this.targets(labelKey(name), above, heading);
      if (targets.length > 0) return { ...said, isMost: said.isMost || MOST_WORD.test(name), targets };
    }
    return this.matchBoth(label, heading);
  }

  /** `Brand / Marke`: one label in two languages, where both mean the same. */
  private matchBoth(label: string, heading: string): Match | undefined {
    const [one, other] = halvesOf(label)?.map((half) => this.match(half, heading)) ?? [];
    const paths = new Set(other?.targets.map(({ path }) => path.join('.')));
    const targets = one?.targets.filter(({ path }) => paths.has(path.join('.'))) ?? [];
    return one && targets.length > 0 ? { ...one, targets } : undefined;
  }

  private targets(key: string, above: string, heading: string): readonly Target[] {
    if (key === '') return [];
    const composed = above === '' ? undefined : (this.byKey.get(above + key) ?? this.byKey.get(key + above));
    if (composed) return composed;
    const all = this.byKey.get(key) ?? [];
    if (this.groups.has(above)) {
      const inGroup = all.filter(({ group }) =>
        group.some((one) => [labelKey(one), `${labelKey(one)}s`].includes(above)),
      );
      return inGroup.length > 0 ? inGroup : all.filter(({ path }) => ANYWHERE.has(path.join('.')));
    }
    if (FOREIGN.some((words) => words.test(heading))) return [];
    const own = all.filter(({ isWhole }) => isWhole);
    if (own.length > 0) return own;
    return new Set(all.map(({ group }) => group.join())).size === 1 ? all : [];
  }
}

/** What a sheet lists under a heading of something else, since it hangs on that. */
const ANYWHERE: ReadonlySet<string> = new Set(['tube-length', 'sockets', 'base', 'paste']);

function halvesOf(label: string): readonly string[] | undefined {
  const halves = label.split(' / ');
  return halves.length === 2 ? halves : undefined;
}

const MOST_WORD = /\b(?:max\.?|maximum|maximal\w{0,14})(?: |$)/i;
