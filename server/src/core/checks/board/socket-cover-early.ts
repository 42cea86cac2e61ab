// The socket’s cover taken off before the processor goes in.
import { sentence } from '../../figures/sentence';
import { firstStep } from '../../figures/steps';
import { given, sure } from '../../figures/truth';
import { carriedIn } from '../../trade/names';
import { check } from '../check';
import { atStep, moveStep, stepAnswer } from '../work/steps-kit';

const covering = new Set(['take off socket cover'] as const);
const fitting = new Set(['fit processor'] as const);

export default check({
  id: 'socket-cover-early',
  area: 'board',
  grade: 'harm',
  caution: 'socket-contacts',
  what: 'The socket’s cover stays on until the processor goes in.',
  why:
    'Bare socket contacts bend at the touch of a finger, a sleeve or a screw, and a board with a bent one is ' +
    'lost. Most handbooks leave the cover on until the closing frame pushes it off; where a handbook has it ' +
    'off right before, follow the handbook.',
  source: 'makers’ handbooks of boards; common practice',
  examples: [
    {
      faulty: `
steps:
  - equalise
  - take off socket cover
#   ^^^^^^^^^^^^^^^^^^^^^
  - fit memory
  - fit processor
`,
      mended: `
steps:
  - equalise
  - fit memory
  - fit processor
  - take off socket cover
`,
    },
  ],
  test(build, report) {
    const cover = firstStep(build, covering);
    if (!cover) return;
    const fit = firstStep(build, fitting);
    // One that is clipped under its heat sink goes in with it, onto bare contacts.
    const carried = carriedIn(build.parts.board?.part.socket.value ?? '');
    report(
      stepAnswer(
        build,
        atStep(build, cover),
        given(sure(!!fit && (fit.index < cover.index || carried)), build.parts.board?.part.socket),
        {
          broken: () =>
            fit
              ? sentence`${cover.label} comes before ${fit.label}; the contacts lie bare until then, and most handbooks
              leave it on until the frame closes.`
              : sentence`${cover.label} is followed by no step that fits a processor: the contacts stay bare.`,
          ...(fit?.index === cover.index + 1 ? { grade: 'note' as const } : {}),
          fixes: () => (fit ? [moveStep(build, cover, fit.index, `Move ${cover.label} behind ${fit.label}`)] : []),
        },
      ),
    );
  },
});
