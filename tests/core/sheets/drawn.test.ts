// Data sheets in the manner of real ones against what a technician reads in them: precision first, then recall.
import { describe, expect, it } from 'vitest';
import { drawFrom, partText } from '../../../server/src/core/sheets';
import { judgeFile } from '../../../server/src/core/judge/judge';
import { Doc } from '../../../server/src/core/parts/doc';
import { drawn, drawnSheets, factsOf, readers } from '../../support/drawn';

const scores = drawnSheets.map((sheet) => {
  const facts = factsOf(drawn(sheet));
  const wrong = [...facts].filter(([path, value]) => sheet.expected.get(path) !== value);
  const missed = [...sheet.expected.keys()].filter((path) => !facts.has(path));
  return { name: sheet.name, written: facts.size, expected: sheet.expected.size, wrong, missed };
});
const sum = (of: (one: (typeof scores)[number]) => number): number => scores.reduce((total, one) => total + of(one), 0);

describe('data sheets', () => {
  it('are of all kinds, and many', () => {
    expect(drawnSheets.length).toBeGreaterThanOrEqual(30);
    expect(new Set(drawnSheets.map(({ kind }) => kind)).size).toBeGreaterThanOrEqual(10);
  });

  it('give facts of which at least 99 of 100 are right, and at least 90 of 100 of those printed', () => {
    const precision = 1 - sum(({ wrong }) => wrong.length) / sum(({ written }) => written);
    const recall = 1 - sum(({ missed }) => missed.length) / sum(({ expected }) => expected);
    process.stdout.write(`Sheets: precision ${precision.toFixed(4)}, recall ${recall.toFixed(4)}\n`);
    const told = scores.flatMap(({ name, wrong, missed }) => [
      ...wrong.map(([path, value]) => `${name}: wrong ${path}: ${value}`),
      ...missed.map((path) => `${name}: missed ${path}`),
    ]);
    expect(precision, told.join('\n')).toBeGreaterThanOrEqual(0.99);
    expect(recall, told.join('\n')).toBeGreaterThanOrEqual(0.9);
  });

  it.each(drawnSheets)(
    '$name: the file drafted from it checks without a finding, and says of which kind it is',
    (sheet) => {
      const text = partText(drawn(sheet), { today: '2026-11-29', title: sheet.name });
      const { findings } = judgeFile(new Doc('parts/a/b.part.yaml', 'part', text), { throwOn: true });
      expect(findings.map(({ id }) => id)).toEqual([]);
      const options = { ...readers, ...(sheet.variant ? { variant: sheet.variant } : {}) };
      const guessed = drawFrom({ name: sheet.file, text: sheet.text }, options);
      expect('draft' in guessed ? guessed.draft.kind : sheet.kind).toBe(sheet.kind);
    },
  );
});
