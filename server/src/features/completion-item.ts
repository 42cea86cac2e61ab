// What completion offers at a place: the items, and what the text around them asks of how they are written.
import type { Kind } from '../core/parts/kinds';
import type { Candidate } from '../core/judge/swaps';
import type { At } from '../core/yaml';
import type { Language } from '../core/words/language';
import type { Fits } from './fit';
import type { Command, MarkupContent, TextEdit, View } from './shapes';

/** The protocol’s numbers. */
export const itemKinds = { property: 10, unit: 11, value: 12, enumMember: 20, reference: 18 } as const;

export interface CompletionItem {
  label: string;
  labelDetails?: { description: string };
  kind: number;
  detail?: string;
  documentation?: MarkupContent;
  sortText?: string;
  filterText?: string;
  insertTextFormat?: 1 | 2;
  textEdit: TextEdit;
  command?: Command;
  /** Which part of which place it is, for whoever asks for more of it. */
  data?: PartData;
}

/** A part of the folder in a place of a build. */
export interface PartData {
  readonly uri: string;
  readonly path: string;
  readonly part: string;
}

export interface CompletionList {
  /** Set where what is typed next may bring other items than these. */
  readonly isIncomplete: boolean;
  readonly items: CompletionItem[];
  /** Set where not all could be tried. */
  readonly untried?: true;
}

export interface CompletionOptions {
  readonly markup: MarkupContent['kind'];
  readonly language: Language;
  readonly snippets: boolean;
  /** The client shows a few words beside each item, not only beside the chosen one. */
  readonly labelDetails?: boolean;
  /** The client asks again by this command once a key is taken over. */
  readonly again?: string;
  /** The client asks for more of an item once it is looked at. */
  readonly resolves?: boolean;
  /** The parts of a kind. */
  readonly parts: (kind: Kind) => readonly Candidate[];
  readonly fits: Fits;
  /** So many choices are tried for this answer, beside those that were tried before. */
  readonly trials: number;
}

export interface Spot {
  readonly view: View;
  readonly at: At;
  readonly offset: number;
  readonly options: CompletionOptions;
}

/** Names are someone’s own: one that YAML would read otherwise is quoted. */
export function plainOrQuoted(name: string): string {
  const isPlain =
    /^[A-Za-z][^:#,[\]{}"'\\\p{Cc}]*$/u.test(name) &&
    name.trim() === name &&
    !/^(true|false|null|yes|no|on|off|y|n)$/i.test(name);
  return isPlain || /^\d+(\.\d+)? [A-Za-z]+$/.test(name) || /^(true|false)$/.test(name) ? name : JSON.stringify(name);
}

export const sorted = (order: number): string => String(order).padStart(4, '0');

export function edit({ view, at, offset }: Spot, newText: string): TextEdit {
  const { start } = at.replace;
  const end = at.where === 'gap' ? offset : at.replace.end;
  return { range: view.doc.lines.rangeOf({ start, end: Math.max(start, end) }), newText: view.doc.written(newText) };
}

/** What is typed of the word that is to be written. */
export function typedAt({ view, at, offset }: Spot): string {
  const { start } = at.replace;
  return view.doc.text.slice(start, Math.max(start, offset));
}
