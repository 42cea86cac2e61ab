// The formats for other programs, each read by its own reader: over the samples, and over 100,000 findings.
import type { Log } from 'sarif';
import { describe, expect, it } from 'vitest';
import { printers, type Format } from '../../server/src/command/printers';
import { judgeBuild, judgeFile } from '../../server/src/core/judge/judge';
import { provenFixes } from '../../server/src/core/judge/prove';
import { Doc } from '../../server/src/core/parts/doc';
import { english } from '../../server/src/core/words/languages';
import { readerLimits } from '../../server/src/report/reader-limits';
import { comparisonComment } from '../../server/src/report/comment';
import { comparisonAnnotations, comparisonSarif } from '../../server/src/report/compare-formats';
import type { Section } from '../../server/src/report/section';
import { Tally } from '../../server/src/report/tally';
import type { FileComparison, FindingChange } from '../../server/src/review/comparison';
import type { TextFormatOptions } from '../../server/src/report/text';
import { bench, today } from '../support/bench';
import { readComment } from '../support/comments';
import { commandsIn, readJunit, readQuality, readSarif } from '../support/readers';
import { readSamples } from '../support/samples';

const look: TextFormatOptions = {
  shown: ({ name }) => name,
  from: 'unknown',
  working: false,
  accepted: false,
  language: english(),
  colour: false,
};

function written(format: Format, sections: readonly Section[], given: Partial<TextFormatOptions> = {}): string {
  const own = { ...look, ...given };
  const printer = printers[format](own, { on: today, version: '1.2.3', fails: own.from, isSince: false });
  const tally = new Tally();
  const body = sections.map((section) => {
    tally.add(section);
    return printer.section(section);
  });
  return [printer.open(), ...body, printer.close(tally, [])].join('');
}

const sections: readonly Section[] = readSamples().builds.map((build) => ({
  doc: build.doc,
  title: build.file.build.value ?? '',
  judgement: judgeBuild(build),
  settings: build.house,
  build,
}));
const open = sections.flatMap(({ judgement }) => judgement.findings.filter(({ accepted }) => !accepted));
const graded = (...grades: string[]) => open.filter(({ grade }) => grades.includes(grade)).length;

describe('the samples', () => {
  it('are SARIF by its own schema, with level, working, suppressions and help of every finding', () => {
    const [run] = readSarif(written('sarif', sections)).runs;
    const results = run!.results!;
    expect(results.filter(({ suppressions }) => suppressions?.length === 0)).toHaveLength(open.length);
    expect(results.filter(({ level }) => level === 'error').length).toBe(graded('harm', 'stop'));
    expect(results.filter(({ kind }) => kind === 'open').length).toBe(graded('unknown'));
    expect(results.filter(({ codeFlows }) => codeFlows).length).toBeGreaterThan(results.length * 0.8);
    const rules = new Map(run!.tool.driver.rules!.map((rule) => [rule.id, rule]));
    for (const { ruleId } of results) expect(rules.get(ruleId!)!.help!.markdown).toContain(`### ${ruleId}`);
    for (const { shortDescription } of rules.values()) expect(shortDescription!.text.length).toBeLessThanOrEqual(1_024);
  });

  it('have fingerprints in SARIF and code quality that no two findings share', () => {
    const results = readSarif(written('sarif', sections)).runs[0]!.results!;
    const prints = results.map(({ partialFingerprints }) => partialFingerprints!.primaryLocationLineHash);
    expect(new Set(prints).size).toBe(results.length);
    expect(readQuality(written('code-quality', sections))).toHaveLength(open.length);
  });

  it('are annotations, the worst of each kind, with the rest counted', () => {
    const commands = commandsIn(written('annotations', sections));
    const most = readerLimits.annotationsOfKind.most;
    const counts = (['error', 'warning', 'notice'] as const).map(
      (name) => commands.filter((command) => command.name === name).length,
    );
    expect(Math.max(...counts)).toBeLessThanOrEqual(most);
    expect(commands.length).toBeLessThanOrEqual(readerLimits.annotationsOfJob.most);
    expect(commands[0]!.properties.title).toContain('(harm)');
    expect(commands.at(-1)!.data).toContain(`${graded('harm', 'stop') - most} more of kind error`);
  });

  it('are JUnit XML, a case a finding, of which none is of another’s name', () => {
    const cases = readJunit(written('junit-xml', sections, { from: 'shortfall' }));
    expect(cases.filter(({ end }) => end === 'failure')).toHaveLength(graded('harm', 'stop', 'shortfall'));
    expect(new Set(cases.map(({ file, name }) => `${file}\n${name}`)).size).toBe(cases.length);
  });
});

it('puts proven fixes into SARIF as replacements, which give the mended text', () => {
  const text = 'format: 1\nbuild: Desk\nparts:\n  cooler: { heigt: 158 mm }\n';
  const { build } = bench([{ name: 'desk.pcbuild.yaml', text }]);
  const judgement = judgeBuild(build!);
  const finding = judgement.findings.find(({ id }) => id === 'unknown-key')!;
  const of = new Map([[finding, provenFixes(build!, judgement, finding)]]);
  const section = { doc: build!.doc, judgement, build: build!, fixes: { of, notSought: 0 } };
  const { fixes, message } = readSarif(written('sarif', [section])).runs[0]!.results!.find(
    ({ ruleId }) => ruleId === 'unknown-key',
  )!;
  const { deletedRegion, insertedContent } = fixes![0]!.artifactChanges[0]!.replacements[0]!;
  const { startLine, startColumn, endColumn } = deletedRegion;
  expect(text.split('\n')[startLine! - 1]!.slice(startColumn! - 1, endColumn! - 1)).toBe('heigt');
  expect(insertedContent!.text).toBe('height');
  expect(message.text).toContain('mend: ');
});

describe('100,000 findings', () => {
  const keys = Array.from({ length: 2_000 }, (_, i) => `  odd-key-${i}: 1\n`).join('');
  const text = `format: 1\nbuild: Desk\nparts:\n${keys}`;
  const doc = new Doc('desk.pcbuild.yaml', 'build', text);
  const judgement = judgeFile(doc);
  const many = Array.from({ length: 50 }, (): Section => ({ doc, judgement }));
  let nth = 0;
  // Each time round the file is another, as far as a report can tell.
  const shown = (): string => `desk-${nth}.pcbuild.yaml`;
  const all = (format: Format): string => {
    nth = 0;
    const printer = printers[format](
      { ...look, shown },
      { on: today, version: '1', fails: 'shortfall', isSince: false },
    );
    const tally = new Tally();
    const parts = many.map((section) => {
      nth++;
      tally.add(section);
      return printer.section(section);
    });
    return [printer.open(), ...parts, printer.close(tally, [])].join('');
  };

  it('that a change brings keep to them too, the new before those that stayed', () => {
    const one = (i: number): FindingChange => {
      const finding = { id: 'unknown-key', subject: `parts.odd-key-${i}`, text: `The key ${i} means nothing here.` };
      const rest = { file: 'desk.pcbuild.yaml', line: i + 1, fingerprint: `${i}`.padStart(16, '0'), missing: [] };
      const stop = { ...finding, ...rest, grade: 'stop' as const, unread: false };
      return i % 2 === 0 ? { kind: 'unchanged', before: stop, after: stop } : { kind: 'new', after: stop };
    };
    const file: FileComparison = {
      kind: 'build',
      state: 'changed',
      file: 'desk.pcbuild.yaml',
      because: [],
      findings: Array.from({ length: 100_000 }, (_, i) => one(i)),
      moved: [],
      newlyUnknown: [],
      newlyKnown: [],
      steps: [],
    };
    const covers = { builds: 1, touched: 1, unknown: 0 };
    const comparison = { before: 'main', after: 'working tree', on: today, files: [file], covers, troubles: [] };
    const given = { from: 'note', working: false, language: english() } as const;
    const log = comparisonSarif(comparison, given, { version: '1', language: english(), page: () => undefined });
    const [run] = (JSON.parse(log) as Log).runs;
    expect(run!.results!.length).toBe(readerLimits.sarifResults.most);
    expect(new Set(run!.results!.map(({ baselineState }) => baselineState))).toEqual(new Set(['new']));
    expect(commandsIn(comparisonAnnotations(comparison, given)).at(-1)!.data).toContain('49990 more of kind error');
    const { seen, text } = readComment(comparisonComment(comparison, given));
    expect(seen.length).toBeLessThanOrEqual(25);
    expect(text).toContain('… and 49975 more');
  });

  it('keep to what readers take, and say what was cut', () => {
    expect(judgement.findings).toHaveLength(2_000);
    const sarif = all('sarif');
    expect(sarif.length).toBeLessThanOrEqual(readerLimits.sarifBytes.most);
    const [run] = (JSON.parse(sarif) as Log).runs;
    expect(run!.results!.length).toBe(readerLimits.sarifResults.most);
    expect(run!.invocations![0]!.toolExecutionNotifications![0]!.message.text).toContain('95000 findings are');
    expect(commandsIn(all('annotations')).at(-1)!.data).toContain('99990 more of kind error');
    const junit = all('junit-xml');
    expect(junit.length).toBeLessThanOrEqual(readerLimits.junitBytes.most);
    const cases = junit.split('<testcase ').length - 1;
    expect(cases).toBeLessThanOrEqual(readerLimits.junitCases.most);
    expect(junit).toContain('Findings that are not listed');
    const quality = all('code-quality');
    expect(quality.length).toBeLessThanOrEqual(readerLimits.qualityBytes.most);
    expect(JSON.parse(quality)).toHaveLength(100_000);
  });
});
