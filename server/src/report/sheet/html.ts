// The bench sheet as HTML: blocks that can be put in one by one, and a whole page of the same blocks.
import { htmlText as safe } from '../../core/text';
import type { Language } from '../../core/words/language';
import { english } from '../../core/words/languages';
import { Kept } from './kept';
import type { Block, Body, Cell, Line, Row, Sheet, Table, Tick } from './model';
import { blanks, caution, findingHtml, place, references, stepHtml } from './html-pieces';
import { pageStyle, type Paper } from './style';
import { styleHashes } from './style-hashes';

export interface HtmlBlock {
  /** The same for the same part of the sheet, whatever else changes. */
  readonly id: string;
  readonly html: string;
}

/** The sheet’s blocks in their order, its head first; each is one element that bears the block’s id. */
export function sheetBlocks(sheet: Sheet, kept = new Kept()): readonly HtmlBlock[] {
  return [{ id: 'head', html: head(sheet) }, ...printed(sheet.blocks, kept, sheet.language)];
}

/** Some blocks of a sheet. */
export const printed = (blocks: readonly Block[], kept: Kept, language = english()): readonly HtmlBlock[] =>
  blocks.map((block) => ({ id: block.id, html: kept.of(block, (own) => blockHtml(own, language)) }));

export interface PageOptions {
  readonly paper: Paper;
}

/** One page that needs nothing else: it may load and run nothing, and its one style is named by its hash. */
export function sheetPage(sheet: Sheet, { paper }: PageOptions): string {
  const language = sheet.language ?? english();
  const policy = `default-src 'none'; style-src 'sha256-${styleHashes[paper]}'; base-uri 'none'; form-action 'none'`;
  return [
    '<!DOCTYPE html>',
    `<html lang="${language.tag}">`,
    '<head>',
    '<meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="${policy}">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<title>${language.words`${safe(sheet.title)}: bench sheet`}</title>`,
    `<style>${pageStyle(paper)}</style>`,
    '</head>',
    '<body>',
    '<main class="sheet">',
    ...sheetBlocks(sheet).map(({ html }) => html.replaceAll(linked, '')),
    '</main>',
    '</body>',
    '</html>',
    '',
  ].join('\n');
}

/** Things in pictures lead to the text where there is one; a page by itself has none to lead to. */
const linked = ' role="link" tabindex="0"';

/** Ids of elements hold no blanks. */
const idOf = (id: string): string => safe(`sheet-${id.replace(/\s+/g, '-')}`);

function head({ title, purpose, verdict, worst, facts, write, language = english() }: Sheet): string {
  return [
    '<header id="sheet-head" class="head">',
    `<p class="kind">${language.word('Bench sheet')}</p>`,
    `<h1>${safe(title)}</h1>`,
    ...(purpose === '' ? [] : [`<p class="purpose">${safe(purpose)}</p>`]),
    `<p class="verdict verdict-${worst ?? 'clear'}">${safe(verdict)}</p>`,
    `<p class="facts">${facts.map((line) => lineHtml(line, language)).join(' ')}</p>`,
    blanks(write),
    '</header>',
  ].join('\n');
}

function blockHtml({ id, heading, level, bodies }: Block, language: Language): string {
  const own = idOf(id);
  const [open, close] =
    level === 2
      ? [`<section id="${own}" aria-labelledby="${own}-title">`, '</section>']
      : [`<div id="${own}">`, '</div>'];
  return [
    open,
    `<h${level} id="${own}-title">${safe(heading)}</h${level}>`,
    ...bodies.map((body) => bodyHtml(body, language)),
    close,
  ].join('\n');
}

function bodyHtml(body: Body, language: Language): string {
  switch (body.type) {
    case 'lines':
      return body.lines.map((line) => `<p${place(line.place)}>${lineText(line, language)}</p>`).join('\n');
    case 'ticks':
      return ticks(body, language);
    case 'table':
      return tableHtml(body, language);
    case 'steps':
      return body.steps.length === 0
        ? ''
        : `<ol class="steps">\n${body.steps.map((step) => stepHtml(step, language)).join('\n')}\n</ol>`;
    case 'cautions':
      return body.cautions.map((one) => caution(one)).join('\n');
    case 'finding':
      return findingHtml(body.finding, language);
    case 'picture':
      return figure(body.picture, language);
    case 'write':
      return blanks(body.labels);
  }
}

function lineText({ text, findings = [], grade }: Line, language: Language): string {
  const own = grade === undefined ? safe(text) : `<span class="grade grade-${grade}">${safe(text)}</span>`;
  return own + references(findings, language);
}

const lineHtml = (line: Line, language: Language): string =>
  `<span${place(line.place)}>${lineText(line, language)}</span>`;

function ticks({ title, items, small }: Extract<Body, { type: 'ticks' }>, language: Language): string {
  const ticked = items.map((item) => tick(item, language)).join('\n');
  const list = `<ul class="ticks${small ? ' small' : ''}">\n${ticked}\n</ul>`;
  return title === undefined ? list : `<p class="list-title">${safe(title)}</p>\n${list}`;
}

function tick({ detail, write, ...line }: Tick, language: Language): string {
  const more = detail === undefined ? '' : ` <span class="quiet">${safe(detail)}</span>`;
  const blank = write === undefined ? '' : `<span class="blank">${safe(write)}:</span>`;
  const label = `<label><input type="checkbox"> <span>${lineText(line, language)}${more}</span></label>`;
  return `<li${place(line.place)}>${label}${blank}</li>`;
}

function tableHtml({ caption: title, columns, rows }: Table, language: Language): string {
  const write = new Set(columns.flatMap((_, i) => (rows.some(({ cells }) => cells[i] === 'write') ? [i] : [])));
  const heads = columns.map((name, i) => `<th scope="col"${write.has(i) ? ' class="write"' : ''}>${safe(name)}</th>`);
  return [
    `<table class="columns-${columns.length}">`,
    `<caption>${safe(title)}</caption>`,
    `<thead><tr>${heads.join('')}</tr></thead>`,
    `<tbody>\n${rows.map((row) => rowHtml(row, language)).join('\n')}\n</tbody>`,
    '</table>',
  ].join('\n');
}

function rowHtml({ place: at, tick: ticked, cells: [first, ...others] }: Row, language: Language): string {
  const own = lineText(first, language);
  const name = ticked ? `<label><input type="checkbox"> <span>${own}</span></label>` : own;
  return `<tr${place(at)}><th scope="row">${name}</th>${others.map((cell) => cellHtml(cell, language)).join('')}</tr>`;
}

const cellHtml = (cell: Cell, language: Language): string =>
  cell === 'write' ? '<td class="write"></td>' : `<td${place(cell.place)}>${lineText(cell, language)}</td>`;

function figure({ svg, words }: Extract<Body, { type: 'picture' }>['picture'], language: Language): string {
  const lines = words.map((word) => `<li>${safe(word)}</li>`).join('');
  const told =
    words.length === 0
      ? ''
      : `<figcaption><details><summary>${language.word('In words')}</summary><ul>${lines}</ul></details></figcaption>`;
  return `<figure>${svg}${told}</figure>`;
}
