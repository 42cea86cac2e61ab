// Watts through a card’s slot and connectors, through a cable that several connectors share, through splitters, and
// through the EPS cables.
import type { Build, Placed } from '../../build/build';
import { adapterLoads } from '../../figures/adapter-loads';
import { connectorOf, startOf, type Cable } from '../../figures/cables';
import { cardCapacity, cardDraw, connectorPower, type Card } from '../../figures/card-power';
import { cardCableLoads, epsCapacity, isWithoutEps, unlistedLoads } from '../../figures/connector-loads';
import {
  driveLoad,
  drivesOn,
  drivesOnOwnCable,
  driveWires,
  fedCount,
  forSeconds,
  railsPower,
  type DriveLoad,
} from '../../figures/drive-power';
import { times, type Figure } from '../../figures/figure';
import { memoOf } from '../../figures/memo';
import { processorDraw } from '../../figures/power';
import { sentence } from '../../figures/sentence';
import { all, atMost, given, lacking, type Truth } from '../../figures/truth';
import { usualWires, wireCapacity } from '../../figures/wires';
import { isPowerConnector, type Connector } from '../../trade/connectors';
import { check } from '../check';
import { at, outcome, swap, type Reporter } from '../kit';

export default check({
  id: 'cable-overloaded',
  area: 'power',
  grade: 'harm',
  what: 'No connector, and no cable that several connectors share, carries more than it is rated for.',
  why: 'Contacts and wires that carry too much get hot; connectors melt long before a supply notices.',
  source:
    'ATX Version 3 design guide, doc. 336521, table 3-5 and section 2.2.1; PCI Express Card ' +
    'Electromechanical Specification',
  limits: [
    'Without a list of its cables, a supply is taken to have cables of at most two connectors, with one wire of ' +
      'AWG 18 for each contact.',
    'Drives are taken as spread evenly over the supply’s own cables.',
  ],
  caution: 'overloaded-supply',
  examples: [
    {
      faulty: `
parts:
  graphics: { edge: x16, connectors: { PCIe 8-pin: 1 }, power: { sustained: 240 W } }
#           ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
`,
      instead: 'Hold the card to what its slot and its connector carry together, 225 W.',
    },
  ],
  test(build, report) {
    const { processor, board, supply, graphics, cards, cables } = build.parts;
    for (const card of [...graphics, ...cards]) {
      if (card.part.edge.value === 'M.2') continue;
      const draw = cardDraw(build, card);
      const carried = cardCapacity(build, card);
      report(
        outcome(at(card), atMost(draw, carried), {
          broken: () => sentence`${card.label} draws ${draw}; its slot and connectors carry ${carried}.`,
          fixes: () => [swap(card)],
        }),
      );
      if (supply) sharedCables(build, card, report);
    }
    for (const cable of cables) splitter(build, cable, report);
    if (supply) ownDriveCables(build, supply, report);
    // A board fed by a barrel or by the 24-pin connector alone has no EPS cable to judge.
    if (!processor || !board || !supply || isWithoutEps(build)) return;
    const draw = processorDraw(processor);
    const carried = epsCapacity(build);
    // Cables that are not there are judged as missing.
    if (carried.hi <= 0) return;
    report(
      outcome(at(processor), atMost(draw, carried), {
        broken: () => sentence`The processor draws ${draw}; the EPS cables in use carry ${carried}.`,
        fixes: () => [swap(supply), swap(processor)],
      }),
    );
  },
});

/** The loads of the cables that feed a card, each against what its wires carry. */
const judgedCables = memoOf((build: Build, card: Card) => {
  const loads = cardCableLoads(build, card);
  return 'missingFacts' in loads
    ? loads
    : loads.map(({ kind, row, load }) => {
        const wires = wireCapacity(row);
        return { kind, load, wires, truth: atMost(load, wires) };
      });
});

/** Cables of the supply on which more than one connector of the card hangs. */
function sharedCables(build: Build, card: Card, report: Reporter): void {
  const supply = build.parts.supply!;
  const loads = judgedCables(build, card);
  const place = at(card, undefined, 'connectors');
  if ('missingFacts' in loads) {
    const isListed = supply.part['own-cables'].value !== undefined;
    const usual = (isListed ? [] : unlistedLoads(build, card)).map(({ kind, load }) => atMost(load, usualWires(kind)));
    const truth = usual.length > 0 && usual.every(({ is }) => is) ? all(...usual) : lacking(loads.missingFacts);
    return report(outcome(place, truth, { broken: () => sentence`` }));
  }
  if (loads.length === 0) return;
  report(
    outcome(place, given(all(...loads.map(({ truth }) => truth)), card.part.edge, card.part.connectors), {
      broken: () => {
        const { kind, load, wires } = loads.find(({ truth }) => truth.is === false)!;
        return sentence`One ${kind} cable of ${supply.label} carries ${load} for ${card.label}; its wires are good for
          ${wires}. Use a cable for each connector.`;
      },
      fixes: () => [swap(supply)],
    }),
  );
}

/** A splitter: no more comes out of it than goes in. */
function splitter(build: Build, cable: Cable, report: Reporter): void {
  const [connector, start] = [connectorOf(cable), startOf(cable)];
  const hasDrives = fedCount(build).hi > 0;
  if (!('kind' in connector)) {
    if (hasDrives && 'connectors' in start)
      report(outcome(at(cable), lacking([connector.missingFacts]), { broken: () => sentence`` }));
    return;
  }
  const feedsDrives = connector.kind === 'SATA power' && hasDrives;
  if (feedsDrives && 'missingFacts' in start)
    return report(outcome(at(cable), lacking([start.missingFacts]), { broken: () => sentence`` }));
  if (!('connectors' in start) || !isPowerConnector(start.at)) return;
  if (connector.kind === 'SATA power') {
    if (feedsDrives) drivesBehind(build, cable, start, report);
  } else if (connector.kind === start.at && connector.kind.startsWith('PCIe'))
    for (const { load, card } of adapterLoads(build, cable, connector.kind as Connector)) {
      const carried = times(connectorPower(start.at), start.connectors, `what feeds ${cable.label}`);
      report(
        outcome(at(cable), atMost(load, carried), {
          broken: () =>
            sentence`${card.label} draws ${load} through ${cable.label}; the ${start.at} connectors it starts from carry
              ${carried}. Use a cable of the supply for each connector.`,
          fixes: () => [swap(cable)],
        }),
      );
    }
}

function drivesBehind(
  build: Build,
  cable: Cable,
  start: { readonly at: string; readonly connectors: Figure },
  report: Reporter,
): void {
  const load = driveLoad(build, drivesOn(build, cable), cable.label);
  const carried = railsPower(start.at as Connector, start.connectors);
  report(
    outcome(at(cable), onOne(load, carried), {
      broken: () =>
        load.running.lo > carried.hi
          ? sentence`${load.count} drives on ${cable.label} draw ${load.running}; the ${start.at} connectors it starts
              from carry ${carried}.`
          : sentence`${load.count} drives on ${cable.label} draw ${load.starting} while they start; the ${start.at}
              connectors it starts from carry ${carried}.`,
      fixes: () => [swap(cable)],
    }),
  );
}

const onOne = ({ running, starting }: DriveLoad, carried: Figure): Truth =>
  all(atMost(running, carried), atMost(starting, forSeconds(carried)));

/** Drives spread evenly over the supply’s own cables. */
function ownDriveCables(build: Build, supply: Placed<'supply'>, report: Reporter): void {
  const most = drivesOnOwnCable(build, supply);
  if (!most) return;
  const place = at(supply, supply.part['own-cables'], 'own-cables');
  if ('missingFacts' in most) return report(outcome(place, lacking(most.missingFacts), { broken: () => sentence`` }));
  const load = driveLoad(build, most.count, `a cable of ${supply.label}`);
  report(
    outcome(place, onOne(load, driveWires), {
      broken: () =>
        sentence`${load.count} drives on one SATA power cable of ${supply.label} draw ${load.starting} while they start;
          its wires are good for ${driveWires}. Spread them over more cables.`,
      fixes: () => [swap(supply)],
    }),
  );
}
