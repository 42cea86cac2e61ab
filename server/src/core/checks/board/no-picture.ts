// Where the picture comes from: the processor’s graphics or a card, and the output a display is plugged into.
import type { Build, Placed } from '../../build/build';
import { drivenByCard } from '../../figures/display';
import { missing } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { any, fits, given, lacking, sure, type Truth } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, putOn, swap, type FixIdea } from '../kit';

export default check({
  id: 'no-picture',
  area: 'board',
  grade: 'stop',
  what: 'Something drives the display, and each display is plugged into an output that is driven.',
  why:
    'A machine whose processor has no graphics runs dark without a card, and stays dark when the display is ' +
    'on the board’s output.',
  source: 'common practice',
  examples: [
    {
      faulty: `
parts:
  board: { display-outputs: { HDMI: { link: HDMI 2.0 } } }
  processor: { graphics: false }
  graphics: { outputs: { DP_1: { link: DisplayPort HBR3 } } }
  displays: [{ port: HDMI }]
#                    ^^^^
`,
      mended: `
parts:
  board: { display-outputs: { HDMI: { link: HDMI 2.0 } } }
  processor: { graphics: false }
  graphics: { outputs: { DP_1: { link: DisplayPort HBR3 } } }
  displays: [{ port: DP_1 }]
`,
    },
  ],
  test(build, report) {
    const { processor, graphics, board, displays } = build.parts;
    if (!processor) return;
    const drives = fits(processor.part.graphics, `graphics of ${processor.label}`, (has) => has);
    report(
      outcome(at(processor, undefined, 'graphics'), any(drivenByCard(build), drives, drivenByController(board)), {
        broken: () =>
          graphics.length === 0
            ? sentence`${processor.label} drives no display and the build has no graphics card.`
            : sentence`${processor.label} drives no display and no graphics card of the build has an output.`,
        fixes: () => [swap(processor), ...graphics.map(swap)],
      }),
    );
    const onBoard = board?.part['display-outputs'];
    for (const display of displays) {
      const port = display.at.port;
      if (port.value === undefined || !onBoard || onBoard.value?.has(port.value) === false || onCard(build, port.value))
        continue;
      report(
        outcome(
          at(display, port),
          given(
            onBoard.value
              ? any(drives, drivenByController(board, port.value))
              : any(drives, lacking([missing(onBoard, `display outputs of ${board!.label}`)])),
            port,
            onBoard,
          ),
          {
            broken: () => sentence`The display is on the board’s output ${port}, which the processor does not drive.`,
            fixes: () => cardOutputs(build, display),
          },
        ),
      );
    }
  },
});

/**
 * Whether the board’s management controller drives a picture: on an output said to be its own, on the one output that
 * is named or on any, or over the network. Processors for boards that take registered modules alone have no graphics,
 * so that an output of such a board is its controller’s. Source: common practice.
 */
function drivenByController(board: Placed<'board'> | undefined, port?: string): Truth {
  if (!board) return sure(false);
  const { 'display-outputs': outputs, firmware, memory } = board.part;
  const own = [...(outputs.value ?? [])].filter(([name]) => port === undefined || name === port);
  const said = own.find(([, output]) => output.from.value === 'management controller');
  if (said) return sure(true, said[1].from);
  const unsaid = own.some(([, output]) => output.from.value === undefined);
  if (unsaid && isForServers(memory)) return sure(true, outputs, memory.module, memory['module-classes']);
  return port === undefined && firmware['update-by-controller'].value === true
    ? sure(true, firmware['update-by-controller'])
    : sure(false);
}

function isForServers({ module, 'module-classes': classes }: Placed<'board'>['part']['memory']): boolean {
  const taken = [module, ...(classes.value ?? [])].flatMap(({ value }) => (value === undefined ? [] : [value]));
  return taken.length > 0 && taken.every((one) => one === 'RDIMM' || one === 'LRDIMM' || one === 'MRDIMM');
}

function onCard(build: Build, port: string): boolean {
  return build.parts.graphics.some((card) => card.part.outputs.value?.has(port));
}

function* cardOutputs(build: Build, display: Placed<'displays'>): Iterable<FixIdea | undefined> {
  const taken = new Set(build.parts.displays.map((one) => one.at.port.value));
  for (const card of build.parts.graphics) {
    for (const name of card.part.outputs.value?.keys() ?? [])
      if (!taken.has(name)) yield putOn(display, 'port', name, `Plug the display into ${name}`);
  }
}
