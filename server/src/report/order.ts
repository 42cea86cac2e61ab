// The order of work as it is worked out from a build's parts: steps, what each comes after and why, cautions before
// them.
import type { Build, Placed } from '../core/build/build';
import { cautionWords } from '../core/checks/page';
import { workOrder, type WorkStep } from '../core/figures/work-order';
import type { Fact } from '../core/parts/fact';
import type { StepKind } from '../core/trade/steps';
import type { Language } from '../core/words/language';
import { block, padded, safe } from './layout';
import { cautionText } from './text';

/** Steps stand in a column of their own, behind their number. */
const steps = 7;

/** The order as text for a terminal; a caution stands before the step that it belongs to, with a blank line around. */
export function orderText(build: Build, title: string, language: Language): string {
  const order = workOrder(build);
  const said = new Map<string, number>();
  const blocks = order.map((step, i) => [
    ...cautionsText(step, i + 1, said, language),
    ...stepText(build, step, i + 1, language),
  ]);
  const lines = blocks.flatMap((block, i) => (order[i]!.cautions.length > 0 ? ['', ...block] : block));
  const head =
    order.length === 1
      ? language.words`${safe(title)}: 1 step, worked out from its parts. The makers’ handbooks come before this list.`
      : language.words`${safe(title)}: ${order.length} steps, worked out from its parts.
          The makers’ handbooks come before this list.`;
  return `${[...block(head, 0), ...(lines[0] === '' ? [] : ['']), ...lines].join('\n')}\n`;
}

/** What has been read in full is not printed in full again: it is named by the step it stood before. */
function cautionsText({ cautions }: WorkStep, number: number, said: Map<string, number>, language: Language): string[] {
  return cautions.flatMap((id) => {
    const words = cautionWords(id);
    if (!words) return [];
    const first = said.get(id);
    said.set(id, first ?? number);
    return first === undefined
      ? cautionText(words, steps, language)
      : block(
          language.words`${language.word(words.sentences[0])} See the caution before step ${first}.`,
          steps + 10,
          padded('', steps) + language.word(words.word),
        );
  });
}

function stepText(build: Build, step: WorkStep, number: number, language: Language): string[] {
  const head = block(stepName(build, step, language), steps, padded(`  ${number}.`, steps));
  return [...head, ...reasonsOf(step).flatMap((reason) => block(reasonText(reason, language), steps + 2))];
}

function reasonText({ after, because }: SharedReason, language: Language): string {
  const steps = language.listed(after.map((step) => language.word(step)));
  return language.words`after ${steps}: ${language.plain(because)}`;
}

/** A step in words, with the parts it is done to and where they go. */
function stepName(build: Build, step: WorkStep, language: Language): string {
  const kind = language.word(step.step);
  const words = kind[0]?.toUpperCase() + kind.slice(1);
  const parts = partsOf(build, step).flatMap((part) => partName(part, language));
  const named = parts.length === 0 ? words : `${words}: ${language.listed([...new Set(parts)])}`;
  return step.note ? `${words} (${language.word(step.note)})` : named;
}

/** What a step is done to: the part that it names, or all that the build has of its kind. */
export function partsOf(
  build: Build,
  { step, part, note }: Pick<WorkStep, 'step' | 'part' | 'note'>,
): readonly Placed[] {
  if (part) return [part];
  if (note) return [];
  const { board, processor, cooler, paste, memory, supply, fans, radiators, case: box } = build.parts;
  const of: Partial<Record<StepKind, readonly (Placed | undefined)[]>> = {
    'open case': [box],
    'fit processor': [processor],
    'fit memory': memory,
    'apply paste': [paste],
    'fit cooler': [cooler],
    'fit supply': [supply],
    'fit fans': fans,
    'fit board': [board],
    'fit radiator': radiators.length > 0 ? radiators : [cooler],
  };
  return (of[step] ?? []).flatMap((one) => one ?? []);
}

/** A part by its name and its place, `lumen/rapid-2t in M2_1`; none where it has neither. */
function partName({ label, kind, at }: Placed, language: Language): string[] {
  const keys = at as unknown as Record<string, Fact<string | readonly Fact<string>[]> | undefined>;
  const fact = placeKeys.map((key) => keys[key]).find((one) => one?.value !== undefined);
  const place = Array.isArray(fact?.value)
    ? language.listed(fact.value.map((one: Fact<string>) => one.text))
    : fact?.text;
  const name = label === kind ? '' : label;
  if (place === undefined) return name === '' ? [] : [name];
  const where = fact?.key === 'mount' ? language.words`${name} at ${place}` : language.words`${name} in ${place}`;
  return [where.trim()];
}

const placeKeys = ['slot', 'slots', 'bay', 'mount'] as const;

/** What a step comes after: a reason once, with all the steps that share it. */
export function reasonsOf({ reasons }: Pick<WorkStep, 'reasons'>): readonly SharedReason[] {
  const afters = new Map<string, StepKind[]>();
  for (const { after, because } of reasons) {
    const own = afters.get(because) ?? [];
    if (!own.includes(after)) own.push(after);
    afters.set(because, own);
  }
  return [...afters].map(([because, own]) => ({ after: own, because }));
}

export interface SharedReason {
  readonly after: readonly StepKind[];
  readonly because: string;
}

/** The order in JSON: each step with its parts, what it comes after and why, and the cautions before it. */
export function orderReport(build: Build, title: string): unknown {
  return {
    build: title,
    steps: workOrder(build).map((step, i) => ({
      number: i + 1,
      step: step.step,
      ...(step.note ? { note: step.note } : {}),
      parts: partsOf(build, step).map((part) => ({ path: part.path, name: part.label })),
      after: step.reasons,
      cautions: step.cautions.flatMap((id) => {
        const words = cautionWords(id);
        return words ? [{ id, word: words.word, text: words.sentences.join(' ') }] : [];
      }),
    })),
  };
}
