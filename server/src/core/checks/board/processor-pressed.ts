// A note that has the processor pressed into its socket.
import type { Build } from '../../build/build';
import { pinsOn } from '../../trade/names';
import { check } from '../check';
import { change } from '../kit';
import { slipsIn } from '../work/steps-kit';

export default check({
  id: 'processor-pressed',
  area: 'board',
  grade: 'harm',
  caution: 'socket-contacts',
  what:
    'No note among the steps has the processor pressed down. Notes are read clause by clause: a verb of force, ' +
    'what it is done to, and what denies it. A clause that names another part is about that part.',
  why:
    'A processor lies in its socket by its own weight; only lever and frame press. Pressed by hand it bends ' +
    'pins or springs, on the board or under the processor.',
  source: 'makers’ handbooks of boards and processors; common practice',
  limits: ['Notes are read by word lists, in English only; a clause that denies it says nothing.'],
  remarks: ['Words that leave a doubt are a note to read the sentence again.'],
  examples: [
    {
      faulty: `
steps:
  - equalise
  - do: fit processor
    note: Line up the marks and press the processor down.
#                               ^^^^^^^^^^^^^^^^^^^
`,
      mended: `
steps:
  - equalise
  - do: fit processor
    note: "Lift the lever, lay the processor in by its marks without force, close the lever."
`,
    },
  ],
  test: (build, report) =>
    slipsIn(
      build,
      report,
      {
        'processor pressed': {
          done: whatBends(build),
          rather: 'lay it in by its marks, without force',
          instead: 'Lift the lever, lay the processor in by its marks without force, close the lever.',
          perhaps: 'the processor were pressed',
        },
      },
      (step) =>
        step.kind === undefined
          ? { fixes: () => [change(step.group.do, 'fit processor', 'Write “fit processor”')] }
          : {},
    ),
});

/** Where the pins stand decides what is ruined; where no file names a known socket, it is either. */
function whatBends(build: Build): string {
  const { board, processor } = build.parts;
  const pins = pinsOn(board?.part.socket.value ?? processor?.part.socket.value ?? '');
  if (pins === 'board') return 'have the processor pressed, which bends the contacts on the board';
  return pins === 'processor'
    ? 'have the processor pressed, which bends the processor’s own pins'
    : 'have the processor pressed, which bends pins or contacts';
}
