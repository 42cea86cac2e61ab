// Whether what a machine reports is a part of the build: by the part file’s own names, else by its whole model name.
import type { Placed } from '../build/build';
import type { Fact } from '../parts/fact';
import { isPciId, processorReported, sameReported, type Same } from '../trade/reported';
import { missing, type Missing } from './figure';

export type { Same };

/** The names that a part file gives for its part in a machine’s mouth. */
export const identifiers = ({ part }: Placed): readonly Fact<string>[] => part['identified-by'].value ?? [];

/** What would tell whether a reported thing is the part. */
export const identifierMissing = ({ part, label }: Placed): Missing =>
  missing(part['identified-by'], `the name under which a machine reports ${label}`);

/** Names in words, PCI numbers and ids of displays: only those of one form can differ. */
const formOf = (text: string): string =>
  isPciId(text) ? 'pci' : /^[A-Z]{3}[0-9A-F]{4}$/.test(text) ? 'edid' : 'words';

/**
 * Whether any of what a machine says of one thing names the part; a name that the part file does not list is
 * another’s.
 */
export function reportsAs(placed: Placed, ...reported: readonly Fact<string>[]): Same {
  const maker = placed.part.maker.value ?? '';
  const own = identifiers(placed).flatMap(({ value }) => value ?? []);
  const told = reported.flatMap(({ value }) => value ?? []);
  const model = placed.part.model.value;
  const [ids, numbers] = [own.filter(isPciId), told.filter(isPciId)];
  // PCI numbers beat names: databases of names are older than the devices.
  if (ids.length > 0 && numbers.length > 0)
    return numbers.some((id) => ids.some((one) => sameReported(id, one))) ? 'same' : 'other';
  if (told.some((text) => own.some((one) => sameReported(text, one, maker)))) return 'same';
  const compared = told.filter((text) => own.some((one) => formOf(one) === formOf(text)));
  if (compared.length > 0) return 'other';
  if (model === undefined) return 'open';
  if (placed.kind === 'processor' && told[0] !== undefined) return processorReported(told[0], model, maker);
  return told.some((text) => sameReported(text, model, maker)) ? 'same' : 'open';
}
