// Findings as text for a terminal: grade, place, sentence, the check’s id last; then the working.
import type { Build } from '../core/build/build';
import { cautionWords, type CautionWords } from '../core/checks/page';
import type { Finding } from '../core/judge/finding';
import { workingOf } from '../core/judge/working-steps';
import type { Missing } from '../core/figures/figure';
import { factKey, spanOfMissing, waiting } from '../core/judge/waiting';
import type { Grade } from '../core/manifest/house-file';
import type { Language } from '../core/words/language';
import { acceptedWords } from './finding-text';
import { block, columns, padded, safe, withRight } from './layout';
import { knownWords } from './known-words';
import { lineOf, listed, type Fixes, type FormatOptions, type Section } from './section';
import { workingText } from './working-text';

export interface TextFormatOptions extends FormatOptions {
  readonly colour: boolean;
  /** Without the closing lines. */
  readonly quiet?: boolean;
}

/** Grades stand in a column of their own; sentences begin where it ends. */
const sentences = 13;
const tones: Record<Grade, string> = { harm: '1;31', stop: '31', shortfall: '33', note: '36', unknown: '2' };

const toned = (text: string, tone: string, look: TextFormatOptions): string =>
  look.colour ? `\x1b[${tone}m${text}\x1b[0m` : text;

/** A file’s findings under its name; empty when it has none to list. */
export function sectionText(section: Section, look: TextFormatOptions): string {
  const findings = listed(section, look);
  if (findings.length === 0) return '';
  const cautioned: Cautioned = new Map();
  const blocks = findings
    .filter((finding) => isPlain(finding, look))
    .map((finding) => findingText(finding, section.fixes, look, cautioned));
  const waiting = findings.filter((finding) => !isPlain(finding, look));
  const heading = toned(safe(section.title ?? look.shown(section.doc)), '1', look);
  return `${[heading, ...blocks, ...waitingText(waiting, section.build, look)].join('\n\n')}\n\n`;
}

/** Findings that wait for facts are listed by fact, unless the working of each is asked for. */
const isPlain = (finding: Finding, look: FormatOptions): boolean => look.working || finding.missing.length === 0;

/** The cautions that stand in full in a section so far, each with the check under whose finding it does. */
type Cautioned = Map<string, string>;

function findingText(
  finding: Finding,
  fixes: Fixes | undefined,
  look: TextFormatOptions,
  cautioned: Cautioned,
): string {
  const { subject, underline, grade } = finding;
  const word = finding.accepted ? (finding.known ? 'known' : 'accepted') : grade;
  const head =
    `  ${toned(padded(word, sentences - 2), tones[grade], look)}${safe(lineOf(underline, look))} ` +
    `  ${safe(subject)}`;
  const sentence = withRight(block(look.language.said(finding.said), sentences), finding.id);
  const lines = [head.trimEnd(), ...sentence];
  // What gives way, as a promise lowered, mends nothing.
  for (const { title, givesWay } of fixes?.of.get(finding) ?? [])
    lines.push(
      ...block(look.language.plain(title), sentences, `  ${look.language.word(givesWay ? 'give way' : 'mend')}`),
    );
  if (finding.accepted) lines.push(...block(acceptedWords(finding, look.language), sentences));
  else if (finding.known) lines.push(...block(knownWords(finding.known, look.language), sentences));
  if (finding.caution && !finding.accepted)
    lines.push(...cautionOnce(finding.caution, finding.id, cautioned, look.language));
  const working = look.working ? workingText(workingOf(finding), sentences, look) : [];
  if (working.length > 0) lines.push('', ...working);
  return lines.join('\n');
}

/** A caution in full at its first finding in a section; at the others its signal word and where to read it. */
function cautionOnce(id: string, check: string, cautioned: Cautioned, language: Language): string[] {
  const words = cautionWords(id);
  if (!words) return [];
  const first = cautioned.get(id);
  if (first === undefined) {
    cautioned.set(id, check);
    return cautionText(words, sentences, language);
  }
  return block(
    language.words`The caution under ${first} above holds here too.`,
    sentences + 10,
    padded('', sentences) + language.word(words.word),
  );
}

/** A safety message: signal word, hazard, consequence, avoidance, and to whom it defers. */
export function cautionText(
  { word, sentences: [hazard, ...rest] }: CautionWords,
  from: number,
  language: Language,
): string[] {
  const margin = from + Math.max(10, columns(language.word(word)) + 2);
  return [
    ...block(language.word(hazard), margin, padded('', from) + language.word(word)),
    ...rest.flatMap((line) => block(language.word(line), margin)),
  ];
}

/** Unknown answers by the fact they wait for, the one that decides most first. */
function waitingText(findings: readonly Finding[], build: Build | undefined, look: TextFormatOptions): string[] {
  return byMissing(findings, build).map(({ lack, ids }) => {
    const head =
      `  ${toned(padded('unknown', sentences - 2), tones.unknown, look)}${safe(placeOfMissing(lack, look))}  ` +
      ` ${safe(lack.path)}`;
    const what = look.language.plain(lack.what);
    const waits =
      ids.length === 1
        ? look.language.words`One check waits for ${what}.`
        : look.language.words`${ids.length} checks wait for ${what}.`;
    return [
      head,
      ...withRight(block(waits, sentences), ids.length === 1 ? ids[0]! : ''),
      ...(ids.length > 1 ? block(ids.join(', '), sentences) : []),
    ]
      .map((line) => line.trimEnd())
      .join('\n');
  });
}

interface ByMissing {
  readonly lack: Missing;
  readonly ids: readonly string[];
}

/** Missing facts with the checks that each would help to decide, most first; ties by file and place. */
function byMissing(findings: readonly Finding[], build: Build | undefined): readonly ByMissing[] {
  return waiting(findings, build)
    .map(({ lack, findings: own }) => ({ lack, ids: [...new Set(own.map(({ id }) => id))].sort() }))
    .sort((a, b) => b.ids.length - a.ids.length || (factKey(a.lack) < factKey(b.lack) ? -1 : 1));
}

/** Where a missing fact would be written: a line, or the file. */
export function placeOfMissing(lack: Missing, look: Pick<FormatOptions, 'shown'>): string {
  const span = spanOfMissing(lack);
  return span ? lineOf({ doc: lack.doc, span }, look) : look.shown(lack.doc);
}
