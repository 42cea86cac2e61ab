// What checks of the machine as built share: what no output shows.
import type { Placed } from '../../build/build';
import type { AnyPair } from '../../figures/built-pairs';
import { sentence, type Sentence } from '../../figures/sentence';
import { lacking, type Truth } from '../../figures/truth';
import type { AsBuilt, OutputName } from '../../manifest/as-built';
import type { Fact } from '../../parts/fact';
import { outcome, type Outcome, type Target, type Words } from '../kit';

/** An answer that waits for an output: which one prints it stands in the record’s own table. */
export function notShown(at: Target, fact: Fact<unknown>, what: string, words: Omit<Words, 'open'>): Outcome {
  const { printed } = fact.field;
  return outcome(at, undecided(), {
    ...words,
    open: () =>
      printed === undefined
        ? sentence`No output shows ${what}.`
        : sentence`No output shows ${what}; it is printed by ${printed.replace(/\.$/, '')}.`,
  });
}

/** What was read is not what would tell; no file of ours could state it. */
export const undecided = (...read: readonly Fact<unknown>[]): Truth => lacking([], ...read);

/** Whether one of these outputs was read: only then is something that they would show missing. */
export function witnessed({ from }: AsBuilt, ...names: readonly OutputName[]): Fact<unknown> | undefined {
  const words = from.value ?? [];
  return words.find(({ value }) =>
    names.some(
      (name) => value === name || (value?.startsWith(`${name} `) && /^[\d.]+$/.test(value.slice(name.length + 1))),
    ),
  );
}

/** A name that the part’s own maker and model do not settle: both are shown, and where the machine’s name belongs. */
export function namedOtherwise({ part, label }: Placed, reports: Fact<string>): Sentence {
  const { maker, model } = part;
  const listed =
    maker.value === undefined || model.value === undefined ? sentence`${label}` : sentence`${maker} ${model}`;
  return sentence`The machine reports ${reports}, and the build lists ${listed}. Read the print on the part: where they
    are one, list ${reports} under identified-by of that part; where not, correct the build.`;
}

/** What a machine says of itself, as a piece of a sentence; nothing where it says nothing. */
export const calls = (reports: Fact<string>): Sentence =>
  reports.value === undefined ? sentence`a part that does not say its name` : sentence`${reports}`;

/** The outputs that show a part of a role: without one of them nothing is missing. */
export const WITNESSES = {
  drives: ['lsblk', 'smartctl', 'CIM'],
  graphics: ['lspci', 'lspci under load', 'CIM'],
  cards: ['lspci', 'lspci under load'],
  displays: ['EDID', 'CIM'],
} as const satisfies Record<string, readonly OutputName[]>;

/** What the build calls a part that was found; of alike parts, nothing tells which it is. */
export const foundAs = ({ placed, alike }: AnyPair): string | Sentence =>
  alike.length === 1 ? placed.label : sentence`${placed.label} or one like it`;

/** What a thing says of itself, with its room where it has any, for a sentence. */
export function described(thing: { reports: Fact<string>; capacity?: Fact<unknown>; id?: Fact<string> }): Sentence {
  const { reports, capacity, id } = thing;
  const names = reports.value === undefined && id?.value !== undefined ? id : reports;
  if (names.value === undefined && capacity?.value !== undefined) return sentence`one of ${capacity}`;
  return capacity?.value === undefined ? calls(names) : sentence`${names} of ${capacity}`;
}
