// Names that a build or the checks give, for places where such a name is to be written.
import type { Build, Placed } from '../core/build/build';
import { checks } from '../core/checks/all';
import type { RoleName } from '../core/manifest/places';
import type { Fact } from '../core/parts/fact';
import type { View } from './shapes';

export interface Offer {
  readonly name: string;
  readonly detail?: string;
}

/** Names that may stand as keys of a map of names. */
export function keyNames(view: View, path: readonly (string | number)[]): Offer[] {
  const place = path.join('.');
  if (place === 'expect.drives') return driveNames(view);
  return place === 'grades' ? checks.map(({ id, grade, what }) => ({ name: id, detail: `${grade}: ${what}` })) : [];
}

/** Names that may stand as a value outside `parts:`. */
export function valueNames(view: View, path: readonly (string | number)[]): Offer[] {
  const place = path.map((step) => (typeof step === 'number' ? '*' : step)).join('.');
  if (place === 'accept.*.finding') return findingIds(view);
  if (place === 'accept.*.at')
    return [...new Set(view.judgement.findings.map(({ subject }) => subject))]
      .filter((name) => name !== '')
      .map((name) => ({ name }));
  if (place === 'steps.*.part') return partNames(view);
  if (place === 'acceptance.drive-tests.*.drive') return driveNames(view);
  if (place === 'expect.displays.*.port') return view.build ? outputNames(view.build) : [];
  if (place === 'bench.firmware-update.to') return view.build ? versionNames(view.build) : [];
  return path[0] === 'expect' && path[1] === 'arrays' && path[3] === 'drives' ? driveNames(view) : [];
}

/** What a step may call each part by: its own name, else its part file where no other part uses it, else its slot. */
function partNames({ build }: View): Offer[] {
  const all = build?.all() ?? [];
  const names = all.flatMap((placed) => {
    const { name, slot } = placed.at as Partial<Record<'name' | 'slot', Fact<string>>>;
    const isOnly = all.filter(({ used }) => used && used.name === placed.used?.name).length === 1;
    const called = name?.value ?? (isOnly ? placed.used?.name : undefined) ?? slot?.value ?? soleRole(placed, all);
    return called === undefined ? [] : [{ name: called, detail: placed.path }];
  });
  return names.filter(({ name }, i) => names.findIndex((one) => one.name === name) === i);
}

const soleRole = ({ role }: Placed, all: readonly Placed[]): string | undefined =>
  all.filter((one) => one.role === role).length === 1 ? role : undefined;

function driveNames({ build }: View): Offer[] {
  return (build?.parts.drives ?? []).flatMap((drive) =>
    drive.at.name.value === undefined ? [] : [{ name: drive.at.name.value, detail: drive.used?.name ?? '' }],
  );
}

/** What was found comes first; any check may be named. */
function findingIds({ judgement }: View): Offer[] {
  const found = new Set(judgement.findings.filter(({ grade }) => grade !== 'unknown').map(({ id }) => id));
  const all = checks.map(({ id, what }) => ({ name: id, detail: what }));
  return [...all.filter(({ name }) => found.has(name)), ...all.filter(({ name }) => !found.has(name))];
}

/** Names that board and case give to the places where a part of this role may go. */
export function placeNames(build: Build, key: string, role: RoleName): Offer[] {
  const board = build.parts.board?.part;
  const chassis = build.parts.case?.part;
  switch (key) {
    case 'slot':
      return entries(board?.slots, (slot) => detail(slot, 'kind', 'length', 'carries', 'generation')).filter(
        ({ detail: words = '' }) => role === 'drives' || !words.startsWith('M.2'),
      );
    case 'slots':
      return (board?.memory.slots.value ?? []).flatMap((fact) =>
        fact.value === undefined ? [] : [{ name: fact.value }],
      );
    case 'port':
      return role === 'displays' ? outputNames(build) : entries(board?.ports, () => '');
    case 'firmware':
      return versionNames(build);
    case 'header':
    case 'pump-header':
      return entries(board?.headers, (header) => detail(header, 'kind', 'pins', 'current')).filter(
        ({ detail: words = '' }) => words === '' || /^(fan|pump)\b/.test(words),
      );
    case 'bay':
      return entries(chassis?.bays, () => '');
    case 'mount':
      return entries(role === 'fans' ? chassis?.['fan-places'] : chassis?.['radiator-places'], () => '');
    default:
      return [];
  }
}

function entries(fact: Fact<ReadonlyMap<string, unknown>> | undefined, words: (value: unknown) => string): Offer[] {
  return [...(fact?.value ?? [])].map(([name, value]) => ({ name, detail: words(value) }));
}

function detail(group: unknown, ...keysOfGroup: readonly string[]): string {
  const facts = group as Record<string, Fact<unknown> | undefined>;
  return keysOfGroup
    .map((key) => facts[key]?.text ?? '')
    .filter((text) => text !== '')
    .join(', ');
}

function outputNames({ parts: { graphics, board } }: Build): Offer[] {
  const all = [...graphics.map(({ part }) => part.outputs), board?.part['display-outputs']];
  return all.flatMap((outputs) => entries(outputs, (output) => detail(output, 'link')));
}

/** Newest first: the version to install is among them. */
function versionNames({ parts: { board } }: Build): Offer[] {
  return (board?.part.firmware.versions.value ?? [])
    .flatMap((fact) => (fact.value === undefined ? [] : [{ name: fact.value }]))
    .reverse();
}
