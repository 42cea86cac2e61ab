// Adapters that have burned or that mix up contacts: moulded SATA, too few or too weak connectors behind a strong one,
// EPS and PCIe confused.
import type { Build } from '../../build/build';
import { adapterLoads, type AdapterLoad } from '../../figures/adapter-loads';
import { number, times, type Figure } from '../../figures/figure';
import { connectorOf, startOf, type Cable } from '../../figures/cables';
import { connectorPower, type Card } from '../../figures/card-power';
import { isPowerConnector, type Connector } from '../../trade/connectors';
import { join, sentence, type Sentence } from '../../figures/sentence';
import { all, atMost, fits, given, lacking, sure, type Truth } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, swap } from '../kit';

interface Risk {
  readonly truth: Truth;
  readonly said: () => Sentence;
}

export default check({
  id: 'adapter-risky',
  area: 'power',
  grade: 'harm',
  what: 'No adapter is of a kind that burns or puts 12 V on the wrong contact.',
  why:
    'Moulded SATA connectors fail inside; a strong connector fed from too few or too weak ones overheats them; EPS ' +
    'and PCIe connectors have 12 V and ground on opposite sides.',
  source: 'ATX Version 3 design guide, doc. 336521, section 2.2.1 and table 3-5; moulded connectors: common practice',
  caution: 'adapter-fire',
  examples: [
    {
      faulty: `
parts:
  supply: { rating: 650 W }
  cables: [{ connector: SATA power, from: peripheral 4-pin, from-count: 1, moulded: true }]
#          ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
`,
      instead: 'Use a SATA power cable of the supply itself, or an adapter whose connector is crimped, not moulded.',
    },
  ],
  test(build, report) {
    for (const cable of build.parts.cables) {
      const connector = connectorOf(cable);
      const start = startOf(cable);
      if (('kind' in connector && !isPowerConnector(connector.kind)) || ('at' in start && start.at === 'supply'))
        continue;
      if ('missingFacts' in connector || 'missingFacts' in start) {
        report(
          outcome(
            at(cable),
            lacking([connector, start].flatMap((one) => ('missingFacts' in one ? [one.missingFacts] : []))),
            {
              broken: () => sentence``,
            },
          ),
        );
        continue;
      }
      const risks = risksOf(
        build,
        cable,
        connector.kind as Connector,
        start.at,
        'connectors' in start ? start.connectors : number(0, 'connectors'),
      );
      report(
        outcome(at(cable), given(all(...risks.map(({ truth }) => truth)), cable.part.connector, cable.part.from), {
          broken: () => join(...risks.filter(({ truth }) => truth.is === false).map(({ said }) => said())),
          fixes: () => [swap(cable)],
        }),
      );
    }
  },
});

function risksOf(build: Build, cable: Cable, connector: Connector, from: string, joined: Figure): Risk[] {
  const risks = [mixed(cable, connector, from)];
  if (connector === 'SATA power' && from === 'peripheral 4-pin') risks.push(moulded(cable));
  // One that only splits a kind, or feeds drives, is judged as a cable.
  if (!isPowerConnector(from) || from === connector || connector === 'SATA power') return risks;
  const carried = times(connectorPower(from), joined, `${from} connectors that ${cable.label} joins`);
  for (const { card, load, missing } of adapterLoads(build, cable, connector))
    risks.push({
      truth: given(missing.length > 0 ? lacking(missing) : atMost(load, carried), wantsOf(card)),
      said: () =>
        sentence`${card.label} draws ${load} through ${cable.label}; the ${from} connectors it joins carry ${carried}.`,
    });
  return risks;
}

function mixed(cable: Cable, connector: string, from: string): Risk {
  const side = (kind: string): string =>
    kind.startsWith('EPS') ? 'EPS' : kind.startsWith('PCIe') || kind === '16-pin' ? 'PCIe' : 'other';
  const both = [side(connector), side(from)];
  return {
    truth: sure(!(both.includes('EPS') && both.includes('PCIe')), cable.part.from),
    said: () =>
      sentence`${cable.label} makes ${connector} of ${from}; those two have supply and ground on opposite sides.`,
  };
}

function moulded(cable: Cable): Risk {
  return {
    truth: fits(cable.part.moulded, `whether the connector of ${cable.label} is moulded`, (is) => !is),
    said: () =>
      sentence`${cable.label} feeds a SATA connector from a peripheral connector and is moulded; such connectors have
        burned.`,
  };
}

/** What decides that a part is asked: the connectors it wants; the board’s for a processor count with the others. */
const wantsOf = (card: AdapterLoad['card']): Card['part']['connectors'] | undefined =>
  card.role === 'processor' ? undefined : (card as Card).part.connectors;
