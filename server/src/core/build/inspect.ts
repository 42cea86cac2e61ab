// Holds one file's text against the fields of its kind: what is unknown, misspelled, of the wrong kind or without its
// unit.
import { ROLE_WORDS } from '../manifest/role-words';
import { roles, type Role } from '../manifest/places';
import type { Doc } from '../parts/doc';
import type { Field, ListField, NamedField, ScalarField, Table } from '../parts/field';
import { kinds } from '../parts/kinds';
import { limits } from '../parts/limits';
import { nameSlip, readNode } from '../parts/scalar';
import { wordOf, type Vocabulary } from '../trade/vocabulary';
import { nearest, quoted, type Span } from '../text';
import { renameKey, setValue, type Entry, type MapNode, type Node } from '../yaml';
import { isOfAnotherTool } from './another-tool';
import { cutAtComma, type CutBy } from './comma-cut';
import { colonWithoutBlank, dashWithoutBlank, writtenAsMeant } from './blank-slips';
import { asListOfParts, isMapOfParts } from './map-of-parts';
import { isOwnStep } from './own-step';
import { pastedSheet } from './pasted-sheet';
import { asItems, asList, SEVERAL } from './several-in-one';
import { withoutTabs } from './tabs';
import { tableOf, tableOfEntry } from './tables';
import type { TextProblem, TroubleCode } from './text-problem';

export interface FileReading {
  readonly doc: Doc;
  readonly problems: readonly TextProblem[];
}

/** Inspects a file. Its result belongs to the document and is worked out once. */
export const inspect = (doc: Doc): FileReading =>
  doc.kept(inspect, () => ({ doc, problems: pastedSheet(doc) ?? new Inspection(doc).run() }));

const join = (path: string, key: string): string => (path === '' ? key : `${path}.${key}`);

class Inspection {
  private readonly problems: TextProblem[] = [];

  constructor(private readonly doc: Doc) {}

  run(): readonly TextProblem[] {
    const { root, problems } = this.doc.parsed;
    if (isOfAnotherTool(this.doc)) {
      const span = (root?.type === 'map' ? root.entries[0]?.keySpan : undefined) ?? root!.span;
      this.report('of-another-tool', 'This file is not one of Fettle’s part files, and is left alone.', span, '');
      return this.problems;
    }
    for (const problem of problems) {
      const mends = problem.tabs ? withoutTabs(this.doc.text) : writtenAsMeant(problem.meant);
      this.report(problem.code, problem.message, problem.span, '', mends);
    }
    if (problems.some(({ tabs }) => tabs)) return this.problems;
    if (root?.type === 'map') this.top(root);
    else if (root && !(root.type === 'scalar' && root.text === ''))
      this.report('wrong-kind-of-value', 'The file is to hold keys with values, one below the other.', root.span, '');
    return this.problems;
  }

  private top(root: MapNode): void {
    const table = tableOf(this.doc);
    if (!table) return this.unknownKind(root);
    if (this.doc.kind !== 'build') return this.group(table, root, '');
    const parts = root.get('parts');
    this.group({ ...table, parts: { type: 'group', fields: {}, what: '', example: '' } }, root, '', 'parts');
    if (parts) this.parts(parts);
  }

  private unknownKind(root: MapNode): void {
    const entry = root.get('kind');
    const word = entry?.value.type === 'scalar' ? entry.value.text : '';
    const names = Object.keys(kinds);
    const meant = wordOf(ROLE_WORDS, word);
    const near = word === '' ? undefined : meant === undefined ? nearest(word, names) : roles[meant].kind;
    const message = entry
      ? `${quoted(word)} is no kind of part; the kinds are ${names.join(', ')}.`
      : `The file does not say which kind of part it is; write \`kind:\` and one of ${names.join(', ')}.`;
    const edits = near !== undefined && entry ? setValue(this.doc.parsed, entry.value, near) : undefined;
    this.report(
      'kind-unknown',
      message,
      entry?.value.span ?? root.entries[0]?.keySpan ?? root.span,
      'kind',
      edits ? [{ title: `Write ${quoted(near!)}`, edits }] : [],
    );
  }

  private parts(parts: Entry): void {
    if (parts.value.type !== 'map')
      return this.emptyOrWrong(parts.value, 'parts', 'the parts, each under its role, such as `board:`');
    for (const entry of parts.value.entries) {
      const role = Object.hasOwn(roles, entry.key) ? (roles[entry.key as keyof typeof roles] as Role) : undefined;
      const path = `parts.${entry.key}`;
      if (!role) this.unknownRole(parts.value, entry, path);
      else this.role(role, entry, path);
    }
  }

  /** A role under a word from elsewhere is answered with the word used here; any other with the nearest. */
  private unknownRole(parts: MapNode, entry: Entry, path: string): void {
    const meant = wordOf(ROLE_WORDS, entry.key);
    if (meant === undefined) return this.unknownKey(parts, entry, Object.keys(roles), path);
    const taken = parts.get(meant) !== undefined;
    const edits = taken ? undefined : renameKey(this.doc.parsed, parts, entry.key, meant);
    this.report(
      'unknown-key',
      `${quoted(entry.key)} is called ${quoted(meant)} ` +
        `here${taken ? `, and ${quoted(meant)} stands already: put it there` : ''}.`,
      entry.keySpan,
      path,
      edits ? [{ title: `Write ${quoted(meant)}`, edits }] : [],
    );
  }

  /** Several parts as a map of names. */
  private mapOfParts(map: MapNode, role: string, path: string): void {
    const edits = asListOfParts(this.doc, map);
    this.report(
      'wrong-kind-of-value',
      `A list belongs under ${quoted(role)}: one item a part, its name under ${quoted('name')}.`,
      map.entries[0]!.keySpan,
      path,
      edits ? [{ title: 'Make it a list, each with its name', edits }] : [],
    );
  }

  private role(role: Role, entry: Entry, path: string): void {
    const node = entry.value;
    if (node.type === 'map' && role.several && isMapOfParts(node, tableOfEntry(role, node)))
      return this.mapOfParts(node, entry.key, path);
    if (node.type === 'map') return this.group(tableOfEntry(role, node), node, path);
    if (node.type !== 'list') return this.noPart(node, path);
    if (!role.several) return this.emptyOrWrong(node, path, 'keys with values, such as `use: maker/model`');
    this.within(node.items, limits.partsOfRole, path).forEach((item, i) => {
      if (item.type === 'map') this.group(tableOfEntry(role, item), item, `${path}[${i}]`);
      else this.noPart(item, `${path}[${i}]`);
    });
  }

  /** A part’s name by itself: it belongs under `use`. */
  private noPart(node: Node, path: string): void {
    if (node.type !== 'scalar' || !node.text.includes('/'))
      return this.emptyOrWrong(node, path, 'keys with values, such as `use: maker/model`');
    const edits = setValue(this.doc.parsed, node, { use: node.text });
    this.report(
      'wrong-kind-of-value',
      `${quoted(node.text)} stands by itself; a part is named under \`use\`.`,
      node.span,
      path,
      edits ? [{ title: `Write \`use: ${node.text}\``, edits }] : [],
    );
  }

  private group(table: Table, map: MapNode, path: string, skip?: string): void {
    const own = (key: string): Field | undefined => (Object.hasOwn(table, key) ? (table[key] as Field) : undefined);
    for (const entry of this.uncut(map, path, own, own)) {
      if (entry.key === skip) continue;
      const at = join(path, entry.key);
      if (!Object.hasOwn(table, entry.key)) this.unknownKey(map, entry, Object.keys(table), at);
      else if (!entry.merged) this.field(table[entry.key] as Field, entry.value, at);
    }
  }

  private field(field: Field, node: Node, path: string): void {
    switch (field.type) {
      case 'group':
        if (field.bare !== undefined && node.type === 'scalar' && node.style !== 'empty')
          return this.field(field.fields[field.bare] as Field, node, path);
        return node.type === 'map'
          ? this.group(field.fields, node, path)
          : this.emptyOrWrong(node, path, `keys with values, such as \`${field.example}\``);
      case 'named':
        return this.named(field, node, path);
      case 'list':
        return this.list(field, node, path);
      default:
        return this.scalar(field, node, path);
    }
  }

  private named(field: NamedField, node: Node, path: string): void {
    if (node.type !== 'map') return this.emptyOrWrong(node, path, `names with values, such as \`${field.example}\``);
    const isName = (key: string): boolean => !!field.names && wordOf(field.names, key) !== undefined;
    const entries = this.uncut(node, path, () => field.of, isName);
    for (const entry of this.within(entries, field.most ?? limits.items, path)) {
      if (field.names) this.name(field.names, node, entry, `${path}.${entry.key}`);
      this.field(field.of, entry.value, `${path}.${entry.key}`);
    }
  }

  /** The entries of a map; of a value that a comma has cut it is told once, and neither half is among them. */
  private uncut(map: MapNode, path: string, ...[fieldOf, isKey]: CutBy): readonly Entry[] {
    const cut = cutAtComma(this.doc, map, fieldOf, isKey);
    for (const [{ key }, value] of cut ?? [])
      if (value !== 'rest') this.report(value.code, value.message, value.span, join(path, key), value.mends);
    return cut ? map.entries.filter((entry) => !cut.has(entry)) : map.entries;
  }

  /** A name that should be a word of a vocabulary. */
  private name(names: Vocabulary, map: MapNode, entry: Entry, path: string): void {
    const word = wordOf(names, entry.key);
    const earlier = map.entries.find((one) => word !== undefined && wordOf(names, one.key) === word);
    if (earlier && earlier !== entry)
      return this.report(
        'key-twice',
        `${quoted(entry.key)} and ${quoted(earlier.key)} both mean ${quoted(word!)}; write it once.`,
        entry.keySpan,
        path,
      );
    const slip = nameSlip(names, entry.key);
    if (!slip) return;
    const mends = slip.instead.flatMap((name) => {
      const edits = map.get(name) ? undefined : renameKey(this.doc.parsed, map, entry.key, name);
      return edits ? [{ title: `Write ${quoted(name)}`, edits }] : [];
    });
    this.report(slip.code, slip.message, entry.keySpan, path, mends);
  }

  private list(field: ListField, node: Node, path: string): void {
    if (node.type === 'list')
      return this.within(node.items, field.most ?? limits.items, path).forEach((item, i) => {
        const mend = asItems(this.doc, field.of, node, i);
        if (mend) this.report('wrong-kind-of-value', SEVERAL, item.span, `${path}[${i}]`, [mend]);
        else this.field(field.of, item, `${path}[${i}]`);
      });
    if (node.type === 'scalar' && node.style === 'empty') return;
    const mend = node.type === 'scalar' ? asList(this.doc, field, node) : undefined;
    const message = `A list belongs here, such as \`${field.example}\`.`;
    this.report('wrong-kind-of-value', message, node.span, path, mend ? [mend] : []);
  }

  /** What stands within a limit of number; where it is passed, that is said, and the rest is not read. */
  private within<T extends { readonly span: Span }>(all: readonly T[], most: number, path: string): readonly T[] {
    const first = all[most];
    if (!first) return all;
    const message = `More than ${most} entries stand in ${quoted(path)}; from here on they are not read.`;
    this.report('limits-reached', message, first.span, path);
    return all.slice(0, most);
  }

  private scalar(field: ScalarField, node: Node, path: string): void {
    if (node.type !== 'scalar')
      return this.report(
        'wrong-kind-of-value',
        `One value belongs here, such as \`${field.example}\`.`,
        node.span,
        path,
      );
    if (node.style === 'empty') return;
    const { slip } = readNode(this.doc, field, node);
    if (!slip || (field.type === 'choice' && field.refersTo === 'step' && isOwnStep(this.doc, node.text))) return;
    const plain = node.style === 'plain' && node.span.end - node.span.start === node.text.length;
    const span = plain ? { start: node.span.start + slip.start, end: node.span.start + slip.end } : node.span;
    const mends = slip.instead.flatMap((text) => {
      const edits = setValue(this.doc.parsed, node, field.type === 'flag' ? text === 'true' : text);
      return edits ? [{ title: `Write ${quoted(text)}`, edits }] : [];
    });
    this.report(slip.code, slip.message, span, path, mends);
  }

  /** Nothing written yet is no more than a fact not stated; anything else is of the wrong kind. */
  private emptyOrWrong(node: Node, path: string, wanted: string): void {
    if (node.type === 'scalar' && node.style === 'empty') return;
    const slip = colonWithoutBlank(node, this.doc.text) ?? { message: `Here belong ${wanted}.`, mends: [] };
    this.report('wrong-kind-of-value', slip.message, node.span, path, slip.mends);
  }

  private unknownKey(map: MapNode, entry: Entry, known: readonly string[], path: string): void {
    const slip = dashWithoutBlank(entry);
    if (slip) return this.report('unknown-key', slip.message, entry.keySpan, path, slip.mends);
    const free = known.filter((key) => !map.get(key));
    const near = nearest(entry.key, free);
    const edits = near !== undefined ? renameKey(this.doc.parsed, map, entry.key, near) : undefined;
    const hint = near !== undefined ? `; ${quoted(near)} is the nearest that does` : '';
    this.report(
      'unknown-key',
      `The key ${quoted(entry.key)} means nothing here${hint}.`,
      entry.keySpan,
      path,
      edits ? [{ title: `Write ${quoted(near!)}`, edits }] : [],
    );
  }

  /** What cannot be read as YAML is told as that alone, and so is what it stands in. */
  private report(code: TroubleCode, message: string, span: Span, path: string, mends: TextProblem['mends'] = []): void {
    const end = Math.max(span.end, span.start + 1);
    const isBroken = this.doc.parsed.problems.some(
      (one) => one.code === 'yaml-syntax' && one.span.start >= span.start && one.span.start < end,
    );
    if (isBroken && code !== 'yaml-syntax') return;
    this.problems.push({ code, message, span, path, mends });
  }
}
