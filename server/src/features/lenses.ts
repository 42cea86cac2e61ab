// Lenses: one line above a build with its worst grade, power and price, and one above a part file with the builds that
// use it and what an unsaved change of it does to them.
import { statedCost } from '../core/figures/cost';
import { isBounded } from '../core/figures/figure';
import { wallPower } from '../core/figures/mains';
import { show } from '../core/figures/sentence';
import type { Finding, Judgement } from '../core/judge/finding';
import type { Doc } from '../core/parts/doc';
import { dataOfFindings, keyOfData, type DiagnosticData } from './diagnostic-data';
import type { Range, View } from './shapes';

/** Where the lens of a file stands: above what says what it is. */
export function lensRange({ kind, parsed: { root }, lines }: Doc): Range | undefined {
  const key = kind === 'build' ? 'build' : kind === 'part' ? 'kind' : undefined;
  const entry = root?.type === 'map' && key ? (root.get(key) ?? root.entries[0]) : undefined;
  return entry && lines.rangeOf(entry.keySpan);
}

const digits = 4;
const powerDigits = 3;

/** What a build comes to: the worst that was found and is not held back, power from the wall, the price. */
export function buildTitle({ build, judgement }: View, waiting: readonly DiagnosticData[] = []): string {
  const watts = build && wallPower(build);
  const cost = build && statedCost(build);
  return [
    worstWords(judgement, new Set(waiting.map(keyOfData))),
    ...(watts ? [`${isBounded(watts) ? show(watts, 'W', powerDigits) : '? W'} from the wall`] : []),
    ...(cost && isBounded(cost) ? [show(cost, cost.unit, digits)] : []),
  ].join(' · ');
}

/** Grades are few words; what was accepted is not counted. */
function worstWords({ findings }: Judgement, waiting: ReadonlySet<string>): string {
  const data = dataOfFindings(findings);
  const open = findings.filter((one) => !one.accepted && !waiting.has(keyOfData(data.get(one)!)));
  const [worst] = open;
  if (!worst) return 'nothing found';
  const { length } = open.filter(({ grade }) => grade === worst.grade);
  if (worst.grade === 'unknown') return `nothing broken, ${length} unknown`;
  return `worst: ${worst.grade} (${length})`;
}

/** What a change of a part does to the builds that use it. */
export interface Change {
  readonly broken: readonly Finding[];
  readonly healed: readonly Finding[];
  readonly opened: readonly Finding[];
}

/** What is found after a change and was not before, and the other way round; an answer may also be unknown now. */
export function changeBetween(before: Judgement, after: Judgement): Change {
  const isKnown = ({ grade }: Finding): boolean => grade !== 'unknown';
  const broken = without(after.findings, before.findings);
  const stillOpen = (one: Finding): boolean =>
    after.findings.some(({ id, subject }) => id === one.id && subject === one.subject);
  return {
    broken: broken.filter(isKnown),
    healed: without(before.findings, after.findings).filter((one) => isKnown(one) && !stillOpen(one)),
    opened: broken.filter((one) => !isKnown(one)),
  };
}

const keyOf = ({ id, subject, grade }: Finding): string => [id, subject, grade].join('\n');

function without(these: readonly Finding[], those: readonly Finding[]): Finding[] {
  const counts = new Map<string, number>();
  for (const one of those) counts.set(keyOf(one), (counts.get(keyOf(one)) ?? 0) + 1);
  return these.filter((one) => {
    const left = counts.get(keyOf(one)) ?? 0;
    counts.set(keyOf(one), left - 1);
    return left <= 0;
  });
}

/** Builds that use a part, and, where its text is not saved, what the change does to those that were tried. */
export interface Usage {
  readonly builds: number;
  readonly changes?: readonly Change[];
}

export function partTitle({ builds, changes }: Usage): string {
  const used = builds === 0 ? 'used by no build' : `used by ${counted(builds, 'build')}`;
  if (!changes || builds === 0) return used;
  const said = [
    summary('breaks', changes, ({ broken }) => broken),
    summary('heals', changes, ({ healed }) => healed),
    summary('leaves open', changes, ({ opened }) => opened),
  ].flatMap((words) => words ?? []);
  const tried = changes.length < builds ? ` (${changes.length} of them tried)` : '';
  return `${used} · unsaved: ${said.length === 0 ? 'changes nothing in them' : said.join(', ')}${tried}`;
}

/** One check is named, several are counted. */
function summary(
  word: string,
  changes: readonly Change[],
  of: (change: Change) => readonly Finding[],
): string | undefined {
  const found = changes.flatMap(of);
  const [first] = found;
  if (!first) return undefined;
  const what = found.every(({ id }) => id === first.id) ? first.id : counted(found.length, 'finding');
  return `${word} ${what} in ${counted(changes.filter((change) => of(change).length > 0).length, 'build')}`;
}

const counted = (n: number, what: string): string => `${n} ${what}${n === 1 ? '' : 's'}`;
