// Completion: the keys that may stand at a place, in the order people write them, and the values (completion-values).
import type { Field, Table } from '../core/parts/field';
import { visible } from '../core/text';
import type { Language } from '../core/words/language';
import { nodeAt, type At } from '../core/yaml';
import { meaningOf, type Meaning } from '../core/build/field-at';
import { referentsOf } from '../core/build/references';
import { roles, type Role } from '../core/manifest/places';
import {
  edit,
  itemKinds,
  plainOrQuoted,
  sorted,
  typedAt,
  type CompletionItem,
  type CompletionList,
  type CompletionOptions,
  type Spot,
} from './completion-item';
import { filterOf, hasOffers, values } from './completion-values';
import { describeField } from './field-words';
import { offersOf, type Offer } from './offers';
import { markup } from './prose';
import type { Position, View } from './shapes';
import { throughTabs } from './through-tabs';

/** What may be written at a place of a judged file. */
export function completion(written: View, position: Position, options: CompletionOptions): CompletionList {
  const view = throughTabs(written);
  const offset = view.doc.lines.offsetAt(position);
  const at = nodeAt(view.doc.parsed, offset);
  if (!at) return { isIncomplete: false, items: [] };
  const spot: Spot = { view, at: writtenOn(at, view.doc.text, offset), offset, options };
  const { isIncomplete, items, ...rest } = values(spot);
  const found = keys(spot);
  return { isIncomplete: isIncomplete || found.byLabel, items: [...items, ...behind(found.items, items)], ...rest };
}

/** Keys behind words that may stand alone, such as a step’s: each are in an order of their own. */
const behind = (keys: readonly CompletionItem[], { length }: readonly CompletionItem[]): readonly CompletionItem[] =>
  length === 0 ? keys : keys.map((item, i) => ({ ...item, sortText: sorted(length + i) }));

/** Behind a plain value and a blank stands more of that value: a unit behind its number, a name of several words. */
function writtenOn(at: At, text: string, offset: number): At {
  const { node } = at;
  if (at.where !== 'gap' || node?.type !== 'scalar' || node.style !== 'plain') return at;
  const { start, end } = node.span;
  if (end > offset || !/^[ \t]*$/.test(text.slice(end, offset))) return at;
  return { ...at, where: 'value', prefix: text.slice(start, offset), replace: { start, end: offset } };
}

interface Keys {
  readonly items: CompletionItem[];
  /** Whether some are found by what data sheets call them once no key is named so. */
  readonly byLabel: boolean;
}

const none: Keys = { items: [], byLabel: false };

/** Where a key would stand: on a key, in a gap of a map, or on a line of its own below a key without value. */
function keys(spot: Spot): Keys {
  const { at, view } = spot;
  const meaning = meaningOf(view.doc, at.where === 'key' ? at.path.slice(0, -1) : at.path);
  if (!meaning) return none;
  if (at.where === 'key' || (at.where === 'gap' && at.map && !at.entry && !at.node) || emptyFile(spot))
    return keysOf(spot, meaning, at.map);
  if (isBelowKey(spot)) return keysOf(spot, meaning, undefined);
  // A word alone, not yet a key, stands where keys belong: as a value below a key, or as the whole text.
  return at.where === 'value' &&
    at.node?.type === 'scalar' &&
    (meaning.table ?? (meaning.field?.type === 'named' ? {} : undefined))
    ? keysOf(spot, meaning, undefined)
    : none;
}

const emptyFile = ({ view, at }: Spot): boolean => at.path.length === 0 && view.doc.parsed.root === undefined;

function isBelowKey({ view, at, offset }: Spot): boolean {
  if (at.where !== 'gap' || at.node?.type !== 'scalar' || at.node.style !== 'empty') return false;
  if (at.list) return true;
  return (
    at.entry !== undefined &&
    view.doc.lines.positionAt(offset).line > view.doc.lines.positionAt(at.entry.keySpan.end).line
  );
}

function keysOf(spot: Spot, meaning: Meaning, map: At['map']): Keys {
  const current = spot.at.where === 'key' ? spot.at.entry?.key : undefined;
  const isFree = (key: string): boolean => key === current || !map?.get(key);
  const table: Table = meaning.table ?? {};
  const known = asWritten(table, meaning).filter(isFree);
  const names = meaning.field?.type === 'named' ? namesOf(spot, meaning.field) : [];
  const typed = typedAt(spot).toLowerCase();
  const isNamed = typed === '' || known.some((key) => fromWord(key, typed) !== undefined);
  return {
    items: [
      ...known.map((key, i) =>
        keyItem(spot, key, { field: table[key] as Field, order: i, typed: isNamed ? '' : typed }),
      ),
      ...names.filter(({ name }) => isFree(name)).map((offer, i) => nameKeyItem(spot, offer, i)),
    ],
    byLabel: known.some((key) => table[key]?.labels !== undefined),
  };
}

/** A text from the first of its words that begins with what is typed, in small letters; undefined where none does. */
function fromWord(text: string, typed: string): string | undefined {
  const small = text.toLowerCase();
  for (let at = small.indexOf(typed); at >= 0; at = small.indexOf(typed, at + 1))
    if (at === 0 || !/[\p{L}\p{N}]/u.test(small[at - 1]!)) return text.slice(at);
  return undefined;
}

interface KeyToWrite {
  readonly field: Field;
  readonly order: number;
  /** What is typed that no key is named by, in small letters; else empty. */
  readonly typed: string;
}

/** What data sheets call it, where what is typed begins a word of that: the label, and from that word on. */
function labelTyped({ labels = [] }: Field, typed: string): { label: string; from: string } | undefined {
  if (typed === '') return undefined;
  for (const label of labels) {
    const from = fromWord(label, typed);
    if (from !== undefined) return { label, from };
  }
  return undefined;
}

/** Names of things that are there, or the words of the map’s vocabulary. */
const namesOf = ({ view, options }: Spot, field: Field & { type: 'named' }): Offer[] => [
  ...offersOf(view, referentsOf(field), options.language),
  ...(field.names?.words ?? []).map((name) => ({ name, spellings: field.names?.spellings[name] ?? [] })),
];

/** Of a part in a build its part file and its place come first: its facts are mostly stated in that file. */
function asWritten(table: Table, { role, below }: Meaning): string[] {
  const all = Object.keys(table);
  if (role === undefined || below?.length !== 0) return all;
  const placing = Object.keys((roles[role] as Role).fields);
  return [...placing, ...all.filter((key) => !placing.includes(key))];
}

function keyItem(spot: Spot, key: string, { field, order, typed }: KeyToWrite): CompletionItem {
  const { options } = spot;
  const called = labelTyped(field, typed);
  const hasColon = isBeforeColon(spot);
  const isDeep =
    field.type === 'group' || field.type === 'named' || (field.type === 'list' && field.of.type === 'group');
  const unit =
    options.snippets && !hasColon && field.type === 'quantity' && field.dimension !== 'money'
      ? `${key}: \${1} ${field.unit.replace(/[$}\\]/g, '\\$&')}`
      : undefined;
  const asks = !hasColon && !isDeep && !unit && options.again !== undefined && hasOffers(field);
  return {
    label: key,
    kind: itemKinds.property,
    detail: detailOf(field, options.language),
    sortText: sorted(order),
    ...(called ? { filterText: called.from } : {}),
    ...(called && options.labelDetails ? { labelDetails: { description: visible(called.label) } } : {}),
    documentation: markup(describeField(key, field, options.language), options.markup),
    ...(unit ? { insertTextFormat: 2 as const } : {}),
    ...(asks ? { command: { title: options.language.word('Show what may stand here'), command: options.again! } } : {}),
    textEdit: edit(spot, hasColon ? key : (unit ?? (isDeep ? `${key}:` : `${key}: `))),
  };
}

const isBeforeColon = ({ at, view }: Spot): boolean =>
  at.where === 'key' && /^[ \t]*:/.test(view.doc.text.slice(at.replace.end));

function nameKeyItem(spot: Spot, offer: Offer, order: number): CompletionItem {
  const { name, detail } = offer;
  const filter = filterOf(spot, offer);
  return {
    label: visible(name),
    kind: itemKinds.reference,
    ...(detail ? { detail: visible(detail) } : {}),
    sortText: sorted(order),
    ...(filter === undefined ? {} : { filterText: filter }),
    textEdit: edit(spot, isBeforeColon(spot) ? plainOrQuoted(name) : `${plainOrQuoted(name)}: `),
  };
}

function detailOf(field: Field, language: Language): string {
  if (field.type === 'quantity') return field.unit;
  return field.type === 'choice' ? language.word('one of several') : field.example;
}
