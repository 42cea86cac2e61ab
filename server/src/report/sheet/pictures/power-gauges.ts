// What a build draws against what is allowed: at the wall, out of the supply, on its rails, through cables.
import type { Build, Placed } from '../../../core/build/build';
import { cardCapacity, cardDraw, type Card } from '../../../core/figures/card-power';
import { circuitLimit, circuitLoad } from '../../../core/figures/circuit';
import { epsCapacity, isWithoutEps } from '../../../core/figures/connector-loads';
import { figure, type Figure } from '../../../core/figures/figure';
import { wallPower } from '../../../core/figures/mains';
import { startTogether } from '../../../core/figures/drive-start';
import { tightestPeaks } from '../../../core/figures/peaks';
import { sustainedDraw } from '../../../core/figures/power';
import { powerFlows } from '../../../core/figures/power-flows';
import { fiveVoltDraw, fiveVoltLimit, twelveVoltDraw, twelveVoltLimit } from '../../../core/figures/rails';
import { ratingOf } from '../../../core/figures/supply-rating';
import { short } from './figures-said';
import type { Gauge } from './gauges';

/** More peaks than these are not drawn: the tightest are. */
const mostPeaks = 2;
const pastPeaks = 'excursion-beyond-supply';
const mostCards = 8;

/** In the order in which a technician asks: from the wall inwards. */
export function powerGauges(build: Build): readonly Gauge[] {
  const { supply } = build.parts;
  return supply ? [...atTheWall(build, supply), ...ofTheSupply(build, supply), ...throughCables(build)] : [];
}

function atTheWall(build: Build, supply: Placed<'supply'>): Gauge[] {
  const { mains } = build.file.place;
  const wall = wallPower(build)!;
  const promised = build.file.expect.power.wall;
  const all: Gauge[] = [];
  if (promised.entry)
    all.push({
      place: promised.path,
      label: 'wall, as promised',
      is: wall,
      limit: figure(promised, 'power promised from the wall'),
    });
  if (mains.circuit.entry || mains['allowed-load'].entry)
    all.push({
      place: mains.circuit.path,
      label: 'circuit, all on it',
      is: circuitLoad(build, supply, wall),
      limit: circuitLimit(build),
    });
  return all;
}

function ofTheSupply(build: Build, supply: Placed<'supply'>): Gauge[] {
  const of = (label: string, is: Figure, limit: Figure, ...checks: string[]): Gauge => ({
    place: supply.path,
    label,
    is,
    limit,
    checks,
  });
  const rails = `${supply.path}.rails`;
  const rating = ratingOf(build, supply);
  const disks = startTogether(build);
  const five = fiveVoltDraw(build);
  return [
    of('supply, for hours', sustainedDraw(build), rating, 'supply-overloaded', 'supply-headroom-thin'),
    ...tightestPeaks(build, supply, mostPeaks).map(({ lasts, drawn, borne }) =>
      of(`supply, for ${short(lasts)}`, drawn, borne, ...(drawn.hi > borne.lo ? [pastPeaks] : [])),
    ),
    ...(disks ? [of('supply, all disks starting', disks, rating, ...(disks.hi > rating.lo ? [pastPeaks] : []))] : []),
    { place: rails, label: '12 V rails', is: twelveVoltDraw(build), limit: twelveVoltLimit(build, supply) },
    ...(five ? [{ place: rails, label: '5 V rail', is: five, limit: fiveVoltLimit(supply), checks: [] }] : []),
  ];
}

function throughCables(build: Build): Gauge[] {
  return powerFlows(build).flatMap(({ feed, parts, draw }): Gauge[] => {
    if (feed === 'processor')
      return isWithoutEps(build)
        ? []
        : [{ place: parts[0]!.placed.path, label: 'EPS cables', is: draw, limit: epsCapacity(build) }];
    if (feed !== 'cards') return [];
    // Each of several cards has a slot and cables of its own.
    return parts.slice(0, mostCards).map(({ placed }) => ({
      place: placed.path,
      label: `slot and cables of ${placed.label}`,
      is: cardDraw(build, placed as Card),
      limit: cardCapacity(build, placed as Card),
    }));
  });
}
