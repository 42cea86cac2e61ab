// The cautions before each step: the build’s own words where they say the same, ours wherever they do not.
import { cautionWords, type CautionWords } from '../../core/checks/page';
import type { Step } from '../../core/figures/steps';
import { weaker } from '../../core/trade/caution-words';
import { CAUTIONS, type CautionId } from '../../core/trade/cautions';
import { deferral, type SignalWord } from '../../core/trade/signal-words';
import { STEP_CAUTIONS } from '../../core/trade/steps';
import type { MergedStep } from './merged-steps';
import { oneLine, type SheetCaution } from './model';

/** A sentence a line. */
const sentencesOf = (text: string): string[] =>
  oneLine(text)
    .split(/(?<=[.!?])\s+(?=\p{Lu})/u)
    .filter((sentence) => sentence !== '');

export const cautionOf = ({ word, sentences }: CautionWords): SheetCaution => ({
  word: word as SignalWord,
  sentences: sentences.flatMap(sentencesOf),
});

interface Stated {
  readonly step: Step;
  readonly word: SignalWord;
  readonly hazard: string;
}

/** Cautions in the order of the sheet: in full once, afterwards by the step they stood before. */
export class StepCautions {
  private readonly said = new Map<CautionId, number>();
  private readonly stated: (Stated & { readonly number: number })[] = [];

  before({ kind, derived, stated, before }: MergedStep, number: number): readonly SheetCaution[] {
    const own = [...before, ...(stated ? [stated] : [])].flatMap((step) => statedIn(step));
    for (const one of own) this.stated.push({ ...one, number });
    // What the build alone lists has the cautions of its kind of work.
    const all = derived?.cautions ?? (kind && STEP_CAUTIONS[kind]) ?? [];
    // The firmware route has that one, before the step that writes.
    const ids = all.filter((id) => id !== 'update-interrupted');
    const covered = new Set(ids.filter((id) => own.some((one) => covers(one, id))));
    for (const id of covered) this.said.set(id, this.said.get(id) ?? number);
    return [
      ...ids.filter((id) => !covered.has(id)).map((id) => this.ours(id, number)),
      ...own.map((one) =>
        printed(
          one,
          [...covered].filter((id) => covers(one, id)),
        ),
      ),
    ];
  }

  private ours(id: CautionId, number: number): SheetCaution {
    const words = cautionWords(id)!;
    const first = this.said.get(id) ?? this.stated.find((one) => one.number < number && covers(one, id))?.number;
    this.said.set(id, first ?? number);
    if (first === undefined) return cautionOf(words);
    return { word: words.word as SignalWord, sentences: [words.sentences[0], `See the caution before step ${first}.`] };
  }
}

function statedIn(step: Step): readonly Stated[] {
  const { caution } = step.group;
  if (!caution.$.stated) return [];
  return [{ step, word: caution.word.value ?? 'NOTICE', hazard: caution.hazard.text }];
}

/** The build’s own caution; of ours that it says, what it leaves out of it, and whose word counts above it. */
function printed({ step, word }: Stated, ids: readonly CautionId[]): SheetCaution {
  const { hazard, consequence, avoidance } = step.group.caution;
  const more = ids.flatMap((id) => leftOut(avoidance.text, CAUTIONS[id].avoidance));
  const defers = ids.slice(0, 1).map((id) => deferral(CAUTIONS[id]));
  return {
    word,
    sentences: [...[hazard, consequence, avoidance].flatMap((fact) => sentencesOf(fact.text)), ...more, ...defers],
    place: `steps.${step.index}.caution`,
  };
}

/** Words of four letters and more, by their beginnings: `coolers` is `cooler`. */
const stems = (text: string): ReadonlySet<string> =>
  new Set((text.toLowerCase().match(/\p{L}{4,}/gu) ?? []).map((word) => word.slice(0, 5)));

/** What one avoidance says and another does not, sentence by sentence. */
function leftOut(said: string, ours: string): readonly string[] {
  const own = stems(said);
  return sentencesOf(ours).filter((sentence) => {
    const wanted = [...stems(sentence)];
    return wanted.filter((stem) => own.has(stem)).length < 0.6 * wanted.length;
  });
}

/**
 * Whether a stated caution says what one of ours says: whole, in no weaker word, its hazard in the same words for the
 * most part. Where that is not plain, both are printed.
 */
function covers({ step, word, hazard }: Stated, id: CautionId): boolean {
  const { consequence, avoidance } = step.group.caution;
  if (weaker(word, CAUTIONS[id].word) || consequence.text === '' || avoidance.text === '') return false;
  const [own, ours] = [stems(hazard), stems(CAUTIONS[id].hazard)];
  const common = [...own].filter((stem) => ours.has(stem)).length;
  return common >= 3 && common >= 0.6 * Math.min(own.size, ours.size) && common >= 0.6 * own.size;
}
