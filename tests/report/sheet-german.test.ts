// The bench sheet in German: what it says of itself is German, and only the sheet’s own words change.
import { describe, expect, it } from 'vitest';
import { languageIn } from '../../server/src/core/words/languages';
import { judgeBuild } from '../../server/src/core/judge/judge';
import { sheetPage } from '../../server/src/report/sheet/html';
import type { Sheet } from '../../server/src/report/sheet/model';
import { sheetOf } from '../../server/src/report/sheet/sheet';
import { today } from '../support/bench';
import { readSamples } from '../support/samples';

const language = languageIn('de');
const sheets = readSamples().builds.map((build) => {
  const judgement = judgeBuild(build);
  const options = { date: today, fileName: build.doc.name };
  return { english: sheetOf(build, judgement, options), german: sheetOf(build, judgement, { ...options, language }) };
});

/** Headings, names of tables and columns, reasons of steps, safety messages: nothing of it comes from a file. */
function own({ blocks }: Sheet): readonly string[] {
  return blocks.flatMap(({ id, heading, bodies }) => [
    ...(id.startsWith('finding:') ? [] : [heading]),
    ...bodies.flatMap((body) => {
      if (body.type === 'table') return [body.caption, ...body.columns];
      if (body.type === 'steps') return body.steps.flatMap(({ reasons }) => reasons);
      return body.type === 'write' ? body.labels : [];
    }),
  ]);
}

const isEnglish = (text: string): boolean => /\b(?:the|of|and|with|for|is|are|not|it|its|which|what)\b/i.test(text);

describe('a bench sheet in German', () => {
  it('says nothing of its own in English', () => {
    const bare = sheets.flatMap(({ german }) => [german.verdict, ...german.write, ...own(german)].filter(isEnglish));
    expect([...new Set(bare)]).toEqual([]);
  });

  it('has the same blocks, steps, places and findings', () => {
    const shapeOf = ({ title, purpose, worst, blocks }: Sheet): unknown => [
      [title, purpose, worst],
      blocks.map(({ id, level, bodies }) => [
        id,
        level,
        bodies.map((body) =>
          body.type === 'steps'
            ? body.steps.map(({ number, place, findings }) => [number, place, findings])
            : body.type,
        ),
      ]),
    ];
    for (const { english, german } of sheets) expect(shapeOf(german)).toEqual(shapeOf(english));
  });

  it('warns in the signal words of the language, and keeps their look', () => {
    const page = sheetPage(sheets[0]!.german, { paper: 'a4' });
    expect(page).toContain('<html lang="de">');
    expect(page).toMatch(
      /class="caution caution-(?:warning|caution|notice)"[^>]*><strong>(?:<span[^>]*>⚠ <\/span>)?(?:WARNUNG|VORSICHT|HINWEIS)/,
    );
    expect(page).not.toMatch(/<strong>(?:<span[^>]*>⚠ <\/span>)?(?:DANGER|WARNING|CAUTION|NOTICE)</);
  });
});
