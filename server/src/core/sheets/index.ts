// The door to data sheets: a text in; facts of one part out, each with the words that it was read from.
import { kindNames, type Kind } from '../parts/kinds';
import { agree } from './agree';
import { draftFrom, type Draft, type Drafted } from './draft';
import { isJson, jsonSheet } from './json-sheet';
import { kindOf } from './kind-of';
import { plainLine } from './clean';
import { Indexes } from './label-index';
import { isRateLabel } from './modes';
import type { IsLabel, Sheet } from './sheet';
import { textSheet } from './text-lines';
import { draftFromTool } from './tools';

export type { Draft, Drafted, Unread } from './draft';
export { partText } from './part-text';

export interface SheetInput {
  /** The file’s name; its ending tells a table’s form. */
  readonly name: string;
  readonly text: string;
}

/** Ways of reading that need packages of their own, brought in where they are there. */
export interface SheetReaders {
  readonly markup?: {
    readonly is: (text: string) => boolean;
    readonly read: (text: string, isLabel: IsLabel) => Sheet;
  };
  readonly separated?: (text: string, isLabel: IsLabel) => Sheet;
}

export interface DraftOptions extends SheetReaders {
  readonly kind?: Kind;
  readonly variant?: string;
  /** Kept from one sheet to the next. */
  readonly indexes?: Indexes;
  /** `maker/model`, as the part file is to be called. */
  readonly name?: string;
  /** Whether a person picked the text out before their eyes, so that it ends where they meant it to. */
  readonly isWhole?: boolean;
}

/** A draft, or of which kinds the sheet may be, where that is not plain. */
export type Drawn = { readonly draft: Draft } | { readonly candidates: readonly Kind[] };

/** Reads one sheet. Never throws. */
export function drawFrom(input: SheetInput, options: DraftOptions = {}): Drawn {
  const ofTool = draftFromTool(input.text, options.variant);
  if (ofTool) return { draft: ofTool };
  const { kind } = options;
  const { indexes = new Indexes() } = options;
  const guessed = kind === undefined ? kindOf(sheetOf(input, anyLabel(indexes), options), indexes) : undefined;
  const found = kind ?? guessed?.kind;
  if (found === undefined) return { candidates: guessed?.candidates ?? [] };
  const index = indexes.of(found);
  const isLabel: IsLabel = (text) => index.has(text) || (found === 'display' && isRateLabel(text));
  const sheet = sheetOf(input, isLabel, options);
  const draft = draftFrom(sheet, found, indexes, options.variant);
  if (sheet.brokenAt === undefined || options.isWhole) return { draft: named(draft, sheet, options.name) };
  const whole = sheetOf({ name: input.name, text: input.text.slice(0, sheet.brokenAt) }, isLabel, options);
  return { draft: named(asFarAs(draftFrom(whole, found, indexes, options.variant), draft), whole, options.name) };
}

/** The facts of a draft that the whole part of its text states too; what the rest adds may be cut off. */
function asFarAs(whole: Draft, all: Draft): Draft {
  const key = ({ path, value }: Drafted): string => JSON.stringify([path, value]);
  const sure = new Set(whole.facts.map(key));
  const [facts, cut] = [true, false].map((is) => all.facts.filter((fact) => sure.has(key(fact)) === is));
  return { ...all, facts: facts!, perhaps: [...all.perhaps, ...cut!] };
}

function anyLabel(indexes: Indexes): IsLabel {
  const all = kindNames.map((kind) => indexes.of(kind));
  return (text) => all.some((index) => index.has(text));
}

function sheetOf({ name, text }: SheetInput, isLabel: IsLabel, { markup, separated }: SheetReaders): Sheet {
  if (markup?.is(text)) return markup.read(text, isLabel);
  if (separated && (/\.(?:csv|tsv)$/i.test(name) || isSeparated(text))) return separated(text, isLabel);
  return (isJson(text) ? jsonSheet(text) : undefined) ?? textSheet(text, isLabel);
}

/** Whether nearly all lines of a text hold a semicolon between two cells: a table that lost its ending. */
function isSeparated(text: string): boolean {
  const lines = text
    .slice(0, 20_000)
    .split(/\r\n?|\n/)
    .filter((line) => line.trim() !== '');
  const parted = lines.filter((line) => /^[^;:]{2,60};[^; ]/.test(line));
  return parted.length >= 4 && parted.length >= lines.length * 0.8;
}

const slug = (text: string): string =>
  plainLine(text)
    .toLowerCase()
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');

/** The name of a part from its maker and model; undefined where one of them is not read. */
export function partNameOf(facts: readonly Drafted[]): string | undefined {
  const [maker, model] = ['maker', 'model'].map((key) => {
    const value = facts.find(({ path }) => path.join() === key)?.value;
    return typeof value === 'string' ? slug(value) : '';
  });
  return maker && model ? `${maker}/${model}` : undefined;
}

/** Maker and model from the title, where its first words are the part’s own name. */
function named(draft: Draft, { title }: Sheet, name: string | undefined): Draft {
  const [maker, model] = name?.split('/') ?? [];
  const words = plainLine(title ?? '')
    .split(' ')
    .slice(0, 12);
  const has = (key: string): boolean => draft.facts.some(({ path }) => path.join() === key);
  if (!maker || !model || (has('maker') && has('model'))) return draft;
  for (let split = 1; split < words.length; split++) {
    if (slug(words.slice(0, split).join(' ')) !== slug(maker)) continue;
    const rest = words.slice(split);
    const end = rest.findIndex((_, index) => slug(rest.slice(0, index + 1).join(' ')) === slug(model));
    if (end < 0) continue;
    const found = { maker: words.slice(0, split).join(' '), model: rest.slice(0, end + 1).join(' ') };
    const facts = Object.entries(found)
      .filter(([key]) => !has(key))
      .map(([key, value]): Drafted => ({ path: [key], value, said: plainLine(title!) }));
    return { ...draft, facts: [...facts, ...draft.facts] };
  }
  return draft;
}

/** Several sheets of one part put together. */
export function togetherOf(drafts: readonly { readonly name: string; readonly draft: Draft }[]): Draft {
  const [first] = drafts;
  if (drafts.length === 1) return first!.draft;
  const with_ = <T extends object>(all: readonly T[], file: string): T[] => all.map((one) => ({ ...one, file }));
  const { facts, disagreeing } = agree(drafts.flatMap(({ name, draft }) => with_(draft.facts, name)));
  const known = new Set(facts.map(({ path }) => path.join('.')));
  return {
    ...first!.draft,
    facts,
    disagreeing: [
      ...disagreeing,
      ...drafts.flatMap(({ name, draft }) => draft.disagreeing.map((all) => with_(all, name))),
    ],
    perhaps: drafts
      .flatMap(({ name, draft }) => with_(draft.perhaps, name))
      .filter(({ path }) => !known.has(path.join('.'))),
    unread: drafts.flatMap(({ name, draft }) => with_(draft.unread, name)),
    variants: drafts.flatMap(({ draft }) => draft.variants),
  };
}
