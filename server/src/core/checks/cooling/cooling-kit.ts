// What the checks of cooling share: what a paste is, how a part is taken out of a build.
import type { Build, Placed } from '../../build/build';
import { missing, type Figure, type Missing } from '../../figures/figure';
import type { Radiator } from '../../figures/radiators';
import { lacking, sure, type Truth } from '../../figures/truth';
import type { Fact } from '../../parts/fact';
import { removeEntry } from '../../yaml';
import { putOn, swap, type FixIdea, type TextFix } from '../kit';

/** Fillings among which there is no gallium. */
const withoutGallium: readonly string[] = ['silicone', 'ceramic', 'carbon', 'pad'];

/** Facts of a paste that no file states, of these. */
const unstated = (...facts: readonly (readonly [Fact<unknown>, string])[]): Missing[] =>
  facts.flatMap(([fact, what]) => (fact.value === undefined ? [missing(fact, what)] : []));

/** Whether the paste holds gallium: by its own word, or by what fills it. */
export function holdsGallium({ part, label }: Placed<'paste'>): Truth {
  const { gallium, class: fills } = part;
  if (gallium.value !== undefined || fills.value === 'liquid metal')
    return sure(gallium.value === true || fills.value === 'liquid metal', gallium, fills);
  if (fills.value !== undefined && withoutGallium.includes(fills.value)) return sure(false, fills);
  return lacking(unstated([gallium, `gallium in ${label}`], [fills, `class of ${label}`]), fills);
}

/** Whether the paste conducts or stores charge: by its own word, or because it holds gallium. */
export function conducts({ part, label }: Placed<'paste'>): Truth {
  const { gallium, class: fills, electrically } = part;
  if (gallium.value === true || fills.value === 'liquid metal') return sure(true, gallium, fills);
  if (electrically.value !== undefined) return sure(electrically.value !== 'insulating', electrically);
  return lacking(
    unstated(
      [electrically, `what ${label} does electrically`],
      [fills, `class of ${label}`],
      [gallium, `gallium in ${label}`],
    ),
    fills,
  );
}

/** A paste that by its own word stores charge and does not conduct it. */
export const storesOnly = ({ part }: Placed<'paste'>): boolean =>
  part.electrically.value === 'capacitive' && part.gallium.value !== true && part.class.value !== 'liquid metal';

/** Processors that go into a socket have a lid; one that is soldered down may have a bare die. Common practice. */
export const hasLid = ({ part: { lid, socket } }: Placed<'processor'>): boolean =>
  lid.$.stated || (socket.value !== undefined && !/bga/i.test(socket.value));

/** Takes a part out of the build, key and all. */
export function takePartOut({ doc }: Build, role: 'paste', title: string): TextFix | undefined {
  const parts = doc.topValue('parts');
  const edits = parts?.type === 'map' ? removeEntry(doc.parsed, parts, role) : undefined;
  return edits && { type: 'text', title, doc, edits };
}

/** Fillings that are insulators themselves: oxides, nitrides, oil. */
const insulators: readonly string[] = ['silicone', 'ceramic'];

/** Whether what runs over does no harm: the paste insulates by its own word, or by what fills it. */
export function insulates({ part: { electrically, gallium, class: fills } }: Placed<'paste'>): Truth {
  if (gallium.value === true || fills.value === 'liquid metal') return sure(false, gallium, fills);
  if (electrically.value !== undefined) return sure(electrically.value === 'insulating', electrically);
  return fills.value !== undefined && insulators.includes(fills.value)
    ? sure(true, fills)
    : lacking(unstated([electrically, 'what the paste does electrically']), fills);
}

/** A pad is laid, not dosed. */
export const holdsNoPad = ({ part }: Placed<'paste'>): boolean => part.class.value !== 'pad';

/** Sets the amount to the middle of what is wanted, in whole mm³; undefined where that is not known well enough. */
export function amountFix(paste: Placed<'paste'>, wanted: Figure): TextFix | undefined {
  if (wanted.missing.length > 0 || !Number.isFinite(wanted.hi)) return undefined;
  const middle = (wanted.lo + wanted.hi) / 2;
  const mm3 = middle >= 10 ? Math.round(middle) : Number(middle.toPrecision(2));
  return putOn(paste, 'amount', `${mm3} mm³`, `Set the amount to ${mm3} mm³`);
}

/** The case's other radiator places, and other coolers of the folder. */
export function* elsewhere(build: Build, { placed, mount, label }: Radiator): Iterable<FixIdea | undefined> {
  for (const name of build.parts.case?.part['radiator-places'].value?.keys() ?? []) {
    if (name !== mount.value) yield putOn(placed, 'mount', name, `Mount ${label} at ${name}`);
  }
  yield swap(placed);
}
