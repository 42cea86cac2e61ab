// Fixing all that is certain: texts with one reading only, in passes, proven together, as one set of edits.
import { Build } from '../core/build/build';
import { atLeastAsBad } from '../core/build/workspace-config';
import type { TextFix } from '../core/checks/kit';
import type { Finding, Judgement } from '../core/judge/finding';
import { judgeBuild, judgeFile } from '../core/judge/judge';
import { newIn } from '../core/judge/swaps';
import { Doc } from '../core/parts/doc';
import { editsOverlap, type Edit } from '../core/text';
import { Rewrite } from './rewrite';
import type { View } from './shapes';

const mostPasses = 10;
/**
 * Judgings that one call may cost where fixes must be tried one by one: fewer of a long text, so that none takes
 * seconds.
 */
const trialsFor = (text: string): number => Math.min(120, Math.max(10, Math.floor(2_000_000 / text.length)));

interface State {
  readonly doc: Doc;
  readonly judgement: Judgement;
  readonly build?: Build;
}

/** A fix with what it is known by, wherever earlier fixes have moved it. */
interface Certain {
  readonly fix: TextFix;
  readonly key: string;
}

/** Whether a certain fix of a finding is made. */
export type Takes = (doc: Doc, finding: Finding, fix: TextFix) => boolean;

/**
 * Edits for the text as it stands; none where nothing certain is left to mend. They never overlap, and their order
 * does not matter.
 */
export function fixAllEdits(view: View, takes: Takes = () => true): readonly Edit[] {
  return new FixAll(view, takes).run();
}

class FixAll {
  private readonly rewrite: Rewrite;
  private readonly refused = new Set<string>();
  private trials: number;

  constructor(
    private readonly view: View,
    private readonly takes: Takes,
  ) {
    this.rewrite = new Rewrite(view.doc.text);
    this.trials = trialsFor(view.doc.text);
  }

  run(): readonly Edit[] {
    let state: State = this.view;
    for (let pass = 0; pass < mostPasses; pass++) {
      const fixes = apart(certainFixes(state, this.takes).filter(({ key }) => !this.refused.has(key)));
      const next = fixes.length === 0 ? undefined : (this.together(state, fixes) ?? this.oneByOne(state, fixes));
      if (!next) break;
      state = next;
    }
    return this.rewrite.edits();
  }

  private together(state: State, fixes: readonly Certain[]): State | undefined {
    const next = this.tried(state, fixes);
    if (next) this.rewrite.apply(fixes.flatMap(({ fix }) => fix.edits));
    return next;
  }

  /**
   * One of several does harm: each is kept only where it brings nothing worse. From the end, so that earlier offsets
   * stay true.
   */
  private oneByOne(start: State, fixes: readonly Certain[]): State | undefined {
    let state: State | undefined;
    for (const certain of [...fixes].reverse()) {
      const next = this.tried(state ?? start, [certain]);
      if (next) this.rewrite.apply(certain.fix.edits);
      else this.refused.add(certain.key);
      state = next ?? state;
    }
    return state;
  }

  /** The state with the fixes made; undefined where a finding of theirs stays, or one as bad comes. */
  private tried(state: State, fixes: readonly Certain[]): State | undefined {
    if (this.trials-- <= 0) return undefined;
    const text = new Rewrite(state.doc.text);
    text.apply(fixes.flatMap(({ fix }) => fix.edits));
    const next = judged(this.view, text.text());
    const gone = newIn(state.judgement.findings, next.judgement.findings).filter(({ check }) => check.on === 'file');
    const lightest = gone.at(-1)?.grade ?? 'unknown';
    const came = newIn(next.judgement.findings, state.judgement.findings);
    const isWorse = came.some(({ grade }) => grade !== 'unknown' && atLeastAsBad(grade, lightest));
    return gone.length < fixes.length || isWorse ? undefined : next;
  }
}

function judged(view: View, text: string): State {
  const doc = new Doc(view.doc.name, view.doc.kind, text);
  if (!view.build) return { doc, judgement: judgeFile(doc) };
  const build = new Build(doc, view.build.find, view.build.house, view.build.today, view.build.machine);
  return { doc, build, judgement: judgeBuild(build) };
}

/** Fixes of the text itself where there is exactly one reading, in order of place. */
function certainFixes({ doc, judgement }: State, takes: Takes): Certain[] {
  const fixes: Certain[] = [];
  for (const finding of judgement.findings) {
    const fix = onlyFix(doc, finding);
    if (fix && takes(doc, finding, fix)) fixes.push({ fix, key: `${finding.id}\n${finding.subject}\n${fix.title}` });
  }
  return fixes.sort((a, b) => startOf(a) - startOf(b));
}

/** The fix of a finding in a file’s own text, where it has exactly one reading. */
export function onlyFix(doc: Doc, { check, accepted, fixes }: Finding): TextFix | undefined {
  if (check.on !== 'file' || accepted) return undefined;
  const ideas = [...(fixes?.() ?? [])];
  const [only] = ideas;
  return ideas.length === 1 && only?.type === 'text' && only.doc === doc && only.edits.length > 0 ? only : undefined;
}

/** Those that lie apart from one another; of two that do not, the first. */
function apart(fixes: readonly Certain[]): Certain[] {
  let done = -1;
  return fixes.filter((certain) => {
    if (startOf(certain) <= done || editsOverlap(certain.fix.edits)) return false;
    done = Math.max(...certain.fix.edits.map(({ span }) => span.end));
    return true;
  });
}

const startOf = ({ fix }: Certain): number => Math.min(...fix.edits.map(({ span }) => span.start));
