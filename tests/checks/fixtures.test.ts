// Runs every check's fixtures: outcomes compared both ways with the marks, fixes with the texts they cable to.
import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { checks } from '../../server/src/core/checks/all';
import type { Check } from '../../server/src/core/checks/check';
import { findingOf, type Answer } from '../../server/src/core/judge/finding';
import { judgeBuild, judgeFile, judgeGuide } from '../../server/src/core/judge/judge';
import { provenFileFixes, provenFixes, provenGuideFixes, type ProvenFix } from '../../server/src/core/judge/prove';
import type { Doc } from '../../server/src/core/parts/doc';
import { applyEdits } from '../../server/src/core/text';
import { bench, today } from '../support/bench';
import { buildName, readFixture, type Case, type FixtureFile } from '../support/fixture';

const only = process.env.CHECK;

function fixtureFiles(folder: string): string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('.md'))
    .map((path) => join(folder, path))
    .sort();
}

/** One outcome as a line, written as the marks are written. */
function lines(doc: Doc, answers: readonly Answer[], check: Check, words: (at: string) => boolean): string[] {
  const outcomes = answers
    .filter((answer) => answer.check === check)
    .flatMap((answer) => answer.taken.map(({ outcome }) => outcome));
  return outcomes
    .filter(
      (outcome) =>
        outcome.underline.doc === doc &&
        (outcome.truth.is !== true || outcome.underline.span.end > outcome.underline.span.start),
    )
    .map((outcome) => {
      const { span } = outcome.underline;
      const lineEnd = doc.lines.lineSpan(doc.lines.positionAt(span.start).line).end;
      const at = `${span.start}-${Math.min(span.end, lineEnd)}`;
      const finding = findingOf(check, outcome, outcome.grade ?? check.grade);
      if (!finding) return `${at} holds`;
      if (outcome.truth.is === undefined && outcome.usual)
        return `${at} usual${words(at) ? `: ${outcome.usual()}` : ''}`;
      const said = words(at) ? `: ${finding.said.text}` : '';
      if (finding.grade === 'unknown' && outcome.truth.is === undefined) return `${at} unknown${said}`;
      return `${at} broken${finding.grade === check.grade ? '' : ` (${finding.grade})`}${said}`;
    })
    .sort();
}

function expected(file: FixtureFile): { lines: string[]; said: Set<string> } {
  const said = new Set(file.marks.filter((mark) => mark.words).map((mark) => `${mark.span.start}-${mark.span.end}`));
  const written = file.marks.map(
    ({ span, verdict, words, grade }) =>
      `${span.start}-${span.end} ${verdict}${grade ? ` (${grade})` : ''}${words ? `: ${words}` : ''}`,
  );
  return { lines: written.sort(), said };
}

function judgeCase(check: Check, one: Case): void {
  const set = bench(one.files);
  for (const file of one.files) {
    const doc = set.docs.get(file.name)!;
    const isBuild = set.build?.doc === doc && check.on !== 'guide';
    if (check.on === 'guide' && doc !== set.guide?.doc) continue;
    if (!isBuild && !['guide', 'file', 'settings', 'known'].includes(check.on)) continue;
    const judged = check.on === 'accept' ? checks : [check];
    const judgement =
      check.on === 'guide'
        ? judgeGuide(set.guide!, { checks: judged, throwOn: true })
        : isBuild
          ? judgeBuild(set.build!, { checks: judged, throwOn: true })
          : judgeFile(doc, { checks: judged, throwOn: true, today });
    const want = expected(file);
    expect(lines(doc, judgement.answers, check, (at) => want.said.has(at))).toEqual(want.lines);
  }
  if (one.fixes.length > 0) compareFixes(check, one);
}

function compareFixes(check: Check, one: Case): void {
  const set = bench(one.files);
  const proven: ProvenFix[] = [];
  if (set.guide) {
    const before = judgeGuide(set.guide, { throwOn: true });
    for (const finding of before.findings.filter((found) => found.id === check.id))
      proven.push(...provenGuideFixes(set.guide, before, finding));
  } else if (set.build) {
    const before = judgeBuild(set.build, { throwOn: true });
    for (const finding of before.findings.filter((found) => found.id === check.id))
      proven.push(...provenFixes(set.build, before, finding, set.candidates));
  } else {
    for (const doc of set.docs.values()) {
      const before = judgeFile(doc, { throwOn: true });
      for (const finding of before.findings.filter((found) => found.id === check.id))
        proven.push(...provenFileFixes(doc, before, finding));
    }
  }
  const got = proven.map((fix) => ({
    title: fix.title,
    file: fix.doc.name,
    text: applyEdits(fix.doc.text, fix.edits),
  }));
  expect(got).toEqual(
    one.fixes.map(({ title, file, text }) => ({
      title,
      file: set.build || file !== buildName ? file : one.files[0]!.name,
      text,
    })),
  );
}

for (const path of fixtureFiles(__dirname)) {
  const id = basename(path, '.md');
  if (only && only !== id) continue;
  describe(id, () => {
    const check = checks.find((one) => one.id === id);
    if (!check) return it('has a check', () => expect(check).toBeDefined());
    for (const one of readFixture(readFileSync(path, 'utf8'))) it(one.title, () => judgeCase(check, one));
  });
}
