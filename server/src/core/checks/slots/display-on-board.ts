// Displays on the board's outputs while the card that was bought for them drives none.
import type { Build } from '../../build/build';
import { displaysOn, outputs, takes, type Display, type Output } from '../../figures/display';
import { missing } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { any, given, lacking, sure, type Truth } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, putOn, type FixIdea } from '../kit';

export default check({
  id: 'display-on-board',
  area: 'slots',
  grade: 'shortfall',
  what: 'Where the build has a graphics card, some display hangs on it, not all on the board’s outputs.',
  why:
    'On the board’s output the processor’s graphics draws the picture, and the card beside it does nothing: the ' +
    'commonest slip when a machine is first plugged in.',
  source: 'common practice',
  limits: ['A card that only computes needs no display: accept the finding and say so.'],
  examples: [
    {
      faulty: `
parts:
  board: { display-outputs: { HDMI: { link: HDMI 2.0 } } }
  processor: { graphics: true }
  graphics: { outputs: { DP_1: { link: DisplayPort HBR3 } } }
  displays: [{ port: HDMI, inputs: { HDMI: { link: HDMI 2.0 }, DP: { link: DisplayPort HBR3 } } }]
#                    ^^^^
`,
      mended: `
parts:
  board: { display-outputs: { HDMI: { link: HDMI 2.0 } } }
  processor: { graphics: true }
  graphics: { outputs: { DP_1: { link: DisplayPort HBR3 } } }
  displays: [{ port: DP_1, inputs: { HDMI: { link: HDMI 2.0 }, DP: { link: DisplayPort HBR3 } } }]
`,
    },
  ],
  test(build, report) {
    const { list, decidedBy, missingFacts } = outputs(build);
    const card = build.parts.graphics[0];
    if (!card) return;
    for (const display of build.parts.displays) {
      const { port } = display.at;
      const own = list.filter((output) => output.name === port.value);
      const isUnknown = own.length === 0 && port.value !== undefined && missingFacts.length > 0;
      if (own.some(isOnCard) || (own.length === 0 && !isUnknown)) continue;
      const truth = isUnknown ? any(cardIsUsed(build), lacking(missingFacts)) : cardIsUsed(build);
      report(
        outcome(at(display, port), given(truth, port, ...decidedBy), {
          broken: () =>
            sentence`${display.label} is on the board’s output ${port}, and no display is on ${card.label}, which then
              does nothing. Plug it into the card.`,
          fixes: () => moves(build, display),
        }),
      );
    }
  },
});

const isOnCard = ({ on }: Output): boolean => on.role === 'graphics';

/** Whether some display, or a promise of one, is on a card, or the cards have no outputs at all. */
function cardIsUsed(build: Build): Truth {
  const onCards = outputs(build).list.filter(isOnCard);
  const promised = build.file.expect.displays.value?.map(({ port }) => port.value) ?? [];
  const isUsed = onCards.some(({ name }) => displaysOn(build, name).length > 0 || promised.includes(name));
  const unsaid = [
    ...build.parts.graphics.flatMap(({ part, label }) =>
      part.outputs.value ? [] : [missing(part.outputs, `outputs of ${label}`)],
    ),
    ...build.parts.displays.flatMap((one) =>
      one.at.port.value === undefined ? [missing(one.at.port, `output of ${one.label}`)] : [],
    ),
  ];
  return any(
    sure(isUsed || (unsaid.length === 0 && onCards.length === 0)),
    unsaid.length > 0 ? lacking(unsaid) : sure(false),
  );
}

function* moves(build: Build, display: Display): Iterable<FixIdea | undefined> {
  for (const output of outputs(build).list)
    if (isOnCard(output) && takes(display, output) && displaysOn(build, output.name).length === 0)
      yield putOn(display, 'port', output.name, `Plug ${display.label} into ${output.name}`);
}
