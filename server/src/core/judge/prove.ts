// Proves fixes: each is applied to a copy and judged again before anyone is offered it.
import { isOfAnotherTool } from '../build/another-tool';
import { Build, type Placed } from '../build/build';
import { atLeastAsBad } from '../build/workspace-config';
import { putOn, type AssignFix, type FixIdea, type SwapFix, type TextFix } from '../checks/kit';
import { FencedDoc } from '../guide/fenced';
import type { Guide } from '../guide/guide';
import { Doc } from '../parts/doc';
import { applyEdits, editsOverlap, nearest, type Edit } from '../text';
import { bestPlaces } from './assign';
import { settlesTheSame } from './deal';
import { judgeEdited } from './edited';
import type { Finding, Judgement } from './finding';
import { judgeBuild, judgeFile, judgeGuide, type GoOn } from './judge';
import type { Kind } from '../parts/kinds';
import { servesAs } from './purpose';
import { newIn, trySwaps, type Candidate, type Candidates, type Swapped } from './swaps';
import { givenUp } from './weakening';

export interface ProvenFix {
  readonly title: string;
  readonly doc: Doc;
  readonly edits: readonly Edit[];
  /** Findings it brings; each lighter than the one it clears. */
  readonly brings: readonly Finding[];
  /** Findings it clears, the one it was made for among them. */
  readonly clears: readonly Finding[];
  /** It lowers a promise, writes a part’s stated fact otherwise, or replaces a safety text. */
  readonly givesWay: boolean;
  /** Which of these, in words. */
  readonly gives?: string;
  /** The part that it puts in another’s place. */
  readonly swap?: { readonly placed: Placed; readonly name: string };
}

/** How many swaps are offered for one finding. */
const swapsOffered = 3;

/** The proven fixes of a finding in a build, best first. */
export function provenFixes(
  build: Build,
  before: Judgement,
  finding: Finding,
  candidates: Candidates = () => [],
): ProvenFix[] {
  return bestFirst(distinct([...proofs(build, before, finding, candidates)]));
}

/** The first of the proven fixes; the others are proven only where none is plainly best. */
export function bestFix(
  build: Build,
  before: Judgement,
  finding: Finding,
  candidates: Candidates = () => [],
): ProvenFix | undefined {
  const proven: ProvenFix[] = [];
  for (const fix of proofs(build, before, finding, candidates, mostTried)) {
    if (isPlain(fix)) return fix;
    proven.push(fix);
  }
  return bestFirst(proven)[0];
}

/** So many ideas are tried for one fix: a board of hundreds of slots has an idea for each. */
const mostTried = 8;

/** A fix that brings nothing but open questions, and gives way in nothing, may be taken without a look at others. */
export const isPlain = (fix: ProvenFix): boolean => !fix.givesWay && cost(fix) === 0;

/**
 * Whether a fix may be taken by whoever does not look: it is plain, it settles nothing anew, and nobody’s safety hangs
 * on it.
 */
export function mayBePreferred(before: Doc, finding: Finding, fix: ProvenFix): boolean {
  const { check, grade, caution } = finding;
  if (!isPlain(fix) || fix.doc !== before || isSafety(finding)) return false;
  if (grade === 'harm' || caution !== undefined || check.area === 'handling') return false;
  const after = new Doc(before.name, before.kind, applyEdits(before.text, fix.edits), before.scalars);
  return before.kind !== 'build' || settlesTheSame(before, after, check.area === 'text');
}

/** The words of a caution or a note are their writer’s. */
const isSafety = ({ subject }: Finding): boolean => /\.(?:caution|note)(?:\.|$)/.test(subject);

const cost = ({ brings }: ProvenFix): number => weight(brings.filter(({ grade }) => grade !== 'unknown'));

/** Those that give way last, then by what they bring; of alike ones as the check gives them. */
const bestFirst = (proven: readonly ProvenFix[]): ProvenFix[] =>
  [...proven].sort((a, b) => Number(a.givesWay) - Number(b.givesWay) || cost(a) - cost(b));

function* proofs(
  build: Build,
  before: Judgement,
  finding: Finding,
  candidates: Candidates,
  most = Infinity,
): Iterable<ProvenFix> {
  for (const idea of ideasOf(finding).slice(0, most)) {
    if (idea.type === 'text') yield* some(proveText(build, before, finding, idea));
    else if (idea.type === 'assign') yield* some(proveAssignment(build, before, finding, idea));
    else yield* proveSwaps(build, before, finding, idea, candidates(idea.placed.kind));
  }
}

/** The proven fixes of a finding in a file that stands by itself. */
export function provenFileFixes(doc: Doc, before: Judgement, finding: Finding): ProvenFix[] {
  const proven = ideasOf(finding).flatMap((idea) => {
    if (idea.type !== 'text' || idea.doc !== doc || editsOverlap(idea.edits)) return [];
    const edited = new Doc(doc.name, doc.kind, applyEdits(doc.text, idea.edits), doc.scalars);
    // Of a file that is left alone nothing is found; that mends nothing.
    if (isOfAnotherTool(edited)) return [];
    return some(weigh(before, judgeFile(edited), finding, idea.title, doc, idea.edits));
  });
  return bestFirst(distinct(proven));
}

/** Whether a fix of a fenced block changes nothing outside of it, and puts no fence in, which would close it. */
export const staysWithin = (doc: Doc, fix: ProvenFix): boolean =>
  !(doc instanceof FencedDoc) || (fix.doc === doc && !fix.edits.some(({ text }) => /`{3}|~{3}/.test(text)));

/** The proven fixes of a finding in a guide, beside its fenced blocks. */
export function provenGuideFixes(guide: Guide, before: Judgement, finding: Finding): ProvenFix[] {
  const { doc } = guide;
  const proven = ideasOf(finding).flatMap((idea) => {
    if (idea.type !== 'text' || idea.doc !== doc || editsOverlap(idea.edits)) return [];
    const text = applyEdits(doc.text, idea.edits);
    if (text === doc.text) return [];
    const after = judgeGuide(guide.withText(new Doc(doc.name, doc.kind, text)));
    return some(weigh(before, after, finding, idea.title, doc, idea.edits));
  });
  return bestFirst(distinct(proven));
}

/** What the check offers; what gives way is tried last. */
function ideasOf(finding: Finding): FixIdea[] {
  const ideas = [...(finding.fixes?.() ?? [])].filter((idea): idea is FixIdea => idea !== undefined);
  const last = new Set(ideas.filter((idea) => idea.type === 'text' && givenUp(idea, finding.check) !== undefined));
  return [...ideas.filter((idea) => !last.has(idea)), ...last];
}

/** The kinds of part whose folder a finding’s fixes are looked for in. */
export const kindsSought = (finding: Finding): readonly Kind[] => [
  ...new Set(ideasOf(finding).flatMap((idea) => (idea.type === 'swap' ? [idea.placed.kind] : []))),
];

function proveAssignment(build: Build, before: Judgement, finding: Finding, idea: AssignFix): ProvenFix | undefined {
  const fix = bestPlaces(build, before, idea);
  return fix && proveText(build, before, finding, fix);
}

function proveText(build: Build, before: Judgement, finding: Finding, idea: TextFix): ProvenFix | undefined {
  if (idea.edits.length === 0 || editsOverlap(idea.edits)) return undefined;
  const changed = new Doc(idea.doc.name, idea.doc.kind, applyEdits(idea.doc.text, idea.edits), idea.doc.scalars);
  if (changed.text === idea.doc.text) return undefined;
  const after =
    idea.doc === build.doc ? judgeEdited(build, before, changed) : judgeBuild(withDoc(build, idea.doc, changed));
  return weigh(before, after, finding, idea.title, idea.doc, idea.edits);
}

/** The build as it would be with one of its files changed. */
export function withDoc(build: Build, doc: Doc, changed: Doc): Build {
  if (doc === build.doc) return new Build(changed, build.find, build.house, build.today, build.machine);
  return new Build(
    build.doc,
    (name) => {
      const found = build.find(name);
      return found === doc ? changed : found;
    },
    build.house,
    build.today,
    build.machine,
  );
}

/** A fix counts when its finding is gone, not merely undecided, and nothing as bad or worse has come. */
function weigh(
  before: Judgement,
  after: Judgement,
  finding: Finding,
  title: string,
  doc: Doc,
  edits: readonly Edit[],
): ProvenFix | undefined {
  if (stillThere(after, finding)) return undefined;
  const brings = newIn(after.findings, before.findings);
  if (bringsAsBad(brings, finding)) return undefined;
  const worst = brings.filter((brought) => brought.grade !== 'unknown').map((brought) => brought.id);
  const price = worst.length > 0 ? ` (brings ${[...new Set(worst)].join(', ')})` : '';
  const gives = givenUp({ doc, edits }, finding.check);
  return {
    title: title + price,
    doc,
    edits,
    brings,
    clears: newIn(before.findings, after.findings),
    givesWay: gives !== undefined,
    ...(gives === undefined ? {} : { gives }),
  };
}

const bringsAsBad = (brings: readonly Finding[], finding: Finding): boolean =>
  brings.some((brought) => atLeastAsBad(brought.grade, finding.grade));

const stillFound = (findings: readonly Finding[], finding: Finding): boolean =>
  findings.some((left) => left.id === finding.id && left.subject === finding.subject);

/** Whether a check still says it of the same thing, or now leaves it open, asked or unasked. */
const stillThere = (after: Judgement, finding: Finding): boolean =>
  stillFound(after.findings, finding) ||
  after.answers.some(
    ({ check, taken }) =>
      check === finding.check &&
      taken.some(({ outcome: { subject, truth } }) => subject === finding.subject && truth.is === undefined),
  );

/**
 * Whether the finding’s own check is content with a candidate: most are sorted out by it before everything is judged
 * again.
 */
function contents(build: Build, finding: Finding, placed: Placed, candidate: Candidate): boolean {
  return !stillThere(judgeBuild(build.withPart(placed, candidate.name), { checks: [finding.check] }), finding);
}

function* proveSwaps(
  build: Build,
  before: Judgement,
  finding: Finding,
  idea: SwapFix,
  candidates: readonly Candidate[],
): Iterable<ProvenFix> {
  const current = idea.placed.used?.name;
  const clearing = candidates.filter(
    (candidate) => candidate.name !== current && contents(build, finding, idea.placed, candidate),
  );
  const near = slipOf(idea.placed, clearing);
  const content = clearing.filter(({ name, doc }) => name === near || servesAs(idea.placed, doc));
  const mayBeProven: GoOn = (found) => !bringsAsBad(newIn(found, before.findings), finding);
  const ranked = [...trySwaps(build, before, idea.placed, content, mayBeProven)]
    .filter((swapped) => !stillFound(swapped.after.findings, finding))
    .sort((a, b) => Number(b.candidate.name === near) - Number(a.candidate.name === near) || bySwapWorth(a, b));
  let offered = 0;
  for (const { candidate } of ranked) {
    if (offered === swapsOffered) return;
    const fix = putOn(idea.placed, 'use', candidate.name, `Use ${candidate.name} as ${idea.placed.kind}`);
    const proven = fix && proveText(build, before, finding, fix);
    if (!proven) continue;
    offered++;
    yield { ...proven, swap: { placed: idea.placed, name: candidate.name } };
  }
}

/** The candidate that a name without a file is a slip of: it comes before what suits better. */
const slipOf = ({ used }: Placed, candidates: readonly Candidate[]): string | undefined =>
  used && !used.file
    ? nearest(
        used.name,
        candidates.map(({ name }) => name),
      )
    : undefined;

/** Fewest and lightest new findings first, then most cleared, then by name. */
export function bySwapWorth(a: Swapped, b: Swapped): number {
  return (
    weight(a.brings) - weight(b.brings) ||
    weight(b.clears) - weight(a.clears) ||
    (a.candidate.name < b.candidate.name ? -1 : 1)
  );
}

/** One finding of a grade outweighs any number of the next; counts are capped so that this stays exact. */
function weight(findings: readonly Finding[]): number {
  const worth = { harm: 1e8, stop: 1e6, shortfall: 1e4, note: 1e2, unknown: 1 };
  return findings.reduce((sum, finding) => sum + worth[finding.grade], 0);
}

const some = <T>(value: T | undefined): T[] => (value === undefined ? [] : [value]);

/** Two ideas that make the same change are one. */
function distinct(fixes: readonly ProvenFix[]): ProvenFix[] {
  const seen = new Set<string>();
  return fixes.filter((fix) => {
    const key = JSON.stringify([fix.doc.name, fix.edits]);
    return !seen.has(key) && seen.add(key) !== undefined;
  });
}
