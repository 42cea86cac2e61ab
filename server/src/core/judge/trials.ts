// Tries what could stand in one place of a build: a part, or the name of a slot, port or header. Each is held against
// the build with that place left empty.
import { partsAs, type Placed } from '../build/placed';
import type { Build } from '../build/build';
import type { Check } from '../checks/check';
import type { Figure } from '../figures/figure';
import { amountPast, type Measure } from '../figures/measure';
import { answersApart, inOrder, likenessOf, type Answer, type Finding, type Judgement } from './finding';
import { checksBeside, judgeWhile } from './judge';

/** One choice where it would stand, with what the whole build would then be. Many are tried: none is kept whole. */
export interface Trial {
  readonly name: string;
  readonly placed: Placed;
  readonly build: Build;
  /** How many checks were asked, as a share of all that would be. */
  readonly asked: number;
  /** What would hurt, or keep the machine from going together: the first that was found, after which none is asked. */
  readonly against?: Finding;
  /** Lighter findings that it would bring, and whatever would stay open; worst first. */
  readonly brings: readonly Finding[];
  /** Of what holds within a limit, what comes nearest to it. */
  readonly nearest?: Measure;
}

/** A place in a build, left empty. */
interface Emptied {
  readonly known: readonly Answer[];
  readonly before: ReadonlySet<string>;
  readonly role: Placed['role'];
  readonly index: number;
}

/** The parts of the folder that a place could hold, each as it would be. */
export function* tryParts(build: Build, before: Judgement, placed: Placed, names: Iterable<string>): Iterable<Trial> {
  const empty = emptied(before, build.withPart(placed, undefined), placed);
  yield* tryAll(empty, names, (name) => build.withPart(placed, name));
}

/** The names that one of a part’s own keys could have: a slot, a port, a header, another part file. */
export function* tryPlaces(
  build: Build,
  before: Judgement,
  placed: Placed,
  key: string,
  names: Iterable<string>,
): Iterable<Trial> {
  const empty = emptied(before, build.withPlaces([{ placed, key, value: undefined }]), placed);
  yield* tryAll(empty, names, (value) => build.withPlaces([{ placed, key, value }]));
}

function emptied(before: Judgement, build: Build, { role, index }: Placed): Emptied {
  const known = answersApart(before, [role]);
  const { judgement } = judgeWhile(build, () => true, { known, checks: checksBeside(known) });
  return { known, before: new Set(judgement!.findings.map(likenessOf)), role, index };
}

function* tryAll(empty: Emptied, names: Iterable<string>, put: (name: string) => Build): Iterable<Trial> {
  let checks: readonly Check[] = checksBeside(empty.known);
  for (const name of names) {
    const build = put(name);
    const placed = partsAs(empty.role, build.parts).find(({ index }) => index === empty.index);
    if (!placed) continue;
    const trial = tried(empty, { name, placed, build }, checks);
    yield trial;
    // What spoke against one is likely to speak against the next.
    const { against } = trial;
    if (against) checks = [against.check, ...checks.filter((check) => check !== against.check)];
  }
}

function tried(empty: Emptied, one: Pick<Trial, 'name' | 'placed' | 'build'>, checks: readonly Check[]): Trial {
  let seen = 0;
  let against: Finding | undefined;
  const goOn = (found: readonly Finding[]): boolean => {
    for (; seen < found.length && !against; seen++)
      if (speaksAgainst(found[seen]!) && !empty.before.has(likenessOf(found[seen]!))) against = found[seen];
    return !against;
  };
  const { judgement, last } = judgeWhile(one.build, goOn, { known: empty.known, checks });
  const of = { ...one, asked: last ? (checks.indexOf(last) + 1) / checks.length : 1 };
  if (!judgement) return { ...of, against, brings: [] };
  const { findings, answers } = judgement;
  const brings = findings.filter(
    (finding) => !finding.accepted && (finding.grade === 'unknown' || !empty.before.has(likenessOf(finding))),
  );
  return { ...of, brings: inOrder(brings), nearest: nearestLimit(answers, new Set(empty.known), of.placed) };
}

const speaksAgainst = ({ grade, accepted }: Finding): boolean => !accepted && (grade === 'harm' || grade === 'stop');

/** Room and loads: what is left of a promise in money or speed misleads more than it helps. */
const leftOver: ReadonlySet<string> = new Set(['length', 'power']);

function nearestLimit(answers: readonly Answer[], known: ReadonlySet<Answer>, of: Placed): Measure | undefined {
  let nearest: Measure | undefined;
  let least = Infinity;
  for (const answer of answers) {
    if (known.has(answer) || answer.check.grade === 'note') continue;
    for (const { outcome } of answer.taken) {
      const { is, measure } = outcome.truth;
      const share = is && measure ? shareLeft(measure) : Infinity;
      if (share < least && measure && [measure.figure, measure.limit].some((one) => restsOn(one, of)))
        [nearest, least] = [measure, share];
    }
  }
  return nearest;
}

/** Whether a figure was worked out from what the part’s own file states. */
const restsOn = ({ from, inputs }: Figure, of: Placed): boolean =>
  from ? from.doc === of.used?.file : inputs.some((input) => input.type === 'figure' && restsOn(input, of));

/** How much of a limit is left, as a share of it; infinite where that cannot be said, or nothing is. */
function shareLeft(measure: Measure): number {
  const { figure, limit } = measure;
  if (!leftOver.has(figure.dimension) || figure.dimension !== limit.dimension) return Infinity;
  const left = -amountPast(measure);
  const whole = Math.max(Math.abs(limit.lo), Math.abs(limit.hi));
  return Number.isFinite(left) && left > 0 && Number.isFinite(whole) ? left / whole : Infinity;
}
