// Completion: the keys that may stand at a place, and the values that a field, the board or the parts folder allows.
import type { Field, Table } from '../core/parts/field';
import { roles } from '../core/manifest/places';
import type { Kind } from '../core/parts/kinds';
import { visible } from '../core/text';
import { nodeAt, type At } from '../core/yaml';
import { meaningOf, type Meaning } from '../core/build/field-at';
import { describeField } from './field-words';
import { referentsOf } from '../core/build/references';
import { offersOf, type Offer } from './offers';
import { markup } from './prose';
import type { MarkupContent, Position, TextEdit, View } from './shapes';

/** The protocol’s numbers. */
export const itemKinds = { property: 10, value: 12, enumMember: 20, reference: 18 } as const;

export interface CompletionItem {
  label: string;
  kind: number;
  detail?: string;
  documentation?: MarkupContent;
  sortText?: string;
  filterText?: string;
  insertTextFormat?: 1 | 2;
  textEdit: TextEdit;
}

export interface CompletionOptions {
  readonly markup: MarkupContent['kind'];
  readonly snippets: boolean;
  /** Names of the parts of a kind. */
  readonly parts: (kind: Kind) => readonly string[];
}

/** What may be written at a place of a judged file. */
export function completion(view: View, position: Position, options: CompletionOptions): CompletionItem[] {
  const offset = view.doc.lines.offsetAt(position);
  const at = nodeAt(view.doc.parsed, offset);
  if (!at) return [];
  const spot: Spot = { view, at, offset, options };
  return [...keys(spot), ...values(spot)];
}

interface Spot {
  readonly view: View;
  readonly at: At;
  readonly offset: number;
  readonly options: CompletionOptions;
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
  const known = Object.keys(table)
    .filter(isFree)
    .map((key, i) => keyItem(spot, key, table[key] as Field, i));
  const names = meaning.field?.type === 'named' ? offersOf(spot.view, referentsOf(meaning.field)) : [];
  return [...known, ...names.filter(({ name }) => isFree(name)).map((offer, i) => nameKeyItem(spot, offer, i))];
}

function keyItem(spot: Spot, key: string, field: Field, order: number): CompletionItem {
  const { options, view } = spot;
  const hasColon = spot.at.where === 'key' && /^[ \t]*:/.test(view.doc.text.slice(spot.at.replace.end));
  const isDeep =
    field.type === 'group' || field.type === 'named' || (field.type === 'list' && field.of.type === 'group');
  const unit =
    options.snippets && !hasColon && field.type === 'quantity' && field.dimension !== 'money'
      ? `${key}: \${1} ${field.unit.replace(/[$}\\]/g, '\\$&')}`
      : undefined;
  return {
    label: key,
    kind: itemKinds.property,
    detail: detailOf(field),
    sortText: sorted(order),
    documentation: markup(describeField(key, field), options.markup),
    ...(unit ? { insertTextFormat: 2 as const } : {}),
    textEdit: edit(spot, hasColon ? key : (unit ?? (isDeep ? `${key}:` : `${key}: `))),
  };
}

function nameKeyItem(spot: Spot, { name, detail }: Offer, order: number): CompletionItem {
  const hasColon = spot.at.where === 'key' && /^[ \t]*:/.test(spot.view.doc.text.slice(spot.at.replace.end));
  return {
    label: visible(name),
    kind: itemKinds.reference,
    ...(detail ? { detail: visible(detail) } : {}),
    sortText: sorted(order),
    textEdit: edit(spot, hasColon ? plainOrQuoted(name) : `${plainOrQuoted(name)}: `),
  };
}

function detailOf(field: Field): string {
  if (field.type === 'quantity') return field.unit;
  return field.type === 'choice' ? 'one of several' : field.example;
}

/** Where a value would stand, of a scalar field or of a list of them. */
function values(spot: Spot): CompletionItem[] {
  const { at, view } = spot;
  if (at.where === 'key' || (at.where === 'gap' && at.map && !at.entry && !at.list)) return [];
  const meaning = meaningOf(view.doc, at.path);
  const field = meaning?.field && scalarAt(at, meaning.field);
  if (!meaning || !field) return [];
  return offers(spot, meaning, field).map((offer, i) => valueItem(spot, offer, i));
}

/**
 * The field of the one value that would stand here: the field’s own, that of a list’s items, or the key that a bare
 * text in a list stands for.
 */
function scalarAt(at: At, field: Field): Field | undefined {
  const isItem = at.list !== undefined && (at.node === undefined || at.node.type === 'scalar');
  if (field.type === 'list') return isItem || at.node?.type === 'scalar' ? scalarAt(at, field.of as Field) : undefined;
  if (field.type === 'group')
    return field.bare !== undefined && isItem ? (field.fields[field.bare] as Field) : undefined;
  return field.type === 'named' ? undefined : field;
}

function offers({ view, options }: Spot, meaning: Meaning, field: Field): Offer[] {
  const kinds = referentsOf(field);
  const named = kinds.includes('part file') ? options.parts(kindUsed(meaning)).map((name) => ({ name })) : [];
  const things = [...named, ...offersOf(view, kinds, meaning.role)];
  return [...things, ...ofField(field).filter(({ name }) => !things.some((thing) => thing.name === name))];
}

/** A role uses parts of its kind; a cable was made for, and used with, a supply. */
const kindUsed = ({ role, below }: Meaning): Kind =>
  role && below?.[0] === 'use' ? (roles[role].kind as Kind) : 'supply';

function ofField(field: Field): Offer[] {
  switch (field.type) {
    case 'choice':
      return field.choices.map((name) => ({ name }));
    case 'flag':
      return [{ name: 'true' }, { name: 'false' }];
    case 'text':
    case 'form':
      return (field.usual ?? []).map((name) => ({ name }));
    default:
      return [];
  }
}

function valueItem(spot: Spot, offer: Offer, order: number): CompletionItem {
  const { text, at } = { text: spot.view.doc.text, at: spot.at };
  const isQuoted = at.node?.type === 'scalar' && (at.node.style === 'double' || at.node.style === 'single');
  const needsSpace = at.where === 'gap' && /[:-]$/.test(text.slice(0, at.replace.start));
  const written = isQuoted ? JSON.stringify(offer.name) : plainOrQuoted(offer.name);
  return {
    label: visible(offer.name),
    kind: itemKinds.value,
    ...(offer.detail ? { detail: visible(offer.detail) } : {}),
    sortText: sorted(order),
    ...(isQuoted ? { filterText: written } : {}),
    textEdit: edit(spot, needsSpace ? ` ${written}` : written),
  };
}

/** Names are someone’s own: one that YAML would read otherwise is quoted. */
function plainOrQuoted(name: string): string {
  const isPlain =
    /^[A-Za-z][^:#,[\]{}"'\\\p{Cc}]*$/u.test(name) &&
    name.trim() === name &&
    !/^(true|false|null|yes|no|on|off|y|n)$/i.test(name);
  return isPlain || /^\d+(\.\d+)? [A-Za-z]+$/.test(name) || /^(true|false)$/.test(name) ? name : JSON.stringify(name);
}

const sorted = (order: number): string => String(order).padStart(4, '0');

function edit({ view, at, offset }: Spot, newText: string): TextEdit {
  const { start } = at.replace;
  const end = at.where === 'gap' ? offset : at.replace.end;
  return { range: view.doc.lines.rangeOf({ start, end: Math.max(start, end) }), newText };
}
