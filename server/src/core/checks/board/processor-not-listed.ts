// The processor against the board’s support list.
import { processorListed } from '../../figures/firmware';
import { sentence } from '../../figures/sentence';
import { lacking, sure } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, swap } from '../kit';

export default check({
  id: 'processor-not-listed',
  area: 'board',
  grade: 'stop',
  what: 'The board lists the processor’s family or model.',
  why: 'A processor that fits the socket but is on no list of the board may never start there, whatever the firmware.',
  source: 'common practice: the board maker’s processor support list',
  examples: [
    {
      faulty: `
parts:
  board:
    processors: [{ family: Calder C6, since: "1.02" }]
  processor: { family: Calder C7, model: C7 840 }
# ^^^^^^^^^
`,
      instead: 'Choose a processor that the board lists, or a board that lists the processor.',
    },
  ],
  test(build, report) {
    const { board, processor } = build.parts;
    const listed = processorListed(build);
    if (!board || !processor || !listed) return;
    const truth = listed.line
      ? sure(true, ...listed.uses)
      : listed.missingFacts.length > 0
        ? lacking(listed.missingFacts, ...listed.uses)
        : sure(false, ...listed.uses);
    report(
      outcome(at(processor), truth, {
        broken: () =>
          sentence`${board.label} does not list ${processor.label}, neither by family (${processor.part.family}) nor by
            model.`,
        fixes: () => [swap(processor), swap(board)],
      }),
    );
  },
});
