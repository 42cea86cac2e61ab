// Pieces of the sheet’s HTML: steps with what is read before them, cautions, findings with their working.
import { htmlText as safe } from '../../core/text';
import type { Language } from '../../core/words/language';
import { INJURES } from './words';
import type { PlaceKey, SheetCaution, SheetFinding, SheetStep, WorkingRow } from './model';

/** The attribute by which a click finds the text, and the text the element. */
export const place = (key: PlaceKey | undefined): string => (key === undefined ? '' : ` data-place="${safe(key)}"`);

export function references(findings: readonly number[], language: Language): string {
  if (findings.length === 0) return '';
  const links = [...new Set(findings)].map(
    (number) => `<a href="#finding-${number}">${language.words`finding ${number}`}</a>`,
  );
  return ` <span class="reference">${links.join(' ')}</span>`;
}

/** Lines to write on, each with its name. */
export function blanks(labels: readonly string[]): string {
  return `<ul class="blanks">${labels.map((label) => `<li>${safe(label)}</li>`).join('')}</ul>`;
}

/** Signal word first; the sign of danger to people stands with the words that mean it. */
export function caution({ word, called = word, sentences, place: at }: SheetCaution): string {
  const sign = INJURES.has(word) ? '<span aria-hidden="true">⚠ </span>' : '';
  const said = sentences.map((sentence) => `<span>${safe(sentence)}</span>`).join(' ');
  const look = `caution caution-${word.toLowerCase()}`;
  return `<p class="${look}"${place(at)}><strong>${sign}${safe(called)}</strong> <span>${said}</span></p>`;
}

export function stepHtml(step: SheetStep, language: Language): string {
  const { number, title, place: at, cautions, things, notes, reasons, findings, write } = step;
  const lines = things.map(
    ({ text, place: own, findings: about = [] }) => `<li${place(own)}>${safe(text)}${references(about, language)}</li>`,
  );
  const why = reasons.map((reason) => `<li>${safe(reason)}</li>`).join('');
  return [
    `<li value="${number}"${place(at)}>`,
    ...cautions.map((one) => caution(one)),
    '<div class="step">',
    '<div class="what">',
    `<label><input type="checkbox"> <span class="number">${number}</span> <span>${safe(title)}</span></label>`,
    references(findings, language),
    ...(lines.length > 0 ? [`<ul class="things">${lines.join('')}</ul>`] : []),
    ...notes.map((note) => `<p class="note">${safe(note)}</p>`),
    ...(write === undefined ? [] : [`<p class="blank">${safe(write)}:</p>`]),
    '</div>',
    ...(why === '' ? [] : [`<ul class="reasons">${why}</ul>`]),
    '</div>',
    '</li>',
  ].join('');
}

export function findingHtml(finding: SheetFinding, language: Language): string {
  const { place: at, subject, text, accepted, caution: warning, mends, working } = finding;
  return [
    `<div class="finding" id="finding-${finding.number}"${place(at)}>`,
    `<p class="said">${safe(text)} <span class="quiet">${safe(subject)}</span></p>`,
    ...(accepted === undefined ? [] : [`<p>${safe(accepted)}</p>`]),
    ...(warning ? [caution(warning)] : []),
    ...(mends.length > 0 ? [`<ul class="mends">${mends.map((mend) => `<li>${safe(mend)}</li>`).join('')}</ul>`] : []),
    ...(working.length > 0 ? [workingHtml(working, language)] : []),
    '</div>',
  ].join('\n');
}

function workingHtml(rows: readonly WorkingRow[], language: Language): string {
  const heads = [language.word('Figure or fact'), language.word('Value'), language.word('From')];
  const lines = rows.map(
    ({ depth, text, value, from, place: at }) =>
      `<tr${place(at)}><th scope="row" class="depth-${Math.min(depth, 6)}">${safe(text)}</th>` +
      `<td>${safe(value)}</td><td>${safe(from)}</td></tr>`,
  );
  return [
    '<table class="working">',
    `<caption>${language.word('Working')}</caption>`,
    `<thead><tr>${heads.map((one) => `<th scope="col">${one}</th>`).join('')}</tr></thead>`,
    `<tbody>\n${lines.join('\n')}\n</tbody>`,
    '</table>',
  ].join('\n');
}
