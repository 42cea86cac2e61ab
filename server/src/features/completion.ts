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

/** What may be written at a place of a judged file. */
export function completion(view: View, position: Position, options: CompletionOptions): CompletionList {
  const offset = view.doc.lines.offsetAt(position);
  const at = nodeAt(view.doc.parsed, offset);
  if (!at) return { isIncomplete: false, items: [] };
  const spot: Spot = { view, at: writtenOn(at, view.doc.text, offset), offset, options };
  const { isIncomplete, items } = values(spot);
  return { isIncomplete, items: [...keys(spot), ...items] };
}

/** Behind a plain value and a blank stands more of that value: a unit behind its number, a name of several words. */
function writtenOn(at: At, text: string, offset: number): At {
  const { node } = at;
  if (at.where !== 'gap' || node?.type !== 'scalar' || node.style !== 'plain') return at;
  const { start, end } = node.span;
  if (end > offset || !/^[ \t]*$/.test(text.slice(end, offset))) return at;
  return { ...at, where: 'value', prefix: text.slice(start, offset), replace: { start, end: offset } };
}

/** Where a key would stand: on a key, in a gap of a map, or on a line of its own below a key without value. */
function keys(spot: Spot): CompletionItem[] {
  const { at, view } = spot;
  const meaning = meaningOf(view.doc, at.where === 'key' ? at.path.slice(0, -1) : at.path);
  if (!meaning) return [];
  if (at.where === 'key' || (at.where === 'gap' && at.map && !at.entry && !at.node) || emptyFile(spot))
    return keysOf(spot, meaning, at.map);
  if (isBelowKey(spot)) return keysOf(spot, meaning, undefined);
  // A word alone, not yet a key, stands where keys belong: as a value below a key, or as the whole text.
  return at.where === 'value' &&
    at.node?.type === 'scalar' &&
    (meaning.table ?? (meaning.field?.type === 'named' ? {} : undefined))
    ? keysOf(spot, meaning, undefined)
    : [];
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

function keysOf(spot: Spot, meaning: Meaning, map: At['map']): CompletionItem[] {
  const current = spot.at.where === 'key' ? spot.at.entry?.key : undefined;
  const isFree = (key: string): boolean => key === current || !map?.get(key);
  const table: Table = meaning.table ?? {};
  const known = asWritten(table, meaning)
    .filter(isFree)
    .map((key, i) => keyItem(spot, key, table[key] as Field, i));
  const names = meaning.field?.type === 'named' ? namesOf(spot, meaning.field) : [];
  return [...known, ...names.filter(({ name }) => isFree(name)).map((offer, i) => nameKeyItem(spot, offer, i))];
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

function keyItem(spot: Spot, key: string, field: Field, order: number): CompletionItem {
  const { options } = spot;
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
    ...(field.labels ? { filterText: `${key} ${field.labels.slice(0, mostLabels).join(' ')}` } : {}),
    documentation: markup(describeField(key, field, options.language), options.markup),
    ...(unit ? { insertTextFormat: 2 as const } : {}),
    ...(asks ? { command: { title: options.language.word('Show what may stand here'), command: options.again! } } : {}),
    textEdit: edit(spot, hasColon ? key : (unit ?? (isDeep ? `${key}:` : `${key}: `))),
  };
}

/** By so many of the labels that data sheets print, a key is found as well. */
const mostLabels = 12;

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
