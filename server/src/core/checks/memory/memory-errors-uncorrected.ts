// Error correction promised: modules, board and processor must all do it.
import { sentence } from '../../figures/sentence';
import { all, fits, type Truth } from '../../figures/truth';
import { check } from '../check';
import { atKey, outcome, swap, takeOut } from '../kit';

export default check({
  id: 'memory-errors-uncorrected',
  area: 'memory',
  grade: 'shortfall',
  what: 'Where error correction is promised, every module carries the bits for it, and board and processor use them.',
  why: 'Error correction needs all three; with one of them missing the machine runs on and corrects nothing.',
  source: 'common practice; JEDEC module standards: 72 or 80 bits a rank',
  examples: [
    {
      faulty: `
parts:
  board: { memory: { ecc: true } }
  processor: { memory: { ecc: true } }
  memory: [{ ecc: false, count: 2 }]
expect:
  memory: { ecc: true }
#                ^^^^
`,
      mended: `
parts:
  board: { memory: { ecc: true } }
  processor: { memory: { ecc: true } }
  memory: [{ ecc: false, count: 2 }]
expect:
  memory: {}
`,
    },
  ],
  test(build, report) {
    const promise = build.file.expect.memory.ecc;
    const { board, processor, memory } = build.parts;
    if (promise.value !== true || memory.length === 0) return;
    const does = (fact: Parameters<typeof fits<boolean>>[0], label: string): { label: string; truth: Truth } => ({
      label,
      truth: fits(fact, `error correction of ${label}`, (ecc) => ecc),
    });
    const links = [
      ...memory.map((kit) => does(kit.part.ecc, kit.label)),
      ...(board ? [does(board.part.memory.ecc, board.label)] : []),
      ...(processor ? [does(processor.part.memory.ecc, processor.label)] : []),
    ];
    report(
      outcome(atKey(build, promise), all(...links.map(({ truth }) => truth)), {
        broken: () =>
          sentence`Error correction is promised; there is none in ${links
            .filter(({ truth }) => truth.is === false)
            .map(({ label }) => label)
            .join(', ')}.`,
        fixes: () => [
          ...memory.map((kit) => swap(kit)),
          ...(board ? [swap(board)] : []),
          ...(processor ? [swap(processor)] : []),
          takeOut(promise, 'Take the promise of error correction out'),
        ],
      }),
    );
  },
});
