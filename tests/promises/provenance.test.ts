// Whatever decides an answer is in its working: change any value of a build or of its parts, and each answer that
// changes shows where that value stands.
import { describe, expect, it } from 'vitest';
import { Build } from '../../server/src/core/build/build';
import { kindOfPart } from '../../server/src/core/build/placed';
import { WorkspaceConfig } from '../../server/src/core/build/workspace-config';
import type { Outcome } from '../../server/src/core/checks/kit';
import type { Answer, Finding, Judgement } from '../../server/src/core/judge/finding';
import { relatedTo } from '../../server/src/core/judge/finding';
import { judgeBuild } from '../../server/src/core/judge/judge';
import { spanOfMissing } from '../../server/src/core/judge/waiting';
import { stepsOf, workingOf, type Step } from '../../server/src/core/judge/working-steps';
import { Doc, type SourceLocation } from '../../server/src/core/parts/doc';
import type { Span } from '../../server/src/core/text';
import { today } from '../support/bench';
import { findIn, readSamples } from '../support/samples';
import { judgedWith } from './support/changed-file';
import { holds, othersFor, quoteFor, scalarsOf, siblingNames, type ScalarAt } from './support/scalars';

const { docs, house, builds } = readSamples();
const settings = docs.get('fettle.yaml')!;

interface Told {
  readonly check: string;
  readonly outcome: Outcome;
  readonly finding: Finding | undefined;
  readonly text: string;
}

/** Every answer of the checks of builds, by check and subject. */
function answersOf(answers: readonly Answer[]): Map<string, Told> {
  const all = new Map<string, Told>();
  for (const { check, taken } of answers) {
    if (check.on !== 'build') continue;
    for (const { outcome, finding } of taken) {
      const { is } = outcome.truth;
      const text = is === true ? 'holds' : `${finding?.grade} ${is} ${finding?.said.text}`;
      all.set(`${check.id} at ${outcome.subject}`, { check: check.id, outcome, finding, text });
    }
  }
  return all;
}

const flat = (steps: readonly Step[]): SourceLocation[] =>
  steps.flatMap(({ from, inputs }) => [...(from ? [from] : []), ...flat(inputs)]);

/** Every place that an answer shows: its own, those of its working and its related lines, and of what it lacks. */
function shownBy({ outcome, finding }: Told): SourceLocation[] {
  const { truth, underline } = outcome;
  const lacks = truth.missing.flatMap((lack) => {
    const span = spanOfMissing(lack);
    return span ? [{ doc: lack.doc, span }] : [];
  });
  const own = finding ? [...flat(workingOf(finding)), ...relatedTo(finding)] : flat(stepsOf(truth.uses));
  return [underline, ...own, ...lacks];
}

const partDoc = (name: string): Doc | undefined => docs.get(`parts/${name}.part.yaml`);

/** Other parts of the same kind. */
function otherParts({ node }: ScalarAt): readonly string[] {
  const used = partDoc(node.text);
  const kind = used && kindOfPart(used);
  const names = [...docs.values()].filter((doc) => doc !== used && doc.kind === 'part' && kindOfPart(doc) === kind);
  return names.slice(0, 2).map(({ name }) => name.replace(/^parts\/|\.part\.yaml$/g, ''));
}

/** A part shows as the file that its facts come from. */
const showsPart = (told: Told | undefined, name: string): boolean =>
  told !== undefined && shownBy(told).some(({ doc }) => doc === partDoc(name));

const shows = (told: Told | undefined, doc: Doc, at: Span): boolean =>
  told !== undefined && shownBy(told).some((one) => one.doc.name === doc.name && holds(one.span, at));

/** What a value is tried as; a name of its own as one that nothing else has. */
function triedAs(scalar: ScalarAt, siblings: (word: string) => readonly string[]): readonly string[] {
  const key = scalar.path.at(-1);
  if (key === 'use') return otherParts(scalar);
  return key === 'name' && scalar.path.length > 1 ? ['elsewhere'] : othersFor(scalar, siblings);
}

describe('a value that is written otherwise', () => {
  for (const build of builds) {
    it(`stands in the working of every answer of ${build.doc.name} that it changes`, () => {
      const files = [
        build.doc,
        settings,
        ...[...build.dependsOn].flatMap((name) => docs.get(`parts/${name}.part.yaml`) ?? []),
      ];
      const siblings = (word: string): string[] => siblingNames(files, word);
      const judged = judgeBuild(build, { throwOn: true });
      const before = answersOf(judged.answers);
      const wrong: string[] = [];
      let turn = 0;
      for (const scalar of files.flatMap((doc) => [...scalarsOf(doc)])) {
        const others = triedAs(scalar, siblings);
        // Each is tried in one way, the next in the other.
        if (others.length > 0) wrong.push(...unshown(build, judged, before, scalar, others[turn++ % others.length]!));
      }
      expect(wrong).toEqual([]);
    }, 240_000);
  }
});

/** Answers that a value changes without standing among what they show, before or after. */
function unshown(
  build: Build,
  judged: Judgement,
  before: ReadonlyMap<string, Told>,
  scalar: ScalarAt,
  other: string,
): string[] {
  const { doc, node, path } = scalar;
  const { start, end } = node.span;
  const written = quoteFor(doc.text.slice(start, end), other);
  const changed = new Doc(doc.name, doc.kind, doc.text.slice(0, start) + written + doc.text.slice(end));
  const file = doc === build.doc ? changed : build.doc;
  const rules = doc === settings ? new WorkspaceConfig(changed) : house;
  const after = answersOf(
    (
      judgedWith(build, judged, doc, changed) ??
      judgeBuild(new Build(file, findIn(docs, changed), rules, today), { throwOn: true })
    ).answers,
  );
  const key = path.at(-1);
  // Another name of a part reads otherwise in every sentence and decides nothing by that.
  const plain = (text: string): string =>
    key === 'use' || key === 'name' ? text.replaceAll(node.text, '…').replaceAll(other, '…') : text;
  const was = byPlain(before, plain);
  const is = byPlain(after, plain);
  const now = { start, end: start + written.length };
  const shown = (one: Told | undefined, of: Doc, span: Span, part: string): boolean =>
    shows(one, of, span) || (key === 'use' && showsPart(one, part));
  const isShown = (at: string): boolean =>
    shown(was.get(at), doc, node.span, node.text) || shown(is.get(at), changed, now, other);
  const told = (one: Told | undefined): string => (one ? plain(one.text) : 'holds');
  // Where the subject of an answer moves, the answer where it stands now shows why, or says just the same.
  const came = [...is].filter(([at]) => !was.has(at));
  const went = [...was].filter(([at]) => !is.has(at));
  const moved = new Set(came.filter(([at]) => isShown(at)).map(([, { check }]) => check));
  const isSaid = (one: Told, among: readonly (readonly [string, Told])[]): boolean =>
    among.some(([, other]) => other.check === one.check && told(other) === told(one));
  const passed = new Set([
    ...went.filter(([, one]) => moved.has(one.check) || isSaid(one, came)).map(([at]) => at),
    ...came.filter(([, one]) => isSaid(one, went)).map(([at]) => at),
  ]);
  return [...new Set([...was.keys(), ...is.keys()])]
    .filter((at) => told(was.get(at)) !== told(is.get(at)) && !isShown(at) && !passed.has(at))
    .map(
      (at) =>
        `${doc.name} ${path.join('.')}: ${node.text} -> ${other}: ${at}: ${was.get(at)?.text} -> ${is.get(at)?.text}`,
    );
}

const byPlain = (told: ReadonlyMap<string, Told>, plain: (text: string) => string): ReadonlyMap<string, Told> =>
  new Map([...told].map(([at, one]) => [plain(at), one]));
