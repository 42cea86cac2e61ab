// Firmware versions and memory slots in the order of use.
import type { Build } from '../core/build/build';
import { processorListed, versionList } from '../core/figures/firmware';
import { takenPlaces } from '../core/figures/places';
import { compareVersions } from '../core/trade/firmware';
import type { Offer } from './offers';
import type { View } from './shapes';

/** Those that start this build’s processor first, of these the newest. */
export function versionsInOrder({ build }: View, versions: readonly Offer[]): Offer[] {
  const board = build?.parts.board;
  const line = build && processorListed(build)?.line;
  const since = line?.since.value;
  if (!board || since === undefined) return [...versions];
  const list = versionList(board);
  const until = line?.until.value;
  const label = build.parts.processor!.label;
  const told = versions.map((offer) => {
    const fromOn = compareVersions(offer.name, since, list);
    const upTo = until === undefined ? -1 : compareVersions(offer.name, until, list);
    if (fromOn === undefined || upTo === undefined) return offer;
    const starts = fromOn >= 0 && upTo <= 0;
    return { ...offer, words: `${starts ? 'starts' : 'does not start'} ${label}`, isAgainst: !starts };
  });
  return [...told.filter(({ isAgainst }) => !isAgainst), ...told.filter(({ isAgainst }) => isAgainst)];
}

/** The free ones first, in the order in which the board is filled; then those that are taken, saying by what. */
export function memorySlotsInOrder({ build }: View, slots: readonly Offer[]): Offer[] {
  if (!build) return [...slots];
  const taken = new Map(
    takenPlaces(build).flatMap(({ kind, name, placed }) => (kind === 'memory slot' ? [[name, placed.label]] : [])),
  );
  const first = fillFirst(build);
  const rank = ({ name }: Offer): number => (first.includes(name) ? first.indexOf(name) : first.length);
  const free = slots.filter(({ name }) => !taken.has(name)).sort((a, b) => rank(a) - rank(b));
  const used = slots.filter(({ name }) => taken.has(name));
  return [...free, ...used.map((offer) => ({ ...offer, words: `taken by ${taken.get(offer.name)!}` }))];
}

const fillFirst = ({ parts: { board } }: Build): string[] =>
  board?.part.memory['fill-first'].value?.flatMap(({ value }) => value ?? []) ?? [];
