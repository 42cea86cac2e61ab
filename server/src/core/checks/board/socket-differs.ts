// The processor’s socket against the board’s.
import { sameSocket } from '../../trade/processor-names';
import { sentence } from '../../figures/sentence';
import { agree } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, swap } from '../kit';

export default check({
  id: 'socket-differs',
  area: 'board',
  grade: 'stop',
  what: 'Processor and board have the same socket.',
  why: 'A processor for another socket does not go in; forcing it bends contacts.',
  source: 'common practice; socket names as DMTF DSP0134 lists them',
  examples: [
    {
      faulty: `
parts:
  board: { socket: LGA1851 }
  processor: { socket: AM5 }
# ^^^^^^^^^
`,
      instead: 'Choose a processor for the board’s socket, or a board for the processor’s.',
    },
  ],
  test({ parts: { board, processor } }, report) {
    if (!board || !processor) return;
    const has = board.part.socket;
    const wants = processor.part.socket;
    report(
      outcome(
        at(processor),
        agree(wants, `socket of ${processor.label}`, has, `socket of ${board.label}`, sameSocket),
        {
          broken: () => sentence`The processor fits ${wants}; the board has ${has}.`,
          fixes: () => [swap(processor), swap(board)],
        },
      ),
    );
  },
});
