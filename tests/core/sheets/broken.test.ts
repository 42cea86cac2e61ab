// Every reader of data sheets against its samples cut off anywhere and changed anyhow: it throws at nothing and invents
// nothing. What is read stands in the changed text, at the line that it names, figures whole and words in a spelling of
// the trade; of a text that is cut off nothing is read but what the whole says. What its last line says, if no line end
// closes it, is no fact: half a figure is another figure. FETTLE_SEED and FETTLE_MUTATIONS ask
// for other changes.
import { describe, expect, it } from 'vitest';
import type { Draft, Drafted } from '../../../server/src/core/sheets';
import { isJson } from '../../../server/src/core/sheets/json-sheet';
import { isMarkup } from '../../../server/src/core/sheets/markup';
import { changedTexts, mutationsTried, seed, truncations } from '../../support/broken';
import { drawn, drawnSheets, type DrawnSheet } from '../../support/drawn';
import { misfits } from '../../support/said-in-sheet';

const formOf = ({ file, text }: DrawnSheet): string =>
  isMarkup(text) ? 'pages' : /\.(?:csv|tsv)$/.test(file) ? 'tables' : isJson(text) ? 'JSON' : 'text';
const forms = new Map<string, DrawnSheet[]>();
for (const sheet of drawnSheets) forms.set(formOf(sheet), [...(forms.get(formOf(sheet)) ?? []), sheet]);
const all = drawnSheets.map(({ text }) => text);

/** A thing that is counted, and called by a number: where the whole text names such things, it counts none. */
const isNumbered = ({ path: [root = '', name = ''] }: Drafted): boolean =>
  /^(?:slots|ports|headers)$/.test(root) && /_?\d+$/.test(name);

/** What the title calls the part, where no line does: a line below names it better, and is believed before it. */
const isTitled = ({ path, line }: Drafted): boolean => path.join() === 'model' && line === undefined;

const each = (facts: readonly Drafted[]): string[] =>
  facts.flatMap(({ path, value }) => [value].flat().map((one) => `${path.join('.')}: ${one}`));

/** All that a text says, plainly or not. */
const saidBy = ({ facts, perhaps, disagreeing }: Draft): ReadonlySet<string> =>
  new Set(each([...facts, ...perhaps, ...disagreeing.flat()]));

/** Of a page whose tags are broken no line is sure: what stands between rows is moved before their table. */
const wrongIn = (sheet: DrawnSheet, text: string): string[] =>
  misfits(
    drawn(sheet, text).facts,
    text,
    formOf(sheet) === 'tables',
    formOf(sheet) === 'pages' && text !== sheet.text ? Infinity : 9,
  );

/** Of each of the four forms: they share all but how rows are found. */
const changes = mutationsTried / 4;

it('are of four forms', () => {
  expect([...forms.keys()].sort()).toEqual(['JSON', 'pages', 'tables', 'text']);
});

describe.each([...forms])('sheets as %s', (form, sheets) => {
  it('say what is read of them, where they are whole', () => {
    expect(sheets.flatMap((sheet) => wrongIn(sheet, sheet.text))).toEqual([]);
  });

  it('say nothing else where they are cut off anywhere', () => {
    for (const sheet of sheets) {
      const whole = saidBy(drawn(sheet));
      for (const cut of truncations(sheet.text)) {
        const { facts } = drawn(sheet, cut);
        // A maker that is named below a model is taken off its front.
        const isKnown = (fact: string): boolean =>
          whole.has(fact) ||
          (fact.startsWith('model: ') &&
            [...whole].some((one) => one.startsWith('model: ') && fact.endsWith(one.slice(7))));
        const isOfCut = (fact: Drafted): boolean => isNumbered(fact) || isTitled(fact);
        const wrong = each(facts.filter((fact) => !isOfCut(fact))).filter((fact) => !isKnown(fact));
        wrong.push(...misfits(facts.filter(isOfCut), cut, formOf(sheet) === 'tables'));
        if (wrong.length > 0) expect({ sheet: sheet.name, cut: cut.slice(-80), wrong }).toEqual({});
      }
    }
  }, 600_000);

  it(`say what is read of them, changed anyhow, ${changes} times, from seed ${seed}`, () => {
    for (const sheet of sheets)
      for (const { text, how } of changedTexts(sheet.text, { count: changes / sheets.length, others: all })) {
        const wrong = wrongIn(sheet, text);
        if (wrong.length > 0) expect({ form, sheet: sheet.name, how, wrong, text }).toEqual({});
      }
  }, 240_000);
});
