// An acceptance covers what was weighed: worse comes back, and what does not touch the finding leaves it accepted.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { amountPast, type Measure } from '../../server/src/core/figures/measure';
import type { Figure } from '../../server/src/core/figures/figure';
import type { Finding, Judgement } from '../../server/src/core/judge/finding';
import { judgeBuild } from '../../server/src/core/judge/judge';
import { applyEdits } from '../../server/src/core/text';
import { acceptEdits } from '../../server/src/features/accept';
import type { View } from '../../server/src/features/shapes';
import { bench } from '../support/bench';
import { buildName, readFixture } from '../support/fixture';
import { readSamples } from '../support/samples';
import { runs } from './support/seed';

type Files = ReadonlyMap<string, string>;
interface Case {
  readonly files: Files;
  readonly build: string;
  readonly id: string;
  readonly subject: string;
}

const judge = (files: Files): Judgement =>
  judgeBuild(bench([...files].map(([name, text]) => ({ name, text }))).build!, { throwOn: true });

const measured = ({ findings }: Judgement): Finding[] =>
  findings.filter((one, i) => one.measure && !one.accepted && !one.check.unread && findings.findIndex(same(one)) === i);
const same = (a: Pick<Finding, 'id' | 'subject'>) => (b: Finding) => a.id === b.id && a.subject === b.subject;

/** The files with the finding accepted by the quick fix, its reason and name filled in. */
function accepted(files: Files, build: string, finding: Finding): Files | undefined {
  const { doc } = finding.underline;
  const { build: own } = bench([...files].map(([name, text]) => ({ name, text })));
  const edits = acceptEdits({ doc, build: own } as View, finding);
  const text =
    edits && applyEdits(doc.text, edits).replace('because: ""', 'because: Weighed.').replace('by: ""', 'by: A');
  return text === undefined ? undefined : new Map([...files, [build, text]]);
}

/** Every measured finding of the samples and of the checks’ own cases, each accepted. */
function allCases(): Case[] {
  const { docs } = readSamples();
  const others = [...docs].filter(([, { kind }]) => kind !== 'build').map(([name, { text }]) => [name, text] as const);
  const sets: [string, Files][] = [...docs]
    .filter(([, { kind }]) => kind === 'build')
    .map(([name, { text }]) => [name, new Map([[name, text], ...others])]);
  const folder = join(__dirname, '../checks');
  for (const path of readdirSync(folder, { recursive: true, encoding: 'utf8' }).sort()) {
    if (!path.endsWith('.md') || path.startsWith('text')) continue;
    for (const { files } of readFixture(readFileSync(join(folder, path), 'utf8')))
      if (files.some(({ name }) => name === buildName))
        sets.push([buildName, new Map(files.map(({ name, text }) => [name, text]))]);
  }
  return sets.flatMap(([build, files]) =>
    measured(judge(files)).flatMap((finding) => {
      const after = accepted(files, build, finding);
      return after ? [{ files: after, build, id: finding.id, subject: finding.subject }] : [];
    }),
  );
}

const kept = new Map<Case, Judgement>();
function judged(one: Case): Judgement {
  const judgement = kept.get(one) ?? judge(one.files);
  kept.set(one, judgement);
  return judgement;
}

type From = NonNullable<Figure['from']>;

/** The lines that the numbers of a measure are read from. */
function linesBehind({ figure, limit }: Measure): From[] {
  const lines = new Map<string, From>();
  const visit = (one: Figure): void => {
    if (one.from) lines.set(`${one.from.doc.name}:${one.from.span.start}`, one.from);
    one.inputs.forEach(visit);
  };
  [figure, limit].forEach(visit);
  return [...lines.values()];
}

/** The files with every number of a line multiplied. */
function scaled(files: Files, { doc, span }: From, factor: number): Files {
  const text = doc.text.slice(span.start, span.end).replace(/\d+(?:\.\d+)?/, (digits) => {
    const value = Number(digits) * factor;
    return String(Number.isInteger(Number(digits)) && factor >= 2 ? Math.round(value) : Number(value.toPrecision(6)));
  });
  return new Map([...files, [doc.name, doc.text.slice(0, span.start) + text + doc.text.slice(span.end)]]);
}

const lapses = ({ findings }: Judgement): number => findings.filter(({ id }) => id === 'accepted-but-worse').length;

describe('accepted findings', () => {
  let cases: Case[] = [];
  beforeAll(() => {
    cases = allCases();
  }, 120_000);
  const anyCase = fc.nat().map((n) => cases[n % cases.length]!);

  it('are accepted as the quick fix writes them', () => {
    expect(cases.length).toBeGreaterThan(200);
    for (const one of cases) {
      const judgement = judged(one);
      expect(judgement.findings.find(same(one))?.accepted?.because, `${one.id} ${one.subject}`).toBe('Weighed.');
      expect(lapses(judgement)).toBe(0);
    }
  }, 120_000);

  it('come back when they are made worse', () => {
    let worse = 0;
    const property = fc.property(anyCase, fc.nat(), fc.double({ min: 1.05, max: 3, noNaN: true }), (one, n, factor) => {
      if (worse >= 200) return;
      const before = judged(one).findings.find(same(one))!;
      const lines = linesBehind(before.measure!);
      if (lines.length === 0) return;
      for (const by of [factor, 1 / factor]) {
        const after = judge(scaled(one.files, lines[n % lines.length]!, by));
        const found = after.findings.filter(same(one));
        const now = found[0];
        if (found.length !== 1 || !now?.measure) continue;
        if (now.measure.figure.dimension !== before.measure!.figure.dimension) continue;
        if (amountPast(now.measure) <= amountPast(before.measure!) * (1 + 1e-4) + 1e-9) continue;
        worse++;
        expect(now.accepted, `${one.id} ${one.subject}`).toBeUndefined();
        expect(lapses(after)).toBe(1);
      }
    });
    fc.assert(property, runs(500));
    expect(worse).toBeGreaterThanOrEqual(200);
  }, 180_000);

  it('stay accepted under edits that do not touch them', () => {
    let edits = 0;
    const property = fc.property(anyCase, fc.nat(), fc.nat(), (one, which, n) => {
      if (edits >= 200) return;
      const before = judged(one);
      const finding = before.findings.find(same(one))!;
      const text = one.files.get(one.build)!;
      const changed = harmless(one, before, finding, text, which, n);
      if (!changed) return;
      const after = judge(changed);
      const now = after.findings.find(same(one));
      edits++;
      if (now?.measure && amountPast(now.measure) <= amountPast(finding.measure!)) {
        expect(now.accepted?.because, `${one.id} ${one.subject}`).toBe('Weighed.');
        expect(lapses(after)).toBe(0);
      } else expect(which % 6, `${one.id} ${one.subject}`).toBe(5);
    });
    fc.assert(property, runs(500));
    expect(edits).toBeGreaterThanOrEqual(200);
  }, 180_000);
});

/**
 * One of six kinds of edit: comments, blank lines, order, line ends, another name of the build, another part’s fact.
 */
function harmless(
  one: Case,
  before: Judgement,
  finding: Finding,
  text: string,
  which: number,
  n: number,
): Files | undefined {
  const { build, files } = one;
  const lines = text.split('\n');
  const at = n % lines.length;
  switch (which % 6) {
    case 0:
      return new Map([...files, [build, `# Looked at again.\n${text}\n# To the end.\n`]]);
    case 1:
      // A comment behind every line, where no text of several lines or in quotes could take it in.
      if (/["'|>#]/.test(text)) return undefined;
      return new Map([...files, [build, lines.map((line) => (line === '' ? line : `${line}  # ${at}`)).join('\n')]]);
    case 2:
      return /^[}\]]/m.test(text) ? undefined : new Map([...files, [build, reordered(text)]]);
    case 3:
      return new Map([...files, [build, text.replaceAll('\n', '\r\n')]]);
    case 4:
      return new Map([['renamed.pcbuild.yaml', text], ...[...files].filter(([name]) => name !== build)]);
    default: {
      const own = new Set(linesBehind(finding.measure!).map(({ doc, span }) => `${doc.name}:${span.start}`));
      const others = before.findings
        .flatMap((other) => (other.measure ? linesBehind(other.measure) : []))
        .filter(({ doc, span }) => !own.has(`${doc.name}:${span.start}`));
      return others.length === 0 ? undefined : scaled(files, others[n % others.length]!, 1.01);
    }
  }
}

/** The keys at the top of a file in the opposite order, each with what stands under it. */
const reordered = (text: string): string =>
  text
    .split(/^(?=[^\s#-])/m)
    .map((part) => (part.endsWith('\n') ? part : `${part}\n`))
    .reverse()
    .join('');
