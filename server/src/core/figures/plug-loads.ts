// Figures of what goes through plugs and leads: what slot and plugs may carry, and what one lead has to.
import type { Build, Placed } from '../build/build';
import { CONTACT_18_AWG_A, PLUGS, SIXTEEN_PIN_CONTACT_A, SLOT_POWER, type Plug } from '../trade/plugs';
import { awgMilliohmPerM, AWG_FINEST, leadDropMv } from '../trade/wire';
import { between, counted, derive, figure, known, least, missing, times, total, unknown, type Figure, type Missing } from './figure';
import { allowed } from './guard';
import { isPowerPlug, plugsBrought, plugsWanted } from './leads';
import { partDraw } from './power';
import { memo, memoOf } from './memo';

export type Card = Placed<'graphics'> | Placed<'cards'>;
type Supply = Placed<'supply'>;

const slotSource = 'PCI Express Card Electromechanical Specification: power of a slot';

/** What one plug of a kind carries: undisputed up to its low end, too much above its high end. */
export function plugPower(kind: Plug): Figure {
  const { powerW, source } = PLUGS[kind];
  return between(powerW.low, powerW.high, 'power', `${kind} plug`, { unit: 'W', source });
}

/** What a card may take from its slot; a graphics card with a x16 edge more than any other. */
export function slotPower(card: Card): Figure {
  const { edge } = card.part;
  const label = `slot of ${card.label}`;
  const length = edge.value;
  if (length === undefined || length === 'M.2') {
    return { ...between(SLOT_POWER.x1.powerW, SLOT_POWER.x16.powerW, 'power', label, { unit: 'W', source: slotSource }), missing: [missing(edge, `edge of ${card.label}`)] };
  }
  // A plain x1 card keeps to 10 W, one set up as high-power may take 25 W: which it is no file states.
  if (length === 'x1') return between(SLOT_POWER.x1.powerW, SLOT_POWER.x4.powerW, 'power', label, { unit: 'W', source: slotSource });
  const row = length === 'x16' && card.role !== 'graphics' ? SLOT_POWER.x4 : SLOT_POWER[length];
  return known(row.powerW, 'power', label, { unit: 'W', source: slotSource });
}

/** The kinds of plug a card wants with how many; undefined while it does not say. */
export function plugsOf(card: Card): readonly { readonly kind: Plug; readonly count: Figure }[] | undefined {
  const { plugs } = card.part;
  return plugs.value && [...plugs.value].flatMap(([kind, count]) =>
    (isPowerPlug(kind) && count.value !== 0 ? [{ kind, count: counted(count, `${kind} of ${card.label}`) }] : []));
}

/** What a card’s slot and plugs carry together. */
export const cardCapacity = memoOf((_: Build, card: Card): Figure => {
  const plugs = plugsOf(card);
  const label = `slot and plugs of ${card.label}`;
  if (!plugs) return unknown('power', label, [missing(card.part.plugs, `plugs of ${card.label}`)]);
  return total(label, 'power', [slotPower(card), ...plugs.map(({ kind, count }) => times(plugPower(kind), count))], { unit: 'W' });
});

/** What the EPS leads between supply and board carry together: as many as the board has inlets for. */
export const epsCapacity = memo((build: Build): Figure => {
  const wanted = plugsWanted(build);
  const brought = plugsBrought(build);
  const eights = least('EPS 8-pin leads in use', [wanted.get('EPS 8-pin')!, brought.get('EPS 8-pin')!]);
  const fours = derive('EPS 4-pin leads in use', 'count', ([['EPS 4-pin', wanted], ['EPS 4-pin', brought], ['EPS 8-pin', brought], ['EPS 8-pin', wanted]] as const).map(([kind, of]) => of.get(kind)!),
    'those wanted, from those brought and from what is left of EPS 8-pin', (want4, have4, have8, want8) => Math.min(want4!, have4! + Math.max(0, have8! - want8!)));
  return total('EPS leads', 'power', [times(plugPower('EPS 8-pin'), eights), times(plugPower('EPS 4-pin'), fours)], { unit: 'W' });
});

/** One kind of the supply’s own leads that a card plugs into, with what one such lead has to carry. */
export interface LeadLoad { readonly kind: Plug; readonly row: LeadRow; readonly shared: number; readonly load: Figure }
export type LeadRow = NonNullable<Supply['part']['own-leads']['value']>[number];

/** The loads of the leads of the build’s supply that feed a card; or the facts that are lacking. */
export const cardLeadLoads = memoOf((build: Build, card: Card): readonly LeadLoad[] | { readonly lacks: readonly Missing[] } => {
  const supply = build.parts.supply!;
  const plugs = plugsOf(card);
  if (!plugs) return { lacks: [missing(card.part.plugs, `plugs of ${card.label}`)] };
  if (plugs.length === 0) return [];
  const leads = supply.part['own-leads'];
  if (!leads.value) return { lacks: [missing(leads, `leads of ${supply.label}`)] };
  const lacks = rowLacks(supply, plugs.map(({ kind }) => kind));
  if (lacks.length > 0) return { lacks };
  const whole = total(`plugs of ${card.label}`, 'power', plugs.map(({ kind, count }) => times(plugPower(kind), count)));
  return plugs.flatMap(({ kind, count }) => leads.value!.filter((row) => row.plug.value === kind).map((row) => {
    const shared = plugsOnOneLead(build, supply, kind, count, row);
    return { kind, row, shared, load: loadOf(card, kind, shared, whole) };
  }));
});

/** Rows of the supply’s leads that may be of these kinds and do not say what, how many, or with how many plugs. */
function rowLacks(supply: Supply, kinds: readonly Plug[]): Missing[] {
  return (supply.part['own-leads'].value ?? []).flatMap(({ plug, count, plugs }) => {
    if (plug.value === undefined) return [missing(plug, `plug of a lead of ${supply.label}`)];
    if (!(kinds as readonly string[]).includes(plug.value)) return [];
    return [...(count.value === undefined ? [missing(count, `number of ${plug.value} leads of ${supply.label}`)] : []),
      ...(plugs.value === undefined ? [missing(plugs, `plugs on a ${plug.value} lead of ${supply.label}`)] : [])];
  });
}

/** How many plugs of a card hang on one lead: one while there are leads enough, else as many as must. */
function plugsOnOneLead(build: Build, supply: Supply, kind: Plug, count: Figure, row: LeadRow): number {
  const leads = supply.part['own-leads'].value!.filter((one) => one.plug.value === kind).reduce((sum, one) => sum + one.count.value!, 0);
  if (leads === 0 || plugsWanted(build).get(kind)!.hi <= leads) return 1;
  const must = Number.isFinite(count.hi) ? Math.ceil(count.hi / leads) : 1;
  return Math.max(1, Math.min(must, row.plugs.value!));
}

/** A plug’s share of what the card draws, the slot giving all it may or nothing. */
function loadOf(card: Card, kind: Plug, shared: number, whole: Figure): Figure {
  const draw = figure(card.part.power.sustained, `sustained power of ${card.label}`);
  const slot = { ...slotPower(card), lo: 0 };
  const part = shared * PLUGS[kind].powerW.high / Math.max(whole.hi, 1);
  return derive(`load of one ${kind} lead of ${card.label}`, 'power', [draw, slot], 'share of the plugs on it × (sustained power − what the slot gives)',
    (watts, fromSlot) => Math.max(0, watts! - fromSlot!) * Math.min(1, part), { unit: 'W' });
}

/** The sustained power of a processor over each EPS lead in use. */
export function epsLeadLoad(build: Build, processor: Placed<'processor'>): Figure {
  const count = plugsBrought(build).get('EPS 8-pin')!;
  const used = least('EPS 8-pin leads in use', [plugsWanted(build).get('EPS 8-pin')!, count]);
  return derive('load of one EPS 8-pin lead', 'power', [partDraw(processor)!, used], 'processor power ÷ leads', (watts, leads) => watts! / Math.max(1, leads!), { unit: 'W' });
}

/** What the wires of a lead carry: its pairs × 12 V × the current of a contact. */
export function wireCapacity({ pairs, plug }: LeadRow): Figure {
  const contact = plug.value === '16-pin'
    ? known(SIXTEEN_PIN_CONTACT_A, 'current', 'current of a 16-pin contact', { unit: 'A', source: 'ATX Version 3 design guide, doc. 336521, tables 3-5 and 5-7' })
    : between(CONTACT_18_AWG_A.low, CONTACT_18_AWG_A.high, 'current', 'current of a contact', { unit: 'A', source: 'ATX Version 3 design guide, doc. 336521, section 2.2.1' });
  return derive(`wires of a ${plug.text} lead`, 'power', [counted(pairs, `pairs of a ${plug.text} lead`), contact], 'pairs × 12 V × current of a contact', (n, amps) => n! * 12 * amps!, { unit: 'W' });
}

/** Voltage lost in a lead, out and back, at 12 V; contacts not counted. */
export function leadDrop({ length, gauge, pairs, plug }: LeadRow, load: Figure): Figure {
  const label = `drop in a ${plug.text} lead`;
  const awg = gauge.value;
  if (awg === undefined || awg > AWG_FINEST) return unknown('voltage', label, [missing(gauge, `gauge of a ${plug.text} lead`)]);
  const ohm = known(awgMilliohmPerM(awg) / 1000, 'resistance', `resistance of a metre of AWG ${awg} wire`, { unit: 'mΩ', source: 'ASTM B258 diameters; IEC 60028 copper, 1/58 Ω·mm²/m' });
  const inputs = [figure(length, `length of a ${plug.text} lead`), ohm, counted(pairs, `pairs of a ${plug.text} lead`), load];
  return derive(label, 'voltage', inputs, '2 × length × resistance a metre ÷ pairs × load ÷ 12 V', allowed((mm, _each, n, watts) =>
    leadDropMv({ gauge: awg, lengthM: mm! / 1000, pairs: n! }, watts!, 12) / 1000), { unit: 'mV' });
}
