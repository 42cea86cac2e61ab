// The order of work as it is worked out from a build's parts: steps, what each comes after and why, cautions before them.
import type { Build } from '../core/build/build';
import { cautionWords } from '../core/checks/page';
import { workOrder, type WorkStep } from '../core/figures/work-order';
import { block, padded, safe } from './layout';
import { cautionText } from './text';
import { plural } from './layout';

/** Steps stand in a column of their own, behind their number. */
const steps = 7;

/** The order as text for a terminal; a caution stands before the step that it belongs to. */
export function orderText(build: Build, title: string): string {
  const order = workOrder(build);
  const blocks = order.map((step, i) => stepText(step, i + 1));
  const head =
    `${safe(title)}: ${plural(order.length, 'step', 'steps')}, worked out from its parts. ` +
    'The makers’ handbooks come before this list.';
  return `${[block(head, 0).join('\n'), ...blocks].join('\n\n')}\n`;
}

function stepText(step: WorkStep, number: number): string {
  const cautions = step.cautions.flatMap((id) => {
    const words = cautionWords(id);
    return words ? cautionText(words, steps) : [];
  });
  const head = block(stepName(step), steps, padded(`  ${number}.`, steps));
  const reasons = reasonsOf(step).flatMap((reason) => block(reason, steps + 2));
  return [...cautions, ...head, ...reasons].join('\n');
}

/** A step in words, with the part where there are several of its kind. */
export function stepName({ step, part }: WorkStep): string {
  const words = step[0]?.toUpperCase() + step.slice(1);
  return part ? `${words}: ${part.label}` : words;
}

/** What it comes after, a reason once, with all the steps that share it. */
function reasonsOf({ reasons }: WorkStep): string[] {
  const afters = new Map<string, string[]>();
  for (const { after, because } of reasons) {
    const own = afters.get(because) ?? [];
    if (!own.includes(after)) own.push(after);
    afters.set(because, own);
  }
  return [...afters].map(([because, own]) => `after ${own.join(', ')}: ${because}`);
}

/** The order in JSON: each step with its part, what it comes after and why, and the cautions before it. */
export function orderReport(build: Build, title: string): unknown {
  return {
    build: title,
    steps: workOrder(build).map(({ step, part, reasons, cautions }, i) => ({
      number: i + 1,
      step,
      ...(part ? { part: part.path } : {}),
      after: reasons,
      cautions: cautions.flatMap((id) => {
        const words = cautionWords(id);
        return words ? [{ id, word: words.word, text: words.sentences.join(' ') }] : [];
      }),
    })),
  };
}
