// Names that a build or the checks give, for places where such a name is to be written.
import { checks } from '../core/checks/all';
import type { View } from './shapes';

export interface Offer { readonly name: string; readonly detail?: string }

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
  if (place === 'accept.*.at') return [...new Set(view.judgement.findings.map(({ place: at }) => at.path))].filter((name) => name !== '').map((name) => ({ name }));
  return path[0] === 'expect' && path[1] === 'arrays' && path[3] === 'drives' ? driveNames(view) : [];
}

function driveNames({ build }: View): Offer[] {
  return (build?.parts.drives ?? []).flatMap((drive) => (drive.at.name.value === undefined ? [] : [{ name: drive.at.name.value, detail: drive.used?.name ?? '' }]));
}

/** What was found comes first; any check may be named. */
function findingIds({ judgement }: View): Offer[] {
  const found = new Set(judgement.findings.filter(({ grade }) => grade !== 'unknown').map(({ id }) => id));
  const all = checks.map(({ id, what }) => ({ name: id, detail: what }));
  return [...all.filter(({ name }) => found.has(name)), ...all.filter(({ name }) => !found.has(name))];
}
