// Displays against the outputs that have their kind of connector.
import type { Build } from '../../build/build';
import {
  freeOutputFor,
  inputLinks,
  outputNamed,
  outputs,
  connectorsOf,
  linkWords,
  takes,
  type Display,
} from '../../figures/display';
import { missing } from '../../figures/figure';
import { sentence, type Sentence } from '../../figures/sentence';
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
  limits: ['USB-C sends DisplayPort through a plain cable; a display that takes USB-C alone needs more than one.'],
  remarks: [
    'A display that names what it hangs on, an adapter or another display, is judged by `display-adapter-wrong`.',
  ],
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
      if (display.at.through.value !== undefined) continue;
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
  const { missingFacts } = connectorsOf(display);
  if (output.connector === undefined) return lacking([missing(output.link, `link of ${output.name}`)]);
  const meets = takes(display, output);
  return meets || missingFacts.length === 0 ? sure(meets, output.link) : lacking(missingFacts);
}

function unnamed(build: Build, display: Display): Truth {
  const found = freeOutputFor(build, display);
  return found === true ? sure(true) : found.length > 0 ? lacking(found) : sure(false);
}

function portLink(build: Build, display: Display): Sentence {
  const output = outputNamed(build, display.at.port);
  return 'missingFacts' in output ? sentence`${display.at.port}` : linkWords(output.name, output.link);
}
