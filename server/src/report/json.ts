// Findings as JSON, in the shape that `schemas/findings.schema.json` lays down.
import type { Build } from '../core/build/build';
import type { Check } from '../core/checks/check';
import { pageOf } from '../core/checks/page';
import { totalCost } from '../core/figures/cost';
import { wallPower } from '../core/figures/mains';
import { sustainedDraw } from '../core/figures/power';
import { show } from '../core/figures/sentence';
import type { ProvenFix } from '../core/judge/prove';
import { CAUTIONS, type CautionId } from '../core/trade/cautions';
import { isBounded, type Figure, type Missing } from '../core/figures/figure';
import { excessOf, weighedValue, type Measure } from '../core/figures/measure';
import { relatedTo, type Finding, type KnownBy } from '../core/judge/finding';
import { spanOfMissing } from '../core/judge/waiting';
import { workingOf, type Step } from '../core/judge/working-steps';
import type { SourceLocation } from '../core/parts/doc';
import { visibleInJson } from '../core/text';
import { fingerprints } from '../review/fingerprint';
import type * as Plain from './plain';
import { listed, type FormatOptions, type Section } from './section';
import type { Tally } from './tally';

/** Raised when a field changes its meaning or goes; new fields leave it as it is. */
export const shapeVersion = 1;

const placed = ({ doc, span }: SourceLocation, path: string, look: FormatOptions): Plain.Place => ({
  file: look.shown(doc),
  range: doc.lines.rangeOf(span),
  path,
});

/** JSON in which every character that cannot be seen is written as an escape: the same value, safe on a terminal. */
export function toJson(value: unknown): string {
  return visibleInJson(JSON.stringify(value));
}

/** One file with its findings. */
export function sectionJson(section: Section, look: FormatOptions): Plain.JudgedFile {
  const { doc, title, judgement, build } = section;
  const findings = listed(section, { from: look.from, accepted: true });
  const prints = fingerprints(section.since?.all ?? judgement.findings, build);
  return {
    file: look.shown(doc),
    kind: doc.kind,
    ...(title === undefined ? {} : { name: title }),
    worst: judgement.findings.find((finding) => !finding.accepted)?.grade ?? null,
    checks: judgement.counts,
    ...(build ? { totals: totalsJson(build) } : {}),
    findings: findings.map((finding) => ({
      ...findingJson(finding, look),
      fingerprint: prints.get(finding)!,
      fixes: (section.fixes?.of.get(finding) ?? []).map((fix) => fixJson(fix, look)),
    })),
  };
}

/** What a build comes to in all; a total of which nothing is known is left out. */
function totalsJson(build: Build): NonNullable<Plain.JudgedFile['totals']> {
  const totals: [keyof NonNullable<Plain.JudgedFile['totals']>, Figure | undefined][] = [
    ['cost', totalCost(build)],
    ['sustainedDraw', sustainedDraw(build)],
    ['wallPower', wallPower(build)],
  ];
  return Object.fromEntries(
    totals.flatMap(([name, figure]) => (figure && isBounded(figure) ? [[name, totalJson(figure)]] : [])),
  );
}

const totalJson = (figure: Figure): Plain.Total => ({
  value: show(figure),
  dimension: figure.dimension,
  ...(figure.currency ? { currency: figure.currency } : {}),
  ...bound('low', figure.lo),
  ...bound('high', figure.hi),
});

/** A proven fix, as edits of one file. */
function fixJson({ title, doc, edits, brings, clears, givesWay }: ProvenFix, look: FormatOptions): Plain.Fix {
  const named = (findings: readonly Finding[]): Plain.NamedFinding[] =>
    findings.map(({ id, grade, subject }) => ({ id, grade, path: subject }));
  return {
    title,
    file: look.shown(doc),
    edits: edits.map(({ span, text }) => ({ range: doc.lines.rangeOf(span), text })),
    brings: named(brings),
    clears: named(clears),
    givesWay,
  };
}

/** What the checks that found something are about, by their ids. */
export function explainedJson(checks: ReadonlySet<Check>): Readonly<Record<string, Plain.Explained>> {
  const pages = [...checks].map(pageOf).sort((a, b) => (a.id < b.id ? -1 : 1));
  return Object.fromEntries(
    pages.map(({ id, what, why, grade, area, source, limits, remarks }) => [
      id,
      { what, why, grade, area, source, limits, remarks },
    ]),
  );
}

export function findingJson(finding: Finding, look: FormatOptions): Omit<Plain.Finding, 'fingerprint' | 'fixes'> {
  const caution = finding.caution && CAUTIONS[finding.caution as CautionId];
  return {
    id: finding.id,
    grade: finding.grade,
    ...placed(finding.underline, finding.subject, look),
    message: look.language.said(finding.said),
    missing: finding.missing.map((lack) => missingJson(lack, look)),
    related: relatedTo(finding).map((line) => ({ ...placed(line, line.path, look), what: line.what })),
    ...(caution
      ? {
          caution: {
            word: caution.word,
            hazard: caution.hazard,
            consequence: caution.consequence,
            avoidance: caution.avoidance,
            defersTo: caution.defersTo,
          },
        }
      : {}),
    ...(finding.measure ? { excess: excessJson(finding.measure) } : {}),
    ...(finding.accepted ? { accepted: finding.accepted } : {}),
    ...(finding.known ? { known: knownJson(finding.known) } : {}),
    ...(look.working ? { working: workingOf(finding).map((step) => stepJson(step, look)) } : {}),
  };
}

const knownJson = ({ state, by, until }: KnownBy): NonNullable<Plain.Finding['known']> => ({ state, by, until });

/** By how much a finding is broken: the amount that an acceptance weighs. */
function excessJson(measure: Measure): NonNullable<Plain.Finding['excess']> {
  const excess = excessOf(measure);
  return { value: String(weighedValue(measure)), dimension: excess.dimension, amount: excess.hi };
}

export function missingJson(lack: Missing, look: FormatOptions): Plain.MissingFact {
  const { doc, path, what } = lack;
  const span = spanOfMissing(lack);
  return { file: look.shown(doc), ...(span ? { line: doc.lines.positionAt(span.start).line } : {}), path, what };
}

function stepJson(step: Step, look: FormatOptions): Plain.WorkingStep {
  const { figure, from } = step;
  return {
    label: step.label,
    value: step.value,
    ...(figure ? { dimension: figure.dimension, ...bound('low', figure.lo), ...bound('high', figure.hi) } : {}),
    ...(step.formula ? { formula: step.formula } : {}),
    ...(step.source ? { source: step.source } : {}),
    ...(from ? { from: placed(from, from.path, look) } : {}),
    ...(step.repeated ? { repeated: true } : {}),
    inputs: step.inputs.map((input) => stepJson(input, look)),
  };
}

/** A bound in the dimension’s base unit; left out where the value is open on that side. */
const bound = (name: 'low' | 'high', value: number): { readonly low?: number; readonly high?: number } =>
  Number.isFinite(value) ? { [name]: value } : {};

/** What stands before and after the list of files. */
export function openingJson(run: { readonly on: string; readonly from: string }): string {
  return `{\n"version": ${shapeVersion},\n"on": ${toJson(run.on)},\n"from": ${toJson(run.from)},\n"files": [`;
}

export function closingJson(
  tally: Tally,
  troubles: readonly Plain.NotRead[],
  look: Pick<FormatOptions, 'from'>,
): string {
  const { leftOut, counts } = runJson(tally, troubles, look);
  return (
    `],\n"explained": ${toJson(explainedJson(tally.found))},\n"leftOut": ${toJson(leftOut)},\n"troubles": ` +
    `${toJson(troubles)},\n"counts": ${toJson(counts)}\n}\n`
  );
}

/** What a run comes to, and what its report leaves out. */
export function runJson(
  tally: Tally,
  troubles: readonly Plain.NotRead[],
  look: Pick<FormatOptions, 'from'>,
): { readonly leftOut: object; readonly counts: object } {
  const counts = {
    builds: tally.builds,
    checks: tally.checks,
    findings: tally.findings,
    accepted: tally.accepted,
    notListed: tally.cut,
  };
  const leftOut = {
    off: [...tally.settings.off].sort(),
    offFindings: tally.off,
    regraded: [...tally.settings.regraded].sort().map(([id, grade]) => ({ id, grade })),
    accepted: tally.accepted,
    known: tally.known,
    recorded: tally.recorded,
    recordedCleared: tally.cleared,
    lighter: tally.lighterThan(look.from),
    pastMost: tally.cut,
    fixesNotSought: tally.notMended,
    notRead: troubles.map(({ path }) => path),
  };
  return { leftOut, counts };
}
