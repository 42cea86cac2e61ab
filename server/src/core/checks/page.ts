// What a page on a check says, wherever it is shown: on a terminal, in an editor, in the documentation.
import type { Grade } from '../manifest/house-file';
import { CAUTIONS, type CautionId } from '../trade/cautions';
import { deferral } from '../trade/signal-words';
import { areas, isFirm, type Check, type Example } from './check';

/** What each grade means, in the words of the product. */
export const meaningOf: Record<Grade, string> = {
  harm: 'could hurt someone, or ruin a part',
  stop: 'will not go together, or will not start',
  shortfall: 'works, but falls short of what is promised',
  note: 'worth knowing',
  unknown: 'cannot be decided until a fact is stated',
};

/**
 * A safety message in the standard’s order: signal word, then hazard, consequence, avoidance, and to whom it defers.
 */
export interface CautionWords {
  readonly word: string;
  readonly sentences: readonly [string, string, string, string];
}

export interface CheckPage {
  readonly id: string;
  readonly what: string;
  readonly why: string;
  readonly grade: Grade;
  /** The grade’s meaning. */
  readonly meaning: string;
  /** The area’s title. */
  readonly area: string;
  readonly source: string;
  /** What the check does not see. */
  readonly limits: readonly string[];
  /** Where it gives another grade, and what it leaves to other checks. */
  readonly remarks: readonly string[];
  readonly caution?: CautionWords;
  readonly examples: readonly ExamplePage[];
  /** Why nothing makes such a finding lighter; only where it says that something was not read. */
  readonly unread?: string;
  /** Lines for a build that accept such a finding, their values in words; undefined for what was not read. */
  readonly accept?: string;
  /** Lines for the house settings that give it another grade; none where it is never made lighter by a setting. */
  readonly regrade?: string;
}

export interface ExamplePage {
  /** The faulty text as it is written with the check: comments point at what is found. */
  readonly marked: string;
  /** The same as someone would write it. */
  readonly plain: string;
  /** The file’s name, where it is no build. */
  readonly file?: string;
  readonly beside: readonly { readonly name: string; readonly text: string }[];
  readonly mended?: string;
  readonly instead?: string;
}

export const unreadWords =
  'What such a finding stands for was not read, so nothing that it says is checked: no setting, option or acceptance ' +
  'makes it lighter, and a run that meets one never ends with status 0.';

export function pageOf(check: Check): CheckPage {
  const { id, what, why, grade, source, limits = [], remarks = [] } = check;
  const caution = cautionWords(check.caution);
  return {
    id,
    what,
    why,
    grade,
    source,
    limits,
    remarks,
    meaning: meaningOf[grade],
    area: areas[check.area],
    ...(caution ? { caution } : {}),
    examples: check.examples.map(exampleOf),
    ...(check.unread ? { unread: unreadWords } : {}),
    // A guide accepts nothing: it has no place for it; nor do settings and known findings.
    ...(check.unread || check.on === 'guide' || check.on === 'known' ? {} : { accept: acceptLines(check) }),
    ...(isFirm(check) ? {} : { regrade: `grades: { ${id}: ${grade === 'note' ? 'off' : 'note'} }\n` }),
  };
}

function exampleOf({ faulty, mended, instead, file, beside = {} }: Example): ExamplePage {
  const marked = withoutFirstBreak(faulty);
  return {
    marked,
    plain: unmarked(marked),
    ...(file === undefined ? {} : { file }),
    beside: Object.entries(beside).map(([name, text]) => ({ name, text: withoutFirstBreak(text) })),
    ...(mended === undefined ? {} : { mended: withoutFirstBreak(mended) }),
    ...(instead === undefined ? {} : { instead }),
  };
}

/** Examples begin on the line below their quote. */
export const withoutFirstBreak = (text: string): string => text.replace(/^\n/, '');

/** A text without the comments that point at what is found. */
export const unmarked = (text: string): string =>
  text
    .split('\n')
    .filter((line) => !/^\s*#\s*\^+\s*$/.test(line))
    .join('\n');

function acceptLines({ id, grade }: Check): string {
  return [
    'accept:',
    `  - finding: ${id}`,
    '    at: the place that the finding names',
    '    at-most: by how much it may be broken, where a number decides, as 6 mm; when it gets worse, it counts again',
    '    because: the reason, in a sentence',
    ...(grade === 'harm' ? ['    by: who answers for it'] : []),
    '    until: the day on which to look again, as 2027-06-30',
    '',
  ].join('\n');
}

/** The words of a caution by its id; undefined for none. */
export function cautionWords(id: string | undefined): CautionWords | undefined {
  const caution = id === undefined ? undefined : CAUTIONS[id as CautionId];
  return (
    caution && {
      word: caution.word,
      sentences: [caution.hazard, caution.consequence, caution.avoidance, deferral(caution)],
    }
  );
}
