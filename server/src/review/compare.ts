// Compares one file on two sides, judged: its findings by what they are about, and for a build what moved.
import type { Build } from '../core/build/build';
import { cautionWords, type CautionWords } from '../core/checks/page';
import { weighedValue, type Measure } from '../core/figures/measure';
import type { Finding, Judgement } from '../core/judge/finding';
import { waiting } from '../core/judge/waiting';
import { grades, type Grade } from '../core/manifest/house-file';
import type { Doc } from '../core/parts/doc';
import { compareTexts } from '../core/text';
import type { Language } from '../core/words/language';
import { english } from '../core/words/languages';
import {
  changeKinds,
  type ChangeKind,
  type ComparedFinding,
  type FileComparison,
  type FindingChange,
} from './comparison';
import { fingerprints, plainNames } from './fingerprint';
import { matchFindings } from './match';
import { movements } from './movements';
import { recordChanges } from './records';
import { amountsOf, growth } from './growth';
import { stepChanges } from './steps-moved';

/** A judged file of one side. */
export interface JudgedSide {
  readonly doc: Doc;
  readonly judgement: Judgement;
  readonly build?: Build;
  /** A file’s path as people see it. */
  readonly shown: (doc: Doc) => string;
  /** What its findings say is put into this language; English where none is given. */
  readonly language?: Language;
}

/** A finding as plain data, and the numbers by which it can get worse. */
interface Weighed extends ComparedFinding {
  readonly finding: Finding;
  readonly measure?: Measure;
}

function comparedFindings({ judgement, build, shown, language = english() }: JudgedSide): readonly Weighed[] {
  const prints = fingerprints(judgement.findings, build);
  return judgement.findings.map((finding) => weighed(finding, prints.get(finding)!, shown, language));
}

function weighed(finding: Finding, fingerprint: string, shown: JudgedSide['shown'], language: Language): Weighed {
  const { doc, span } = finding.underline;
  const { measure, accepted } = finding;
  const caution = cautionIn(finding, language);
  return {
    finding,
    id: finding.id,
    grade: finding.grade,
    subject: finding.subject,
    text: language.said(finding.said),
    file: shown(doc),
    line: doc.lines.positionAt(span.start).line + 1,
    fingerprint,
    missing: [...new Set(finding.missing.map(({ what }) => language.plain(what)))],
    ...(measure ? { excess: String(weighedValue(measure)), measure } : {}),
    ...(accepted ? { accepted: accepted.because } : {}),
    ...(caution ? { caution } : {}),
    unread: finding.check.unread === true,
  };
}

function cautionIn({ caution }: Finding, language: Language): CautionWords | undefined {
  const words = cautionWords(caution);
  if (!words) return undefined;
  const [hazard, consequence, avoidance, deferral] = words.sentences;
  const told = (text: string): string => language.word(text);
  return { word: told(words.word), sentences: [told(hazard), told(consequence), told(avoidance), told(deferral)] };
}

const plainOf = ({ measure: _, finding: __, ...plain }: Weighed): ComparedFinding => plain;

/** Findings of both sides, those that matter most first. */
export function findingChanges(before: JudgedSide | undefined, after: JudgedSide | undefined): FindingChange[] {
  const { pairs, gone, come } = matchFindings(
    before ? comparedFindings(before) : [],
    after ? comparedFindings(after) : [],
  );
  const all: FindingChange[] = [
    ...come.map((one) => ({ kind: 'new' as const, after: plainOf(one) })),
    ...gone.map((one) => ({ kind: goneAs(one, before, after), before: plainOf(one) })),
    ...pairs.map(([was, now]) => ({
      kind: isSilenced(was, before, after) && kindOf(was, now) === 'better' ? ('silenced' as const) : kindOf(was, now),
      before: plainOf(was),
      after: plainOf(now),
    })),
  ];
  return all.sort(
    (a, b) =>
      changeKinds.indexOf(a.kind) - changeKinds.indexOf(b.kind) ||
      rank(gradeOf(a)) - rank(gradeOf(b)) ||
      compareTexts(keyOf(a), keyOf(b)),
  );
}

/** What is not found any more is cleared only where it was looked for. */
function goneAs(was: Weighed, before: JudgedSide | undefined, after: JudgedSide | undefined): ChangeKind {
  if (isSilenced(was, before, after)) return 'silenced';
  return after && isLessRead(before, after) && !was.unread ? 'undecided' : 'cleared';
}

/** Whether the settings of both sides differ on a check, and those after it make less of it. */
function isSilenced({ id }: Weighed, before: JudgedSide | undefined, after: JudgedSide | undefined): boolean {
  const [old, now] = [settingOf(before, id), settingOf(after, id)];
  if (old === now || now === undefined) return false;
  return now === 'off' || old === undefined || (old !== 'off' && rank(now) > rank(old));
}

const settingOf = (side: JudgedSide | undefined, id: string): Grade | 'off' | undefined =>
  [...(side?.build?.house.regraded ?? [])].find(([of]) => of === id)?.[1];

/** Whether less can be read than before: what is silent then has not been mended. */
const isLessRead = (before: JudgedSide | undefined, after: JudgedSide): boolean =>
  unreadIn(after) > (before ? unreadIn(before) : 0);
const unreadIn = ({ judgement }: JudgedSide): number => judgement.findings.filter(({ check }) => check.unread).length;

/** Behind the place where a text breaks off nothing is known. */
const isBroken = ({ judgement }: JudgedSide): boolean => judgement.findings.some(({ id }) => id === 'yaml-syntax');

/** The findings that stand after a change and did not before, and those that were less bad. */
export interface Brought {
  readonly come: ReadonlySet<Finding>;
  readonly worse: ReadonlySet<Finding>;
}

export function broughtTo(before: JudgedSide | undefined, after: JudgedSide): Brought {
  if (!before) return { come: new Set(after.judgement.findings), worse: new Set() };
  const { pairs, come } = matchFindings(comparedFindings(before), comparedFindings(after));
  const worse = pairs.filter(([was, now]) => kindOf(was, now) === 'worse').map(([, now]) => now);
  return { come: new Set(come.map(({ finding }) => finding)), worse: new Set(worse.map(({ finding }) => finding)) };
}

const rank = (grade: Grade): number => grades.indexOf(grade);
const gradeOf = ({ before, after }: FindingChange): Grade => (after ?? before)!.grade;
const keyOf = ({ before, after }: FindingChange): string => {
  const { file, subject, id } = (after ?? before)!;
  return `${file}\n${subject}\n${id}`;
};

/** What became of a finding that stands on both sides. */
function kindOf(was: Weighed, now: Weighed): ChangeKind {
  if (was.accepted !== undefined && now.accepted === undefined) return 'worse';
  if (rank(now.grade) < rank(was.grade)) return 'worse';
  if (now.grade === 'unknown' && was.grade !== 'unknown') return 'undecided';
  const more = growth(amountsOf(was.measure), amountsOf(now.measure));
  if (rank(now.grade) === rank(was.grade) && more > 0) return 'worse';
  if (was.accepted === undefined && now.accepted !== undefined) return 'accepted';
  return rank(now.grade) > rank(was.grade) || more < 0 ? 'better' : 'unchanged';
}

/** One file on both sides, of which one may be absent; `because`: what it rests on that differs. */
export function compareFile(
  before: JudgedSide | undefined,
  after: JudgedSide | undefined,
  because: readonly string[] = [],
): FileComparison {
  const { doc, build, shown } = (after ?? before)!;
  const title = build?.file.build.value;
  const from = before && after && before.shown(before.doc) !== after.shown(after.doc) && before.shown(before.doc);
  const [worstBefore, worstAfter] = [worst(before), worst(after)];
  const both =
    before?.build && after?.build && !isBroken(before) && !isBroken(after)
      ? ([
          { build: before.build, shown: before.shown },
          { build: after.build, shown: after.shown },
        ] as const)
      : undefined;
  const { lost, found } = both ? lackChanges(before!, after!) : { lost: [], found: [] };
  return {
    kind: doc.kind,
    state: stateOf(before, after, from !== undefined && from !== false),
    file: shown(doc),
    ...(from ? { movedFrom: from } : {}),
    ...(title ? { title } : {}),
    because,
    ...(worstBefore ? { worstBefore } : {}),
    ...(worstAfter ? { worstAfter } : {}),
    findings: findingChanges(before, after),
    moved: both ? movements(...both) : [],
    newlyUnknown: lost,
    newlyKnown: before && after && isLessRead(before, after) ? [] : found,
    steps: both ? stepChanges(both[0].build, both[1].build) : [],
    ...(before && after && doc.kind === 'asbuilt' && !isBroken(before) && !isBroken(after)
      ? { record: recordChanges(before, after) }
      : {}),
  };
}

function stateOf(
  before: JudgedSide | undefined,
  after: JudgedSide | undefined,
  moved: boolean,
): FileComparison['state'] {
  if (!before) return 'added';
  if (!after) return 'removed';
  if (moved) return 'moved';
  return before.doc.text === after.doc.text ? 'touched' : 'changed';
}

const worst = (side: JudgedSide | undefined): Grade | undefined =>
  side?.judgement.findings.find(({ accepted }) => !accepted)?.grade;

/** Facts that answers wait for on one side alone; a renamed part’s are the same. */
function lackChanges(before: JudgedSide, after: JudgedSide): { lost: readonly string[]; found: readonly string[] } {
  const [old, now] = [lacksOf(before), lacksOf(after)];
  const only = (these: ReadonlyMap<string, string>, those: ReadonlyMap<string, string>): string[] => {
    const said = new Set(those.values());
    return [...these].filter(([key, what]) => !those.has(key) && !said.has(what)).map(([, what]) => what);
  };
  return { lost: only(now, old), found: only(old, now) };
}

/** How many facts the answers of a side wait for. */
export const lackCount = (side: JudgedSide): number => lacksOf(side).size;

function lacksOf({ judgement, build }: JudgedSide): ReadonlyMap<string, string> {
  const plain = build ? plainNames(build) : (what: string): string => what;
  return new Map(waiting(judgement.findings, build).map(({ lack: { what } }) => [plain(what), what]));
}
