// The values that completion offers: what serves the build best first, and why what comes last would not do.
import type { Meaning } from '../core/build/field-at';
import { meaningOf, placedAt } from '../core/build/field-at';
import { referentsOf } from '../core/build/references';
import { promisedCurrency } from '../core/figures/cost';
import { partsToPlace } from '../core/figures/assigning';
import { carrierIn } from '../core/figures/slots';
import { roles } from '../core/manifest/places';
import type { Field } from '../core/parts/field';
import type { Kind } from '../core/parts/kinds';
import { visible } from '../core/text';
import { plainLetters, type Vocabulary } from '../core/trade/vocabulary';
import type { At } from '../core/yaml';
import {
  edit,
  itemKinds,
  plainOrQuoted,
  sorted,
  typedAt,
  type CompletionItem,
  type CompletionList,
  type Spot,
} from './completion-item';
import type { Fit, Place } from './fit';
import { offersOf, type Offer } from './offers';
import { memorySlotsInOrder, versionsInOrder } from './ordered-offers';

/** Where a value would stand, of a scalar field or of a list of them. */
export function values(spot: Spot): CompletionList {
  const { at, view } = spot;
  const nothing: CompletionList = { isIncomplete: false, items: [] };
  if (at.where === 'key' || (at.where === 'gap' && at.map && !at.entry && !at.list)) return nothing;
  // Beside a value that is whole, another would make two of it.
  if (at.where === 'gap' && at.node?.type === 'scalar' && at.node.style !== 'empty') return nothing;
  const meaning = meaningOf(view.doc, at.path);
  const field = meaning?.field && scalarAt(at, meaning.field);
  if (!meaning || !field) return nothing;
  if (field.type === 'quantity') return { isIncomplete: false, items: unitItems(spot, field) };
  const { offers, isWhole } = offered(spot, meaning, field);
  const items = offers.map((offer, i) => valueItem(spot, offer, i));
  return isWhole ? { isIncomplete: false, items } : { isIncomplete: true, items, untried: true };
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

/** Whether something is offered once the key of a field is written. */
export const hasOffers = (field: Field): boolean =>
  field.type !== 'quantity' && (referentsOf(field).length > 0 || ofField(field).length > 0);

interface Offered {
  readonly offers: readonly Offer[];
  readonly isWhole: boolean;
}

function offered(spot: Spot, meaning: Meaning, field: Field): Offered {
  const { view, options } = spot;
  const { language } = options;
  const kinds = referentsOf(field);
  const parts = kinds.includes('part file') ? options.parts(kindUsed(meaning)) : [];
  const place = placeAt(spot, meaning);
  const things = place
    ? offersOf(view, kinds, language, meaning.role, place.key).filter(({ name }) => goesInto(spot, place, name))
    : kinds.includes('firmware version')
      ? versionsInOrder(view, offersOf(view, kinds, language))
      : kinds.includes('memory slot')
        ? memorySlotsInOrder(view, offersOf(view, kinds, language))
        : offersOf(view, kinds, language, meaning.role);
  const others = ofField(field).filter(({ name }) => !things.some((thing) => thing.name === name));
  const names = [...parts, ...things].map(({ name }) => name);
  if (!place || names.length === 0)
    return { offers: [...parts.map(({ name }) => ({ name })), ...things, ...others], isWhole: true };
  const { fits, isWhole } = options.fits.ranked(
    view,
    place,
    names,
    parts.map(({ doc }) => doc),
    options.trials,
    language,
  );
  const told = new Map(things.map((thing) => [thing.name, thing]));
  const offers = fits.map((fit) => offerOf(fit, place, told.get(fit.name)));
  return {
    offers: place.key === 'use' ? offers : [...others.filter(isOwn), ...offers, ...others.filter((one) => !isOwn(one))],
    isWhole,
  };
}

/** A supply’s own cables come before those of any other. */
const isOwn = ({ name }: Offer): boolean => name === 'own';

function offerOf({ name, words, isAgainst }: Fit, { placed, key }: Place, thing: Offer | undefined): Offer {
  return {
    name,
    ...(thing?.detail ? { detail: thing.detail } : {}),
    ...(words ? { words } : {}),
    ...(isAgainst ? { isAgainst } : {}),
    ...(key === 'use' ? { path: placed.path } : {}),
  };
}

/** The place that a value names, where each choice can be tried: a part file, or one thing that a part goes into. */
function placeAt({ view, at, offset }: Spot, { role, index, below }: Meaning): Place | undefined {
  const [key] = below ?? [];
  if (!view.build || role === undefined || index === undefined || below?.length !== 1 || typeof key !== 'string')
    return undefined;
  if (!Object.hasOwn(roles[role].fields, key) || key === 'firmware' || key === 'slots') return undefined;
  const placed = placedAt(view.build, role, index);
  const { start } = at.replace;
  return placed && { placed, key, replaces: at.replace, typed: view.doc.text.slice(start, Math.max(start, offset)) };
}

/** Whether a part is of the kind that a slot or port takes; where that is not known, it may be. */
function goesInto({ view }: Spot, { placed, key }: Place, name: string): boolean {
  if (key !== 'slot' && key !== 'port') return true;
  const seeker = partsToPlace(view.build!, [placed.role]).find((one) => one.placed === placed);
  if (!seeker || seeker.missingFacts.length > 0 || seeker.choices.length === 0 || seeker.key !== key) return true;
  return seeker.choices.includes(name) || (placed.role === 'drives' && carrierIn(view.build!, name) !== undefined);
}

/** A role uses parts of its kind; a cable was made for, and used with, a supply. */
const kindUsed = ({ role, below }: Meaning): Kind =>
  role && below?.[0] === 'use' ? (roles[role].kind as Kind) : 'supply';

function ofField(field: Field): Offer[] {
  switch (field.type) {
    case 'choice':
      return field.choices.map((name) => wordOffer(name, field.spellings));
    case 'flag':
      return [{ name: 'true' }, { name: 'false' }];
    case 'text':
      return (field.usual ?? field.spellings?.words ?? []).map((name) => wordOffer(name, field.spellings));
    case 'form':
      return (field.usual ?? []).map((name) => ({ name }));
    default:
      return [];
  }
}

function wordOffer(name: string, of: Vocabulary | undefined): Offer {
  const spellings = of?.spellings[name] ?? [];
  return spellings.length > 0 ? { name, spellings } : { name };
}

/** Editors look at no more of it than this. */
const longestFilter = 120;

/**
 * What an editor holds the typed letters against: the spelling that is being typed; where none is begun, the word and
 * as many of its spellings as an editor looks at.
 */
export function filterOf(spot: Spot, { name, spellings = [] }: Offer): string | undefined {
  if (spellings.length === 0) return undefined;
  const typed = plainLetters(typedAt(spot));
  const begun = [name, ...spellings].find((one) => typed !== '' && plainLetters(one).startsWith(typed));
  if (begun !== undefined) return begun;
  let filter = name;
  for (const one of spellings) if (filter.length + one.length < longestFilter) filter += ` ${one}`;
  return filter;
}

function valueItem(spot: Spot, offer: Offer, order: number): CompletionItem {
  const { at, view, options } = spot;
  const isQuoted = at.node?.type === 'scalar' && (at.node.style === 'double' || at.node.style === 'single');
  const written = isQuoted ? JSON.stringify(offer.name) : plainOrQuoted(offer.name);
  const detail = [offer.detail, offer.words].filter((text) => text).join('; ');
  const beside = offer.words ?? offer.detail;
  const filter = filterOf(spot, offer) ?? (isQuoted ? offer.name : undefined);
  return {
    label: visible(offer.name),
    ...(options.labelDetails && beside ? { labelDetails: { description: visible(beside) } } : {}),
    kind: itemKinds.value,
    ...(detail ? { detail: visible(detail) } : {}),
    sortText: sorted(order),
    ...(filter === undefined ? {} : { filterText: isQuoted ? JSON.stringify(filter) : filter }),
    ...(offer.path !== undefined && options.resolves
      ? { data: { uri: view.uriOf(view.doc), path: offer.path, part: offer.name } }
      : {}),
    textEdit: edit(spot, needsSpace(spot) ? ` ${written}` : written),
  };
}

const needsSpace = ({ at, view }: Spot): boolean =>
  at.where === 'gap' && /[:-]$/.test(view.doc.text.slice(0, at.replace.start));

/** A number that is typed with its unit behind it; where none is typed, a unit with room for the number. */
function unitItems(spot: Spot, field: Field & { type: 'quantity' }): CompletionItem[] {
  const { at, view, options } = spot;
  const typed =
    at.where === 'value' ? /^[−-]?\d[\d.]*/.exec(view.doc.text.slice(at.replace.start, at.replace.end)) : null;
  if (at.where === 'value' && !typed) return [];
  if (!typed && !options.snippets) return [];
  const space = needsSpace(spot) ? ' ' : '';
  return unitsOf(spot, field).map((unit, i) => ({
    label: typed ? `${typed[0]} ${unit}` : unit,
    kind: itemKinds.unit,
    detail: options.language.word(field.what),
    sortText: sorted(i),
    ...(typed
      ? { textEdit: edit(spot, `${typed[0]} ${unit}`) }
      : { insertTextFormat: 2 as const, textEdit: edit(spot, `${space}\${1} ${unit}`) }),
  }));
}

/** The unit that a field is usually written in, and the one of its example. */
function unitsOf({ view }: Spot, { dimension, unit, example }: Field & { type: 'quantity' }): string[] {
  if (dimension === 'money') return [(view.build && promisedCurrency(view.build)) ?? unit];
  const other = /^\S+ (\S+)$/.exec(example)?.[1];
  return [...new Set([unit, ...(other ? [other] : [])])];
}
