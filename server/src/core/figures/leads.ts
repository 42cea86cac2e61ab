// Figures of power plugs: how many of each kind the parts want, and how many supply and leads bring.
import type { Build, Placed } from '../build/build';
import { plugKinds } from '../parts/common';
import type { Fact } from '../parts/fact';
import { isSixteenPinAdapter } from '../trade/box-things';
import { PLUGS, SIXTEEN_PIN_LEVELS_W, type Plug } from '../trade/plugs';
import { between, counted, derive, figure, missing, most, number, times, total, unknown, type Figure, type Missing } from './figure';
import { memo } from './memo';
import { howMany } from './power';

export type Lead = Placed<'leads'>;
type PlugMap = Fact<ReadonlyMap<string, Fact<number>>>;

export const isPowerPlug = (kind: string): kind is Plug => (plugKinds as readonly string[]).includes(kind);

/** How many plugs of a kind a part states; a kind that its list leaves out is none. */
export function plugCount(fact: PlugMap, kind: Plug, what: string): Figure {
  if (!fact.value) return unknown('count', `${kind} of ${what}`, [missing(fact, `${fact.key} of ${what}`)]);
  const one = fact.value.get(kind);
  return one ? counted(one, `${kind} of ${what}`) : number(0, `${kind} of ${what}`, 'not among those it lists');
}

/** Plugs of each kind that board and cards want; what drives take is counted with the drives. */
export const plugsWanted = memo((build: Build): ReadonlyMap<Plug, Figure> =>
  new Map(plugKinds.map((kind) => [kind, total(`${kind} wanted`, 'count', wantsOf(build, kind))])));

function wantsOf(build: Build, kind: Plug): Figure[] {
  const { board, graphics, cards } = build.parts;
  const wants = board ? [plugCount(board.part['power-inlets'], kind, board.label)] : [];
  for (const card of [...graphics, ...cards]) wants.push(times(plugCount(card.part.plugs, kind, card.label), howMany(card)));
  return wants;
}

/** What a lead connects: its part’s plug, or what the build says of it; or the fact that would tell. */
export function plugOf(lead: Lead): { readonly kind: string } | { readonly lacks: Missing } {
  const kind = lead.part.plug.value ?? lead.at.kind.value;
  return kind === undefined ? { lacks: missing(lead.part.plug, `plug of ${lead.label}`) } : { kind };
}

/** Where a power lead starts: at the supply itself, at plugs of another kind, or not known. */
export function startOf(lead: Lead): { readonly at: 'supply' } | { readonly at: string; readonly plugs: Figure } | { readonly lacks: Missing } {
  const { from, adapter, 'from-count': joined } = lead.part;
  if (from.value !== undefined) return { at: from.value, plugs: counted(joined, `plugs that ${lead.label} starts from`) };
  if (adapter.value === false) return { at: 'supply' };
  return { lacks: adapter.value === undefined ? missing(adapter, `whether ${lead.label} is an adapter`) : missing(from, `start of ${lead.label}`) };
}

/** Plugs of each kind that the supply’s own leads and the leads bought beside them bring, less those that adapters take up. */
export const plugsBrought = memo((build: Build): ReadonlyMap<Plug, Figure> =>
  new Map(plugKinds.map((kind) => [kind, broughtOf(build, kind)])));

function broughtOf(build: Build, kind: Plug): Figure {
  const { supply, leads } = build.parts;
  const own = supply ? [plugCount(supply.part.plugs, kind, supply.label)] : [];
  const given = total(`${kind} brought`, 'count', [...own, ...leads.flatMap((lead) => givenBy(lead, kind) ?? [])]);
  const taken = leads.flatMap((lead) => takenBy(lead, kind) ?? []);
  if (taken.length === 0) return given;
  return derive(`${kind} left`, 'count', [given, total(`${kind} taken by adapters`, 'count', taken)], 'brought − taken by adapters', (a, b) => Math.max(0, a! - b!));
}

function givenBy(lead: Lead, kind: Plug): Figure | undefined {
  const plug = plugOf(lead);
  if ('lacks' in plug) return unknown('count', `${kind} of ${lead.label}`, [plug.lacks]);
  return plug.kind === kind ? times(plugsOn(lead), howMany(lead), `${kind} of ${lead.label}`) : undefined;
}

/** How many plugs of its kind one lead brings: at least one, and more where it splits. */
export function plugsOn({ part: { plugs }, label }: Lead): Figure {
  const what = `plugs on ${label}`;
  return plugs.entry ? counted(plugs, what) : { ...between(1, Infinity, 'count', what, { source: 'common practice' }), missing: [missing(plugs, what)] };
}

function takenBy(lead: Lead, kind: Plug): Figure | undefined {
  const plug = plugOf(lead);
  if ('kind' in plug && !isPowerPlug(plug.kind)) return undefined;
  const start = startOf(lead);
  if ('lacks' in start) return unknown('count', `${kind} taken by ${lead.label}`, 'lacks' in plug ? [plug.lacks, start.lacks] : [start.lacks]);
  return 'plugs' in start && start.at === kind ? times(start.plugs, howMany(lead)) : undefined;
}

/** Adapters to a 16-pin plug that lie in the boxes of cards, and the PCIe 8-pin plugs that one of them joins. */
export const boxedAdapters = memo((build: Build): { readonly count: Figure; readonly joins: Figure } => {
  const cards = [...build.parts.graphics, ...build.parts.cards].filter((card) => plugCount(card.part.plugs, '16-pin', card.label).hi > 0);
  const count = total('16-pin adapters in the boxes of cards', 'count', cards.map((card) => times(adaptersIn(card), howMany(card))));
  const joins = cards.length === 0 ? number(0, 'PCIe 8-pin plugs of an adapter') : most('PCIe 8-pin plugs that an adapter joins', cards.map(joinedFor));
  return { count, joins };
});

type Card = Placed<'graphics'> | Placed<'cards'>;

function adaptersIn({ part, label }: Card): Figure {
  const box = part['in-the-box'];
  const what = `16-pin adapters in the box of ${label}`;
  if (!box.value) return { ...between(0, 1, 'count', what, { source: 'its box is not stated' }), missing: [missing(box, `what the box of ${label} holds`)] };
  return number(box.value.reduce((sum, { value }) => sum + (value && isSixteenPinAdapter(value.thing) ? value.count : 0), 0), what, 'counted in the box');
}

/** As many plugs of 150 W as bring the level that the card wants; without it, as many as the least and the highest level take. */
function joinedFor({ part, label }: Card): Figure {
  const stated = figure(part['power-level'], `power level that ${label} wants`);
  const level = stated.missing.length > 0 ? { ...stated, lo: SIXTEEN_PIN_LEVELS_W.at(-1)!, hi: SIXTEEN_PIN_LEVELS_W[0] } : stated;
  return derive(`PCIe 8-pin plugs of the adapter of ${label}`, 'count', [level], 'power level ÷ 150 W a plug, rounded up', (watts) => Math.ceil(watts! / PLUGS['PCIe 8-pin'].powerW.low));
}
