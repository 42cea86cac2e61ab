// Displays against the outputs that have their kind of connector.
import type { Build } from '../../build/build';
import {
  freeOutputFor,
  inputLinks,
  outputNamed,
  outputs,
  connectorOf,
  connectorsOf,
  type Display,
} from '../../figures/display';
import { missing } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { given, lacking, sure, type Truth } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, swap, type FixIdea } from '../kit';

export default check({
  id: 'display-ports-short',
  area: 'slots',
  grade: 'stop',
  what: 'Each display has an output with a kind of connector that it takes.',
  why:
    'Cards have three of one connector and one of the other; the second display with the rarer connector ' +
    'stays dark.',
  source: 'common practice',
  limits: ['An adapter counts only where the build lists it as a part.'],
  examples: [
    {
      faulty: `
parts:
  graphics: { outputs: { DP_1: { link: DisplayPort HBR3 }, HDMI_1: { link: HDMI 2.0 } } }
  displays:
    - { name: left, inputs: { HDMI: { link: HDMI 2.0 } } }
    - { name: right, inputs: { HDMI: { link: HDMI 2.0 } } }
#     ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
`,
      instead: 'Choose a display that takes the other connector, or a card with two of this one.',
    },
  ],
  test(build, report) {
    for (const display of build.parts.displays) {
      report(
        outcome(
          at(display, display.at.port),
          given(
            display.at.port.value === undefined ? unnamed(build, display) : named(build, display),
            display.at.port,
            ...outputs(build).decidedBy,
          ),
          {
            broken: () =>
              display.at.port.value === undefined
                ? sentence`${display.label} takes ${inputLinks(display)}; no output with such a connector is left
                  for it.`
                : sentence`${display.label} takes ${inputLinks(display)}; ${display.at.port} drives
                  ${portLink(build, display)}.`,
            *fixes(): Iterable<FixIdea | undefined> {
              yield swap(display);
              for (const card of build.parts.graphics) yield swap(card);
            },
          },
        ),
      );
    }
  },
});

function named(build: Build, display: Display): Truth {
  const output = outputNamed(build, display.at.port);
  if ('missingFacts' in output) return lacking(output.missingFacts);
  const { connectors, missingFacts } = connectorsOf(display);
  if (output.link.value === undefined) return lacking([missing(output.link, `link of ${output.name}`)]);
  const meets = connectors.has(connectorOf(output.link.value));
  return meets || missingFacts.length === 0 ? sure(meets, output.link) : lacking(missingFacts);
}

function unnamed(build: Build, display: Display): Truth {
  const found = freeOutputFor(build, display);
  return found === true ? sure(true) : found.length > 0 ? lacking(found) : sure(false);
}

function portLink(build: Build, display: Display) {
  const output = outputNamed(build, display.at.port);
  return 'missingFacts' in output ? display.at.port : output.link;
}
