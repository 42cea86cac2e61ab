// Runs the examples in each check's documentation, and holds every check to what a check must have.
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { checks } from '../../server/src/core/checks/all';
import { areas, type Check, type Example } from '../../server/src/core/checks/check';
import { judgeBuild, judgeFile, judgeGuide } from '../../server/src/core/judge/judge';
import { provenFileFixes, provenFixes, provenGuideFixes } from '../../server/src/core/judge/prove';
import { CAUTIONS } from '../../server/src/core/trade/cautions';
import { applyEdits } from '../../server/src/core/text';
import { bench, today } from '../support/bench';
import { buildName, readFixture } from '../support/fixture';
import { readMarks } from '../support/marks';

function runExample(check: Check, example: Example): void {
  const { text, marks } = readMarks(example.faulty.replace(/^\n/, ''));
  expect(marks.length, 'carets in the faulty text').toBeGreaterThan(0);
  const beside = Object.entries(example.beside ?? {}).map(([name, other]) => ({
    name,
    text: other.replace(/^\n/, ''),
  }));
  const set = bench([{ name: example.file ?? buildName, text }, ...beside]);
  const doc = [...set.docs.values()][0]!;
  const judgement = set.guide
    ? judgeGuide(set.guide, { throwOn: true })
    : set.build
      ? judgeBuild(set.build, { throwOn: true })
      : judgeFile(doc, { throwOn: true, today });
  const own = judgement.findings.filter((finding) => finding.id === check.id);
  const at = own.map(
    (finding) =>
      `${finding.underline.span.start}-${Math.min(finding.underline.span.end, doc.lines.lineSpan(doc.lines.positionAt(finding.underline.span.start).line).end)}`,
  );
  expect(at.sort()).toEqual(marks.map(({ span }) => `${span.start}-${span.end}`).sort());
  expect(own.every((finding) => finding.grade !== 'unknown' || check.grade === 'unknown')).toBe(true);
  if (example.mended === undefined) return expect(example.instead ?? '').not.toBe('');
  const proven = own.flatMap((finding) =>
    set.guide
      ? provenGuideFixes(set.guide, judgement, finding)
      : set.build
        ? provenFixes(set.build, judgement, finding, set.candidates)
        : provenFileFixes(doc, judgement, finding),
  );
  expect(proven.map((fix) => applyEdits(doc.text, fix.edits))).toContain(example.mended.replace(/^\n/, ''));
}

const ids = checks.map(({ id }) => id);

/** Harm about a caution itself: what it warns of depends on the step, and so does the caution shown. */
const takesTheSteps = new Set(['caution-after-step', 'caution-incomplete', 'guide-caution-missing']);

for (const check of checks) {
  describe(check.id, () => {
    check.examples.forEach((example, i) =>
      it(`example ${i + 1} brings exactly its finding`, () => runExample(check, example)),
    );

    it('says what it is', () => {
      const path = join(__dirname, '../../server/src/core/checks', check.area, `${check.id}.ts`);
      expect(existsSync(path), path).toBe(true);
      expect(areas[check.area]).toBeDefined();
      for (const words of [check.what, check.why]) expect(words).toMatch(/^\S.*[.]$/s);
      expect(check.source).not.toBe('');
      // What another check judges is a remark: the sheet would have a person look at it.
      for (const limit of check.limits ?? [])
        for (const [, named] of limit.matchAll(/`([^`]*)`/g)) expect(ids).not.toContain(named);
      if (check.caution) expect(Object.keys(CAUTIONS)).toContain(check.caution);
      if (check.grade === 'harm' && !takesTheSteps.has(check.id)) expect(check.caution).toBeDefined();
    });

    it('has fixtures where it holds, breaks and cannot be decided', () => {
      const path = join(__dirname, check.area, `${check.id}.md`);
      expect(existsSync(path), path).toBe(true);
      const cases = readFixture(readFileSync(path, 'utf8'));
      const verdicts = new Set(
        cases.flatMap((one) => one.files.flatMap((file) => file.marks.map((mark) => mark.verdict))),
      );
      expect(verdicts).toContain('broken');
      if (check.on === 'build' && !cases.some((one) => /^Nothing to be unknown/.test(one.title))) {
        expect(verdicts).toContain('holds');
        expect(verdicts).toContain('unknown');
      }
    });
  });
}
