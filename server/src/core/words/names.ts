// Names that files give: they are told as they stand, whatever word of ours they spell.
import type { Build } from '../build/build';
import { tableOf, tableOfEntry } from '../build/tables';
import { roles } from '../manifest/places';
import type { Field, Table } from '../parts/field';
import type { MapNode, Node } from '../yaml';
import type { Language } from './language';

/** The language as it speaks of a build: no name of it is taken for a word. */
export const languageOf = (language: Language, build: Build | undefined): Language =>
  language.tag === 'en' || !build ? language : language.keeping(namesIn(build));

/** What a build and its part files call things, parts as their makers and models together, too. */
function namesIn(build: Build): ReadonlySet<string> {
  const names = new Set<string>();
  ofTable(build.doc.parsed.root, tableOf(build.doc) ?? {}, names);
  for (const placed of build.all()) {
    const { used, part, role } = placed;
    if (placed.map) ofTable(placed.map, tableOfEntry(roles[role], placed.map), names);
    if (used?.file) ofTable(used.file.parsed.root, tableOf(used.file) ?? {}, names);
    if (used) names.add(used.name);
    names.add([part.maker.text, part.model.text].filter((text) => text !== '').join(' '));
  }
  return names;
}

function ofTable(node: Node | undefined, table: Table, names: Set<string>): void {
  if (node?.type !== 'map') return;
  for (const { key, value } of node.entries) {
    const field = Object.hasOwn(table, key) ? (table[key] as Field) : undefined;
    // Which kind of part it is, is a word of ours, though any text is read there.
    if (field && key !== 'kind') ofField(value, field, names);
  }
}

/** Texts that are nobody’s vocabulary, and the keys of maps that someone names. */
function ofField(node: Node, field: Field, names: Set<string>): void {
  if (field.type === 'text' || field.type === 'version') {
    if (node.type === 'scalar' && !('spellings' in field) && !('usual' in field)) names.add(node.text);
  } else if (field.type === 'group') {
    ofTable(node, field.fields, names);
  } else if (field.type === 'list') {
    for (const item of node.type === 'list' ? node.items : [node]) ofField(item, field.of as Field, names);
  } else if (field.type === 'named' && node.type === 'map') {
    ofNamed(node, field, names);
  }
}

function ofNamed(node: MapNode, field: Field & { readonly type: 'named' }, names: Set<string>): void {
  for (const { key, value } of node.entries) {
    if (!field.names) names.add(key);
    ofField(value, field.of as Field, names);
  }
}
