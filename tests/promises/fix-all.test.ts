// Fixing everything: it ends, its edits never overlap, give one text in any order, and mend without making worse
// (promise P7).
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fixAllKind } from '../../server/src/features/code-actions';
import { parse } from 'yaml';
import { leftBecause } from '../../server/src/core/judge/unseen';
import { fixAllEdits, type Takes } from '../../server/src/features/fix-all';
import { applyEdits, editsOverlap, type Edit } from '../../server/src/core/text';
import { applyInTurn, doubtful, isInside, isMissingBlank, strayChanges, worseOnes } from './support/hold-fix';
import { judge, partName } from './support/judged';
import { runs } from './support/seed';
import { broken, builds, partFiles } from './support/texts';
import { codeActions } from '../support/code-actions';

const texts = fc.oneof(
  { weight: 3, arbitrary: builds.map(({ text }) => ({ text, name: 'made.pcbuild.yaml' })) },
  { weight: 3, arbitrary: partFiles.map(({ text }) => ({ text, name: partName })) },
  { weight: 1, arbitrary: broken(builds).map((text) => ({ text, name: 'made.pcbuild.yaml' })) },
  { weight: 1, arbitrary: broken(partFiles).map((text) => ({ text, name: partName })) },
);

/** One order of many, by a number. */
function shuffled(edits: readonly Edit[], by: number): Edit[] {
  const left = [...edits];
  const order: Edit[] = [];
  for (let n = by; left.length > 0; n = Math.floor(n / left.length) + 1) order.push(...left.splice(n % left.length, 1));
  return order;
}

let mended = 0;

describe('fixing everything', () => {
  it('gives edits that lie apart and make one text in any order', () => {
    fc.assert(
      fc.property(texts, fc.nat(), ({ text, name }, by) => {
        const edits = fixAllEdits(judge(text, name));
        expect(editsOverlap(edits)).toBe(false);
        const after = applyEdits(text, edits);
        expect(applyEdits(text, shuffled(edits, by))).toBe(after);
        expect(applyInTurn(text, shuffled(edits, by))).toBe(after);
      }),
      runs(80),
    );
  });

  it('has nothing more to do at once afterwards', () => {
    fc.assert(
      fc.property(texts, ({ text, name }) => {
        const edits = fixAllEdits(judge(text, name));
        if (edits.length === 0) return;
        mended++;
        const after = applyEdits(text, edits);
        expect(fixAllEdits(judge(after, name)), `${text}\n-->\n${after}`).toEqual([]);
      }),
      runs(80),
    );
  });

  it('clears findings, brings none as bad, and leaves alone what it does not mend', () => {
    fc.assert(
      fc.property(texts, ({ text, name }) => {
        const view = judge(text, name);
        const edits = fixAllEdits(view);
        if (edits.length === 0) return;
        const after = applyEdits(text, edits);
        const said = `${text}\n-->\n${after}`;
        expect(strayChanges(text, edits, after), said).toEqual([]);
        expect(
          edits.filter((edit) => !isMissingBlank(edit, text) && doubtful(text).some((span) => isInside(edit, span))),
          said,
        ).toEqual([]);
        const left = judge(after, name).judgement.findings;
        const own = (findings: typeof left): number => findings.filter(({ check }) => check.on === 'file').length;
        expect(own(left), said).toBeLessThan(own(view.judgement.findings));
        expect(worseOnes(view.judgement.findings, left, 'harm'), said).toEqual([]);
      }),
      runs(80),
    );
  });

  it('was tried on texts with something to mend', () => expect(mended).toBeGreaterThan(20));

  it('is made for one version of the text, so that an editor refuses it for another', () => {
    const view = judge('kind: cooler\nhieght: 158 mm\n', partName);
    const [action] = codeActions(
      view,
      { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } },
      { candidates: () => [], only: [fixAllKind] },
    );
    expect(action?.edit?.documentChanges.map(({ textDocument }) => textDocument.version)).toEqual([1]);
  });

  it('ends within ten passes where each fix opens the way for the next', () => {
    const text = `kind: cooler\n${Array.from({ length: 12 }, (_, i) => `${'hieght'.slice(0, 6 - (i % 2))}${i}: 158\n`).join('')}`;
    let now = text;
    let passes = 0;
    for (let edits = fixAllEdits(judge(now, partName)); edits.length > 0; edits = fixAllEdits(judge(now, partName))) {
      now = applyEdits(now, edits);
      expect(++passes).toBeLessThanOrEqual(10);
    }
  });
});

describe('mending with nobody looking', () => {
  /** Values in their order, as another parser reads them, and what is settled. */
  const read = (text: string): { values: unknown[]; settled: unknown } => {
    const file = parse(text) as { expect?: unknown; accept?: unknown; parts?: Record<string, unknown> } | null;
    const values: unknown[] = [];
    const waiting: unknown[] = [file];
    for (let one = waiting.pop(); waiting.length > 0 || one !== undefined; one = waiting.pop())
      if (typeof one === 'object' && one !== null) waiting.push(...Object.values(one).reverse());
      else values.push(one);
    return { values, settled: [file?.expect, file?.accept] };
  };
  const isWordForFlag = (value: unknown): boolean => typeof value === 'boolean';
  let changed = 0;

  it('leaves every value, promise and acceptance as it is written, and has nothing more to do afterwards', () => {
    const takes: Takes = (doc, finding, fix) => leftBecause(doc, finding, fix.edits) === undefined;
    fc.assert(
      fc.property(texts, ({ text, name }) => {
        const edits = fixAllEdits(judge(text, name), takes);
        if (edits.length === 0) return;
        const after = applyEdits(text, edits);
        const said = `${text}\n-->\n${after}`;
        expect(strayChanges(text, edits, after), said).toEqual([]);
        expect(fixAllEdits(judge(after, name), takes), said).toEqual([]);
        const [was, now] = [tried(() => read(text)), tried(() => read(after))];
        if (!was || !now) return;
        changed++;
        expect(now.settled, said).toEqual(was.settled);
        const others = now.values.filter((value) => !isWordForFlag(value)).map(plainUnits);
        const before = was.values.map(plainUnits);
        for (const value of others) expect(before, said).toContain(value);
      }),
      runs(40),
    );
    expect(changed).toBeGreaterThan(5);
  });
});

/** What only looks like the letters of a unit is written in them. */
const plainUnits = (value: unknown): string =>
  String(value)
    .normalize('NFKC')
    .replace(/[^\x20-\x7e]/g, '');

const tried = <T>(work: () => T): T | undefined => {
  try {
    return work();
  } catch {
    return undefined;
  }
};
