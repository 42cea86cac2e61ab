// Fixes: nothing outside their own field changes, the finding is gone, nothing as bad comes, and none is offered where
// the text could mean two things (promises P4, P5, P6, P8).
import fc from 'fast-check';
import { afterAll, describe, expect, it } from 'vitest';
import { provenFileFixes, provenFixes, type ProvenFix } from '../../server/src/core/judge/prove';
import type { Finding } from '../../server/src/core/judge/finding';
import { applyEdits } from '../../server/src/core/text';
import { doubtful, isInside, moreComments, strayChanges, worseOnes, applyInTurn } from './support/hold-fix';
import { candidates, judge, judgeWith, partName, type Judged } from './support/judged';
import { runs } from './support/seed';
import { broken, builds, partFiles } from './support/texts';

const seen = new Map<string, number>();

function fixesOf(view: Judged, finding: Finding): ProvenFix[] {
  return view.build
    ? provenFixes(view.build, view.judgement, finding, candidates)
    : provenFileFixes(view.doc, view.judgement, finding);
}

/** A few findings of each text, so that many texts are tried; which ones depends on the text. */
function* fixesIn(view: Judged, most: number): Iterable<{ finding: Finding; fix: ProvenFix }> {
  const able = view.judgement.findings.filter(({ fixes }) => fixes);
  const from = able.length > most ? view.doc.text.length % (able.length - most + 1) : 0;
  for (const finding of able.slice(from, from + most)) {
    for (const fix of fixesOf(view, finding).slice(0, 3)) yield { finding, fix };
  }
}

const problems = (view: Judged, name: string): string[] =>
  (view.doc.name === name
    ? view.doc
    : view.build!.find(name.replace(/^parts\/|\.part\.yaml$/g, ''))!
  ).parsed.problems.map(({ code }) => code);

function hold(view: Judged, finding: Finding, fix: ProvenFix): void {
  seen.set(finding.id, (seen.get(finding.id) ?? 0) + 1);
  const after = applyEdits(fix.doc.text, fix.edits);
  const say = (what: string): string =>
    `${finding.id} at ${finding.subject}, “${fix.title}”: ${what}\n${fix.doc.text}\n-->\n${after}\n`;
  expect(after, say('changes nothing')).not.toBe(fix.doc.text);
  expect(applyInTurn(fix.doc.text, [...fix.edits].reverse()), say('depends on the order of its edits')).toBe(after);
  const stray = strayChanges(fix.doc.text, fix.edits, after).filter(
    // Lines of a sheet stay behind the facts that are read from them, as comments.
    (fault) => finding.id !== 'sheet-lines-not-facts' || fault !== moreComments,
  );
  expect(stray, say(stray.join('; '))).toEqual([]);
  const judged = judgeWith(view, fix.doc, after);
  expect(problems(judged, fix.doc.name).length, say('reads worse than before')).toBeLessThanOrEqual(
    problems(view, fix.doc.name).length,
  );
  const left = judged.judgement.findings.filter(({ id, subject }) => id === finding.id && subject === finding.subject);
  expect(
    left.map(({ said }) => said.text),
    say('its finding is still there'),
  ).toEqual([]);
  const worse = worseOnes(view.judgement.findings, judged.judgement.findings, finding.grade);
  expect(worse, say('something as bad has come')).toEqual([]);
}

describe('a proven fix', () => {
  it('of a build keeps all around it, and mends', () => {
    fc.assert(
      fc.property(builds, ({ text }) => {
        const view = judge(text);
        for (const { finding, fix } of fixesIn(view, 5)) hold(view, finding, fix);
      }),
      runs(90),
    );
  });

  it('of a part file keeps all around it, and mends', () => {
    fc.assert(
      fc.property(partFiles, ({ text }) => {
        const view = judge(text, partName);
        for (const { finding, fix } of fixesIn(view, 8)) hold(view, finding, fix);
      }),
      runs(180),
    );
  });

  it('of a broken text keeps what can be read, and makes nothing worse', () => {
    fc.assert(
      fc.property(broken(builds), broken(partFiles), (build, part) => {
        for (const view of [judge(build), judge(part, partName)])
          for (const { finding, fix } of fixesIn(view, 3)) hold(view, finding, fix);
      }),
      {
        ...runs(70),
        examples: [
          // A value behind a tab would go on the one above it, and the file be no part file any more.
          ['format: 1\n', 'ind: cable\r\tmass: 1150 to 2300 g'],
          // A key of nothing that is a key and its value.
          ['format: 1\n', 'kind: stick\nsource: x\nmodel:c3\n'],
        ],
      },
    );
  });

  it('has no further fix under its own name at its own place', () => {
    fc.assert(
      fc.property(builds, ({ text }) => {
        const view = judge(text);
        for (const { finding, fix } of fixesIn(view, 2)) {
          const judged = judgeWith(view, fix.doc, applyEdits(fix.doc.text, fix.edits));
          const again = judged.judgement.findings
            .filter(({ id, subject }) => id === finding.id && subject === finding.subject)
            .flatMap((left) => fixesOf(judged, left));
          expect(again.map(({ title }) => title)).toEqual([]);
        }
      }),
      runs(25),
    );
  });
});

/** Puts an anchor, alias, tag, merge or second key into a text; at the end of a key’s line and elsewhere. */
const twofold = fc
  .record({
    from: fc.oneof(builds, partFiles),
    at: fc.nat(),
    put: fc.constantFrom(' &a', ' !!str', ' !own', ' &a !!map', ' *a', '\n<<: *a'),
    also: fc.constantFrom('', 'twice', 'merge'),
  })
  .map(({ from: { text, hand }, at, put, also }) => {
    const colons = [...text.matchAll(/:(?= |\r?\n)/g)].map(({ index }) => index + 1);
    const place = colons[at % Math.max(1, colons.length)] ?? 0;
    const [first, second] = [text.slice(0, place), text.slice(place)];
    const whole = first + put.replace('\n', hand.eol) + second;
    const line = /^[ ]*[^\s#:{[-][^\r\n:]*: [^\r\n]*(?:\r\n|\n)/m.exec(whole)?.[0] ?? '';
    return also === 'twice'
      ? whole.replace(line, () => line + line)
      : also === 'merge'
        ? whole.replace(line, () => line + line.replace(/\S.*/, '<<: *a'))
        : whole;
  });

describe('where a text could mean two things', () => {
  let offered = 0;
  it('nothing there is changed', () => {
    fc.assert(
      fc.property(twofold, (text) => {
        for (const view of [judge(text), judge(text, partName)]) {
          for (const { finding, fix } of fixesIn(view, 8)) {
            if (fix.doc !== view.doc) continue;
            offered++;
            const under = doubtful(text).find((span) => fix.edits.some((edit) => isInside(edit, span)));
            const said =
              under &&
              `${finding.id} “${fix.title}” changes ${JSON.stringify(text.slice(under.start, under.end))} ` +
                `of\n${text}\n-->\n${applyEdits(text, fix.edits)}`;
            expect(said).toBeUndefined();
            hold(view, finding, fix);
          }
        }
      }),
      runs(150),
    );
  });

  it('what is plain beside it is still mended', () => expect(offered).toBeGreaterThan(60));

  it.each([
    ['an anchor', 'kind: cooler\nheight: &h 158\n'],
    ['a tag', 'kind: cooler\nheight: !!str 158\n'],
    ['an alias', 'kind: cooler\nmass: &m 900 g\nheight: *m\n'],
    ['a second key', 'kind: cooler\nheight: 158\nheight: 159\n'],
    ['a merge', 'kind: cooler\ndraw: &d { typical: 3 }\nsource: { <<: *d, titel: x }\n'],
    ['an anchored map around', 'kind: cooler\ndraw: &d\n  typical: 3\n'],
    ['broken text around', 'kind: cooler\ndraw: { typical: 3\nheight 158\n'],
  ])('no fix at %s', (_, text) => {
    const view = judge(text, partName);
    const found = view.judgement.findings.filter(({ subject }) => /height|draw|source/.test(subject));
    expect(found.flatMap((finding) => fixesOf(view, finding)).map(({ title }) => title)).toEqual([]);
  });
});

afterAll(() => {
  // The properties are worth something only where fixes of many checks were tried.
  expect(seen.size, [...seen.keys()].join(', ')).toBeGreaterThan(15);
});
