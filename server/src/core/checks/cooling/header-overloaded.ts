// Currents of the fans on one header, all starting at once, against what the header supplies.
import type { Build } from '../../build/build';
import { freeHeaders, headerLoads, type Load } from '../../figures/headers';
import { sentence } from '../../figures/sentence';
import { any, atMost } from '../../figures/truth';
import { check } from '../check';
import { aspectOf, at, outcome, putOn, type FixIdea } from '../kit';

export default check({
  id: 'header-overloaded',
  area: 'cooling',
  grade: 'harm',
  what: 'The fans on a header draw no more than it supplies, all of them starting at once.',
  why:
    'A start takes several times the running current: a header loaded beyond its own may fail to start its ' +
    'fans, and one that runs beyond it burns out its tracks or driver, and every fan on it stops.',
  source:
    '4-Wire Pulse Width Modulation (PWM) Controlled Fans Specification, 2.1.1: up to 2.2 A for a second at ' +
    'the start; the header, by its board’s handbook',
  remarks: [
    'Whether three or four pins set the speed is judged by `fan-pins-differ`.',
    'A current above the header’s for the second of a start is a shortfall, not harm.',
  ],
  caution: 'header-overload',
  examples: [
    {
      faulty: `
parts:
  board:
    headers:
      SYS_FAN_1: { kind: fan, pins: 4, current: 1 A }
      SYS_FAN_2: { kind: fan, pins: 4, current: 2 A }
  fans:
    - { pins: 4, count: 3, current: 0.4 A, start-current: 0.6 A, header: SYS_FAN_1 }
#                                                                        ^^^^^^^^^
`,
      mended: `
parts:
  board:
    headers:
      SYS_FAN_1: { kind: fan, pins: 4, current: 1 A }
      SYS_FAN_2: { kind: fan, pins: 4, current: 2 A }
  fans:
    - { pins: 4, count: 3, current: 0.4 A, start-current: 0.6 A, header: SYS_FAN_2 }
`,
    },
  ],
  test(build, report) {
    for (const load of headerLoads(build)) {
      const { name, limit, start, running, connectors } = load;
      const last = connectors.at(-1)!;
      const asItRuns = atMost(running, limit).is;
      report(
        outcome(aspectOf(at(last.placed, last.header), name), any(load.fedElsewhere, atMost(start, limit)), {
          // What runs within the header’s current is over it for the second of the start only: some fan may not start.
          ...(asItRuns ? { grade: 'shortfall' as const } : {}),
          // What they draw once they run is known to be too much, or only the start is.
          broken: () =>
            asItRuns === false
              ? sentence`The fans on ${name} draw ${running}; it supplies ${limit}. Spread them over two headers or a
                powered hub.`
              : sentence`The fans on ${name} draw ${start} while they start; it supplies ${limit}. Spread them over two
                headers or a powered hub.`,
          fixes: () => moves(build, load),
          ...(isAsMeant(load) ? { usual: () => `${name} has the current for ${last.label}` } : {}),
        }),
      );
    }
  },
});

/** One fan or pump, or the fans of one cooler, on a header, with no current stated. Source: common practice. */
const isAsMeant = ({ connectors, header }: Load): boolean =>
  connectors.length === 1 &&
  header !== undefined &&
  !header.current.node &&
  !Number.isFinite(connectors[0]!.steady.hi) &&
  (connectors[0]!.count.hi <= 1 || connectors[0]!.placed.role === 'cooler');

function* moves(build: Build, { connectors }: Load): Iterable<FixIdea | undefined> {
  for (const { placed, label, header } of [...connectors].reverse()) {
    for (const [name] of freeHeaders(build)) yield putOn(placed, header.key, name, `Move ${label} to ${name}`);
  }
}
