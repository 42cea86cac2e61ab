// Places and changes among a build’s steps, for checks that judge them.
import type { Build } from '../../build/build';
import { notes, statedSteps, stepList, type Step } from '../../figures/steps';
import { sentence, type Sentence } from '../../figures/sentence';
import { given, sure, type Truth } from '../../figures/truth';
import type { Grade } from '../../manifest/house-file';
import type { Fact } from '../../parts/fact';
import { quoted, type Edit } from '../../text';
import { insertEntry, insertItem, moveItem, removeItem, setValue, type Value } from '../../yaml';
import { HANDLING, type StepKind } from '../../trade/steps';
import { findSlip, type HandlingMistake, type SlipFound } from '../../trade/bench-words';
import {
  atKey,
  atPath,
  change,
  outcome,
  takeOut,
  target,
  type Outcome,
  type Reporter,
  type Target,
  type TextFix,
  type Words,
} from '../kit';

/** The place of a step: the words that say what is done. */
export function atStep(build: Build, step: Step): Target {
  return target(step.path, build.doc, step.node?.span ?? step.group.$.span);
}

/** An answer that hangs on which steps there are, and on their order. */
export const stepAnswer = (build: Build, at: Target, truth: Truth, words: Words): Outcome =>
  outcome(at, given(truth, build.file.steps), words);

/** The place of a key of the bench; where it is absent, `bench:`, `steps:` or the build’s name. */
export function atBench(build: Build, fact: Fact<unknown>): Target {
  return fact.node ? atKey(build, fact) : atPath(build, build.file.bench.$.entry ? 'bench' : 'steps', fact.path);
}

/** The place of something that the steps lack: the key `steps:`. */
export function atSteps(build: Build, what: string): Target {
  return atPath(build, 'steps', `steps:${what}`);
}

const fix = (build: Build, title: string, edits: Edit[] | undefined): TextFix | undefined =>
  edits && { type: 'text', title, doc: build.doc, edits };

/** Moves a step so that it stands where another stands now. */
export function moveStep(build: Build, step: Step, to: number, title: string): TextFix | undefined {
  const list = stepList(build);
  return list && fix(build, title, moveItem(build.doc.parsed, list, step.index, to));
}

/** Puts steps in before the step of that number, in this order. */
export function insertSteps(build: Build, index: number, values: readonly Value[], title: string): TextFix | undefined {
  const list = stepList(build);
  const edits = list && values.map((value) => insertItem(build.doc.parsed, list, index, value));
  if (!edits?.length || edits.some((one) => one?.length !== 1)) return undefined;
  return fix(build, title, [{ span: edits[0]![0]!.span, text: edits.map((one) => one![0]!.text).join('') }]);
}

/**
 * A step with power, put in before another: a strap that is on then comes off for it, and the cable comes out after
 * it where hands go in again.
 */
export function aroundPower(build: Build, before: number, kind: StepKind): StepKind[] {
  const steps = statedSteps(build);
  const strapped =
    steps.findLast((step) => step.index < before && (step.kind === 'wear strap' || step.kind === 'take off strap'))
      ?.kind === 'wear strap';
  const handled = steps.some((step) => step.index >= before && step.kind !== undefined && HANDLING.has(step.kind));
  if (kind === 'update firmware' && build.file.bench['firmware-update'].by.value === 'service') return [kind];
  const strap = <K extends StepKind>(worn: boolean, strapStep: K): K[] => (worn ? [strapStep] : []);
  return [
    ...strap(strapped, 'take off strap'),
    kind,
    ...(handled ? (['unplug mains', 'drain residual charge'] as const) : []),
    ...strap(strapped && handled, 'wear strap'),
  ];
}

export function removeStep(build: Build, step: Step, title: string): TextFix | undefined {
  const list = stepList(build);
  return list && fix(build, title, removeItem(build.doc.parsed, list, step.index));
}

/** Adds a key to a step; a bare text becomes a map with `do:`. */
export function addToStep(build: Build, step: Step, key: string, value: Value, title: string): TextFix | undefined {
  const node = build.file.steps.node?.type === 'list' ? build.file.steps.node.items[step.index] : undefined;
  if (node?.type === 'map') return fix(build, title, insertEntry(build.doc.parsed, node, key, value));
  return node && fix(build, title, setValue(build.doc.parsed, node, { do: step.group.do.text, [key]: value }));
}

/** What a finding says of a slip: what the words have done, what to do, and the sentence that may stand instead. */
export interface SlipWords {
  readonly done: string;
  readonly rather: string;
  readonly instead: string;
  /** How words are read that leave a doubt. */
  readonly perhaps?: string;
  readonly grade?: Grade;
}

type Slips = Readonly<Partial<Record<HandlingMistake, SlipWords>>>;

/** One outcome for each note: broken where one of the slips can be read out of it, a note to read again in doubt. */
export function slipsIn(
  build: Build,
  report: Reporter,
  slips: Slips,
  more: (step: Step) => Partial<Outcome> = () => ({}),
): void {
  for (const { step, fact, mayHoldSlip } of notes(build)) {
    const slip = mayHoldSlip ? slipOf(fact.text, step, slips) : undefined;
    report(
      outcome(slipPlace(build, step, fact, slip?.found), given(sure(!slip, fact), step.group.do), {
        broken: () => saidOf(slip!),
        fixes: () => (fact.key === 'do' ? [] : [withoutSlip(fact, slip!)]),
        ...(slip?.words.grade ? { grade: slip.words.grade } : {}),
        ...more(step),
        ...(slip && !slip.found.sure ? { grade: 'note', fixes: () => [] } : {}),
      }),
    );
  }
}

interface Slip {
  readonly words: SlipWords;
  readonly found: SlipFound;
}

function slipOf(text: string, step: Step, slips: Slips): Slip | undefined {
  for (const [slip, words] of Object.entries(slips) as [HandlingMistake, SlipWords][]) {
    const found = findSlip(text, slip, step.kind);
    if (found) return { words, found };
  }
  return undefined;
}

/** The words themselves where the file has them as they are read, else the whole note. */
function slipPlace(build: Build, step: Step, fact: Fact<string>, found: SlipFound | undefined): Target {
  const { start } = fact.node!.span;
  const asWritten = found && build.doc.text.slice(start + found.start, start + found.end) === found.words;
  const span = asWritten ? { start: start + found.start, end: start + found.end } : fact.node!.span;
  return target(`${step.path}.${fact.key}`, build.doc, span);
}

const saidOf = ({ found, words: { done, rather, perhaps } }: Slip): Sentence =>
  found.sure
    ? sentence`The words ${quoted(found.words)} ${done}; ${rather}.`
    : sentence`The words ${quoted(found.words)} can be read as if ${perhaps ?? done}; read this sentence again.`;

const withoutSlip = (fact: Fact<string>, { found, words: { instead } }: Slip): TextFix | undefined =>
  change(fact, sentenceReplaced(fact.text, found.start, found.end, instead), `Write “${instead}”`);

/** A text with the sentence around a place replaced. */
function sentenceReplaced(text: string, start: number, end: number, by: string): string {
  const from = Math.max(
    ...['. ', '! ', '? ', '\n'].map(
      (stop) => text.lastIndexOf(stop, start) + (text.lastIndexOf(stop, start) < 0 ? 0 : stop.length),
    ),
    0,
  );
  const rest = /[.!?](?=\s|$)|\n/.exec(text.slice(end));
  return text
    .slice(0, from)
    .concat(from > 0 && !/\s$/.test(text.slice(0, from)) ? ' ' : '', by, rest ? text.slice(end + rest.index + 1) : '');
}

/** Takes one name out of a step’s `after:`; the last with its key. */
export function takeNameOut(
  build: Build,
  after: Fact<readonly Fact<string>[]>,
  index: number,
  name: string,
): TextFix | undefined {
  const title = `Take ${name} out of its after`;
  if (after.node?.type !== 'list') return undefined;
  if (after.node.items.length === 1) return takeOut(after, title);
  const edits = removeItem(build.doc.parsed, after.node, index);
  return edits && { type: 'text', title, doc: build.doc, edits };
}
