// Findings as SARIF 2.1.0: working as code flow, accepted findings as suppressions, proven fixes as replacements.
// Source: OASIS, Static Analysis Results Interchange Format (SARIF) Version 2.1.0.
import { relatedTo, type Finding } from '../core/judge/finding';
import type { ProvenFix } from '../core/judge/prove';
import { workingOf, type Step } from '../core/judge/working-steps';
import type { SourceLocation } from '../core/parts/doc';
import { fingerprintIn, fingerprints } from '../review/fingerprint';
import { acceptedWords, findingLines } from './finding-text';
import { toJson } from './json';
import { readerLimits } from './reader-limits';
import { artifact, levelOf, plainText, rankOf, type SarifLog } from './sarif-log';
import { keyOf, listed, type FormatOptions, type Section } from './section';

/** Adds what a section lists. */
export function addSection(log: SarifLog, section: Section, look: FormatOptions): void {
  const { judgement, build, since } = section;
  const prints = fingerprints(since?.all ?? judgement.findings, build);
  for (const finding of listed(section, { from: look.from, accepted: true })) {
    const print = prints.get(finding)!;
    const isWorse = since?.worse.has(finding) ?? false;
    log.add(finding.id, rankOf(finding), (isWhole) =>
      toJson({
        ...resultOf(finding, look),
        partialFingerprints: partialFingerprints(keyOf(section, look), print),
        ...(since ? { baselineState: isWorse ? 'updated' : 'new' } : {}),
        ...(isWhole ? detailsOf(finding, section, look) : {}),
      }),
    );
  }
}

/** The second is what forges match alerts by: no other finding of a report has it. */
export const partialFingerprints = (file: string, print: string): object => ({
  'finding/v1': print,
  primaryLocationLineHash: `${fingerprintIn(file, print)}:1`,
});

function resultOf(finding: Finding, look: FormatOptions): object {
  const { id, grade, subject, underline, accepted, known } = finding;
  const justification = accepted ? plainText(acceptedWords(finding, look.language)) : '';
  // What is known stands in a file of its own; what is accepted stands in the build.
  const kind = known ? 'external' : 'inSource';
  return {
    ruleId: id,
    // What waits for facts is open, and has no level.
    ...(grade === 'unknown' ? { kind: 'open', level: 'none' } : { level: levelOf(grade) }),
    locations: [{ ...located(underline, look), logicalLocations: [{ fullyQualifiedName: subject, kind: 'member' }] }],
    suppressions: accepted ? [{ kind, status: 'accepted', justification }] : [],
    properties: { grade, subject },
    message: { text: plainText(findingLines(finding, undefined, look.language).join('\n\n')) },
  };
}

/** What a large report leaves out of its lighter results. */
function detailsOf(finding: Finding, section: Section, look: FormatOptions): object {
  const fixes = section.fixes?.of.get(finding) ?? [];
  const related = relatedTo(finding, readerLimits.sarifLocations.most);
  const steps = workingOf(finding).flatMap((step) => flow(step, finding.underline, 0, look));
  return {
    message: { text: plainText(findingLines(finding, section.fixes, look.language).join('\n\n')) },
    ...(related.length > 0
      ? {
          relatedLocations: related.map((line, id) => ({
            id,
            ...located(line, look),
            ...said(look.language.plain(line.what)),
          })),
        }
      : {}),
    ...(steps.length > 0
      ? { codeFlows: [{ threadFlows: [{ locations: steps.slice(-readerLimits.sarifFlowLocations.most) }] }] }
      : {}),
    ...(fixes.length > 0 ? { fixes: fixes.map((fix) => fixOf(fix, look)) } : {}),
  };
}

const said = (text: string): object => ({ message: { text: plainText(text) } });

const located = ({ doc, span }: SourceLocation, look: FormatOptions): object => ({
  physicalLocation: { artifactLocation: artifact(look.shown(doc)), region: region({ doc, span }) },
});

function region({ doc, span }: SourceLocation): object {
  const { start, end } = doc.lines.rangeOf(span);
  return {
    startLine: start.line + 1,
    startColumn: start.character + 1,
    endLine: end.line + 1,
    endColumn: end.character + 1,
  };
}

/** A step after those that went into it; one that was worked out stands where the finding does. */
function flow(step: Step, at: SourceLocation, depth: number, look: FormatOptions): object[] {
  const { formula, source, repeated, from } = step;
  const { language } = look;
  const [label, value] = step.figure
    ? [language.plain(step.label), language.label(step.value)]
    : [step.label, step.value];
  const words = [
    `${label}: ${value}`,
    ...(formula ? [` = ${language.plain(formula)}`] : []),
    ...(repeated ? [` (${language.plain('as above')})`] : []),
    ...(source ? [`; ${language.plain(source)}`] : []),
  ];
  return [
    ...step.inputs.flatMap((input) => flow(input, at, depth + 1, look)),
    { location: { ...located(from ?? at, look), ...said(words.join('')) }, nestingLevel: depth },
  ];
}

const fixOf = ({ title, doc, edits }: ProvenFix, look: FormatOptions): object => ({
  description: { text: plainText(look.language.plain(title)) },
  artifactChanges: [
    {
      artifactLocation: artifact(look.shown(doc)),
      replacements: edits.map(({ span, text }) => ({
        deletedRegion: region({ doc, span }),
        insertedContent: { text },
      })),
    },
  ],
});
