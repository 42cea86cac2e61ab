// References: the names in a file that stand for things which this file or another lists, found by the tables.
import { buildFile } from '../manifest/build-file';
import { roleNames, roles, type Role } from '../manifest/places';
import type { Doc } from '../parts/doc';
import type { Fact } from '../parts/fact';
import { nameFact } from '../parts/facts';
import type { Field, NamedField, Referent, ScalarField, Table } from '../parts/field';
import type { Entry, MapNode, Node } from '../yaml';
import type { Build } from './build';
import { areasIn, rolesOf, sectionNames } from './reads';
import { tableOf, tableOfEntry } from './tables';

/** One name, where it is written. */
export interface Reference {
  readonly to: readonly Referent[];
  readonly name: string;
  /** The name as a fact of the file, with its place. */
  readonly fact: Fact<string> & { readonly node: Node };
  /** The map whose key it is; undefined where it is a value. */
  readonly keyOf?: MapNode;
  /** Of the build or the house, of where a part goes, or among a part’s own facts, in its file or spelled out. */
  readonly saidOf: 'build' | 'place' | 'part';
}

/** Which things the text of a field, or the keys of a map of names, stand for. */
export function referentsOf(field: Field): readonly Referent[] {
  const to = (field as NamedField).refersTo;
  return to === undefined ? [] : typeof to === 'string' ? [to] : to;
}

/** All references of a file, in the order of its text. The list belongs to the document and is made once. */
export const referencesIn = (doc: Doc): readonly Reference[] => doc.kept(referencesIn, () => new Walk(doc).run());

/** All references of a build’s own text; only what may hold some is noted as read. */
export function referencesOf(build: Build): readonly Reference[] {
  build.reads?.add(referring);
  return referencesIn(build.doc);
}

const mayRefer = (field: Field): boolean =>
  referentsOf(field).length > 0 ||
  (field.type === 'group' && Object.values(field.fields).some(mayRefer)) ||
  ((field.type === 'named' || field.type === 'list') && mayRefer(field.of));

const referring = rolesOf([...roleNames, ...sectionNames.filter((name) => mayRefer(buildFile[name])).flatMap(areasIn)]);

/** The reference at an offset of a file. */
export const referenceAt = (doc: Doc, offset: number): Reference | undefined =>
  referencesIn(doc).find(({ fact: { node } }) => node.span.start <= offset && offset <= node.span.end);

class Walk {
  private readonly found: Reference[] = [];
  private saidOf: Reference['saidOf'];

  constructor(private readonly doc: Doc) {
    this.saidOf = doc.kind === 'part' ? 'part' : 'build';
  }

  run(): readonly Reference[] {
    const { root } = this.doc.parsed;
    const table = tableOf(this.doc);
    if (root?.type !== 'map' || !table) return [];
    this.group(table, root, '');
    const parts = this.doc.kind === 'build' ? root.get('parts')?.value : undefined;
    if (parts?.type === 'map') for (const entry of parts.entries) this.role(entry);
    return this.found.sort((a, b) => a.fact.node.span.start - b.fact.node.span.start);
  }

  private role(entry: Entry): void {
    if (!Object.hasOwn(roles, entry.key) || entry.merged) return;
    const role = roles[entry.key as keyof typeof roles] as Role;
    const { value } = entry;
    const path = `parts.${entry.key}`;
    if (value.type === 'map') this.placed(role, value, path);
    else if (value.type === 'list' && role.several)
      value.items.forEach((item, i) => item.type === 'map' && this.placed(role, item, `${path}[${i}]`));
  }

  private placed(role: Role, map: MapNode, path: string): void {
    const table = tableOfEntry(role, map);
    for (const entry of map.entries) {
      const field = Object.hasOwn(table, entry.key) ? (table[entry.key] as Field) : undefined;
      if (!field || entry.merged) continue;
      this.saidOf = field === role.fields[entry.key] ? 'place' : 'part';
      this.field(field, entry.value, `${path}.${entry.key}`);
    }
    this.saidOf = 'build';
  }

  private group(table: Table, map: MapNode, path: string): void {
    for (const { key, value, merged } of map.entries)
      if (Object.hasOwn(table, key) && !merged)
        this.field(table[key] as Field, value, path === '' ? key : `${path}.${key}`);
  }

  private field(field: Field, node: Node, path: string): void {
    if (field.type === 'group') {
      if (node.type === 'map') this.group(field.fields, node, path);
      else if (field.bare !== undefined) this.field(field.fields[field.bare] as Field, node, path);
    } else if (field.type === 'named') this.named(field, node, path);
    else if (field.type === 'list') {
      if (node.type === 'list') node.items.forEach((item, i) => this.field(field.of, item, `${path}[${i}]`));
    } else this.scalar(field, node, path);
  }

  private named(field: NamedField, node: Node, path: string): void {
    if (node.type !== 'map') return;
    const to = referentsOf(field);
    for (const { key, keySpan, value, merged, fixable } of node.entries) {
      if (merged) continue;
      if (to.length > 0) {
        const name: Node = { type: 'scalar', text: key, style: 'plain', span: keySpan, fixable };
        this.add(to, nameFact(field, this.doc, `${path}.${key}`, name), key, node);
      }
      this.field(field.of, value, `${path}.${key}`);
    }
  }

  private scalar(field: ScalarField, node: Node, path: string): void {
    const to = referentsOf(field);
    if (to.length === 0 || node.type !== 'scalar' || node.style === 'empty' || isBeside(field, node.text)) return;
    this.add(to, nameFact(field, this.doc, path, node), node.text);
  }

  private add(to: readonly Referent[], fact: Fact<string>, name: string, keyOf?: MapNode): void {
    const { saidOf } = this;
    this.found.push({ to, name, fact: fact as Reference['fact'], saidOf, ...(keyOf ? { keyOf } : {}) });
  }
}

const isBeside = (field: ScalarField, word: string): boolean =>
  'besides' in field && field.besides !== undefined && field.besides.includes(word);
