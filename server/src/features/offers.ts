// The names that may be written where a field refers to something, each with what tells it from the others.
import { thingLists, type NamedThing } from '../core/build/named-things';
import { checks } from '../core/checks/all';
import type { RoleName } from '../core/manifest/places';
import type { Fact, Group } from '../core/parts/fact';
import type { Referent, Table } from '../core/parts/field';
import type { Language } from '../core/words/language';
import type { View } from './shapes';

export interface Offer {
  readonly name: string;
  readonly detail?: string;
  /** What it would bring here, or what speaks against it. */
  readonly words?: string;
  readonly isAgainst?: boolean;
  /** Other spellings of a word, by which it is found too. */
  readonly spellings?: readonly string[];
  /** The place of the build, for a part file. */
  readonly path?: string;
}

/**
 * Names of things of some kinds, for a part of a role where it is one that is placed, by the key that names them; files
 * are not among them.
 */
export function offersOf(
  view: View,
  kinds: readonly Referent[],
  language: Language,
  role?: RoleName,
  key?: string,
): Offer[] {
  const offers = kinds.flatMap((kind) => {
    if (kind === 'check') return checkIds(view, language);
    if (kind === 'finding') return foundAt(view);
    const things = thingLists(view.build ?? view.doc, kind).flatMap((list) => list.things ?? []);
    const known = bestFirst(
      things.filter((thing) => suits(kind, thing, role, key)),
      key,
    ).map(offerOf);
    // Of firmware versions the newest comes first: the one to install is among them.
    return kind === 'firmware version' ? known.reverse() : known;
  });
  return [...new Map(offers.map((offer) => [offer.name, offer])).values()];
}

/** Only a drive goes into an M.2 slot; fans, pumps and lights into headers of their own. */
function suits(kind: Referent, { facts }: NamedThing, role: RoleName | undefined, key: string | undefined): boolean {
  if (!facts || role === undefined || !('kind' in facts)) return true;
  const { value } = facts.kind as Fact<string>;
  if (kind === 'slot') return role === 'drives' || role === 'board' || value !== 'M.2';
  if (kind !== 'header' || value === undefined) return true;
  return key === 'light-header' ? value === 'RGB' : value === 'fan' || value === 'pump';
}

/** A pump’s header before a fan’s where a pump is plugged in, and the other way round. */
function bestFirst(things: readonly NamedThing[], key: string | undefined): NamedThing[] {
  if (key !== 'header' && key !== 'pump-header') return [...things];
  const isPump = ({ facts }: NamedThing): boolean =>
    (facts as { kind?: Fact<string> } | undefined)?.kind?.value === 'pump';
  return [...things].sort((a, b) => (key === 'header' ? 1 : -1) * (Number(isPump(a)) - Number(isPump(b))));
}

function offerOf({ name, facts, placed }: NamedThing): Offer {
  const detail = facts ? wordsOf(facts) : placed ? (placed.used?.name ?? placed.path) : '';
  return detail === '' ? { name } : { name, detail };
}

const told = ['kind', 'length', 'carries', 'pins', 'current', 'link'];

function wordsOf(facts: Group<Table>): string {
  return told
    .map((key) => (facts as unknown as Record<string, Fact<unknown> | undefined>)[key]?.text ?? '')
    .filter((text) => text !== '')
    .join(', ');
}

/** What was found comes first; any check may be named. */
function checkIds({ judgement }: View, language: Language): Offer[] {
  const found = new Set(judgement.findings.filter(({ grade }) => grade !== 'unknown').map(({ id }) => id));
  const all = checks.map(({ id, grade, what }) => ({ name: id, detail: `${grade}: ${language.word(what)}` }));
  return [...all.filter(({ name }) => found.has(name)), ...all.filter(({ name }) => !found.has(name))];
}

function foundAt({ judgement }: View): Offer[] {
  const paths = new Set(judgement.findings.map(({ subject }) => subject));
  paths.delete('');
  return [...paths].map((name) => ({ name }));
}
