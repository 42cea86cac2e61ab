// Finds places for parts: the assignment that breaks least, grade by grade, then reads fastest. The checks are its
// judge.
import type { Build } from '../build/build';
import { putOn, type AssignFix, type TextFix } from '../checks/kit';
import { partsToPlace, type Seeker } from '../figures/assigning';
import { takenPlaces } from '../figures/places';
import { driveRate } from '../figures/storage';
import type { Edit } from '../text';
import { answersApart, compareRows, countsByGrade, type Judgement } from './finding';
import { checksBeside, judgeWhile, type GoOn } from './judge';

/** How many assignments are judged at most; past that the best so far stands. */
export const assignmentsJudged = 2000;

interface Choice {
  readonly seeker: Seeker;
  readonly name: string;
}
interface Best {
  readonly choices: readonly Choice[];
  readonly cost: readonly number[];
}

/** The text that gives every part of the roles its best place; undefined where what is written is as good. */
export function bestPlaces(build: Build, before: Judgement, idea: AssignFix): TextFix | undefined {
  const wanting = partsToPlace(build, idea.roles);
  if (wanting.length === 0 || wanting.some((seeker) => seeker.choices.length === 0 || seeker.missingFacts.length > 0))
    return undefined;
  const best = search(build, before, wanting);
  if (!best) return undefined;
  const changed = best.choices.filter(({ seeker, name }) => seeker.stated.value !== name);
  const edits: Edit[] = [];
  for (const { seeker, name } of changed) {
    const fix = putOn(seeker.placed, seeker.key, name, '');
    if (!fix) return undefined;
    edits.push(...fix.edits);
  }
  const where = changed.map(({ seeker, name }) => `${seeker.placed.label} in ${name}`).join(', ');
  return changed.length === 0
    ? undefined
    : { type: 'text', title: `Place all ${idea.what}: ${where}`, doc: build.doc, edits };
}

/**
 * Tries places depth first, the written place of a part first; no two parts share one, and alike places are tried
 * once.
 */
function search(build: Build, before: Judgement, wanting: readonly Seeker[]): Best | undefined {
  const others = takenByOthers(build, wanting);
  const known = answersApart(
    before,
    wanting.map((seeker) => seeker.placed.role),
  );
  const checks = checksBeside(known);
  let best: Best | undefined;
  let judged = 0;
  const visit = (chosen: readonly Choice[]): void => {
    const seeker = wanting[chosen.length];
    if (judged >= assignmentsJudged) return;
    if (!seeker) {
      judged++;
      const moved = build.withPlaces(chosen.map(({ seeker: { placed, key }, name }) => ({ placed, key, value: name })));
      const mayBeBest: GoOn = (found) => !best || compareRows(countsByGrade(found), best.cost) <= 0;
      const { judgement } = judgeWhile(moved, mayBeBest, { known, checks });
      const cost = judgement && costOf(moved, judgement, chosen);
      if (cost && (!best || compareRows(cost, best.cost) < 0)) best = { choices: chosen, cost };
      return;
    }
    const taken = new Set([...others, ...chosen.map((one) => one.name)]);
    for (const name of apart(
      build,
      inOrder(seeker).filter((one) => !taken.has(one)),
    ))
      visit([...chosen, { seeker, name }]);
  };
  visit([]);
  return best;
}

function inOrder(seeker: Seeker): readonly string[] {
  const stated = seeker.stated.value;
  return stated !== undefined && seeker.choices.includes(stated)
    ? [stated, ...seeker.choices.filter((name) => name !== stated)]
    : seeker.choices;
}

/** Of ports and headers that are alike in all the board says, shared with no slot, the first stands for the rest. */
function apart(build: Build, names: readonly string[]): readonly string[] {
  const { board } = build.parts;
  const shared = [...(board?.part.slots.value?.values() ?? [])].flatMap((slot) => [slot['takes-from'], slot.halves]);
  const named = new Set(shared.flatMap(({ value }) => value?.map((one) => one.value) ?? []));
  const seen = new Set<string>();
  return names.filter((name) => {
    const entry = board?.part.ports.value?.get(name) ?? board?.part.headers.value?.get(name);
    if (!entry?.$.entry || named.has(name)) return true;
    const alike = entry.$.doc.text.slice(entry.$.entry.value.span.start, entry.$.entry.value.span.end);
    return !seen.has(alike) && seen.add(alike) !== undefined;
  });
}

function takenByOthers(build: Build, wanting: readonly Seeker[]): ReadonlySet<string> {
  const own = new Set(wanting.map((seeker) => seeker.placed));
  return new Set(
    takenPlaces(build)
      .filter(({ placed }) => !own.has(placed))
      .map(({ name }) => name),
  );
}

/** Findings by grade, worst first; then the rates that the drives reach, as a cost. */
function costOf(moved: Build, { findings }: Judgement, chosen: readonly Choice[]): readonly number[] {
  const rates = moved.parts.drives.map((drive) => driveRate(moved, drive, 'read').hi).filter(Number.isFinite);
  const kept = chosen.filter(({ seeker, name }) => seeker.stated.value === name).length;
  return [...countsByGrade(findings), -rates.reduce((a, b) => a + b, 0), -kept];
}
