// Cautions that belong before a marked step and do not stand there.
import type { Guide } from '../../guide/guide';
import { cautionMoved, cautionPut } from '../../guide/step-blocks';
import type { MarkedCaution, MarkedStep } from '../../guide/ties';
import { sentence } from '../../figures/sentence';
import { sure } from '../../figures/truth';
import { workOrder } from '../../figures/work-order';
import { CAUTIONS, type CautionId } from '../../trade/cautions';
import { weaker } from '../../trade/caution-words';
import { STEP_CAUTIONS } from '../../trade/steps';
import type { SignalWord } from '../../trade/signal-words';
import { guideCheck } from '../check';
import { outcome, type TextFix } from '../kit';
import { cautionWords } from '../page';
import { inGuide } from './guide-kit';

/** A caution under its word, in the standard’s order. */
function inFull(id: CautionId): string {
  const { word, sentences } = cautionWords(id)!;
  return `**${word}** ${sentences.join(' ')}`;
}

export default guideCheck({
  id: 'guide-caution-missing',
  area: 'guide',
  grade: 'harm',
  what:
    'Before a marked step stands each caution that belongs to it, with its mark and with a signal word that is no ' +
    'weaker than its own.',
  why: 'A caution that stands behind its step, or under too weak a word, comes too late for whoever works by it.',
  source: 'ANSI Z535.6: before the step; ANSI Z535.4 for the words',
  limits: [
    'A caution is found by its mark, `<!-- fettle: caution coin-cell -->`; of its words the signal word alone is read.',
  ],
  examples: [
    {
      file: 'guide.md',
      faulty: `
~~~pcbuild
parts:
  board: {}
~~~

1. <!-- fettle: step change coin cell -->Change the cell of the clock.
#                    ^^^^^^^^^^^^^^^^
2. <!-- fettle: step first start -->Start it.
`,
      mended: `
~~~pcbuild
parts:
  board: {}
~~~

> <!-- fettle: caution coin-cell -->
> ${inFull('coin-cell')}

1. <!-- fettle: step change coin cell -->Change the cell of the clock.
2. <!-- fettle: step first start -->Start it.
`,
    },
  ],
  test(guide, report) {
    const { build, doc, ties } = guide;
    if (!build) return;
    const needed = cautionsOf(guide);
    const done = new Set<CautionId>();
    for (const step of ties.steps) {
      for (const id of (step.kind && needed(step)) ?? []) {
        if (done.has(id)) continue;
        done.add(id);
        const { word, hazard } = CAUTIONS[id];
        const before = ties.cautions.filter((one) => one.id === id && one.marker.span.start < step.marker.span.start);
        const said = before.map((one) => signalWordIn(doc.text, one)).find((one) => one !== undefined);
        report(
          outcome(inGuide(guide, `cautions.${id}`, step.span), sure(holds(said, word)), {
            broken: () =>
              before.length > 0
                ? sentence`The caution ${id} before ${step.says} stands under ${said ?? 'no signal word'}; its word is
                    ${word}.`
                : sentence`Before ${step.says} belongs the caution ${id}, ${word}: ${hazard}`,
            caution: id,
            fixes: () => [before.length > 0 ? raised(guide, before[0]!, id) : brought(guide, step, id)],
            ...(word === 'NOTICE' ? { grade: 'shortfall' as const } : {}),
          }),
        );
      }
    }
  },
});

/** The signal word of a caution as it has to be. */
function raised({ doc }: Guide, { prose }: MarkedCaution, id: CautionId): TextFix | undefined {
  const text = doc.text.slice(prose.start, prose.end);
  const { word } = CAUTIONS[id];
  const said = signalWord.exec(text);
  const first = /[^\s>]/.exec(text);
  if (!first) return undefined;
  const start = prose.start + (said ?? first).index;
  const edit = said
    ? { span: { start, end: start + said[0].length }, text: word }
    : { span: { start, end: start }, text: `**${word}** ` };
  return { type: 'text', title: `Write ${word}`, doc, edits: [edit] };
}

/** The caution from behind its step, or written out in the words of the standard’s order. */
function brought(guide: Guide, step: MarkedStep, id: CautionId): TextFix | undefined {
  const late = guide.ties.cautions.find((one) => one.id === id);
  const edits = late
    ? cautionMoved(guide, late, step)
    : cautionPut(guide, step, [`<!-- fettle: caution ${id} -->`, inFull(id)]);
  return (
    edits && {
      type: 'text',
      title: `${late ? 'Move' : 'Write'} the caution ${id} before ${step.says}`,
      doc: guide.doc,
      edits,
    }
  );
}

const holds = (said: SignalWord | undefined, word: SignalWord): boolean => said !== undefined && !weaker(said, word);

const signalWord = /\b(DANGER|WARNING|CAUTION|NOTICE)\b/i;

/** The signal word that a caution begins with. */
const signalWordIn = (text: string, { prose }: MarkedCaution): SignalWord | undefined =>
  signalWord.exec(text.slice(prose.start, prose.end))?.[1]?.toUpperCase() as SignalWord | undefined;

/** The cautions of a step: those of the derived order, or of its kind where the order has no such step. */
function cautionsOf({ build }: Guide): (step: MarkedStep) => readonly CautionId[] {
  const order = workOrder(build!);
  return ({ kind }) =>
    order.find(({ step, cautions }) => step === kind && cautions.length > 0)?.cautions ?? STEP_CAUTIONS[kind!] ?? [];
}
