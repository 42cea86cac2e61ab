// All memory together against the most that board and processor take.
import { figure, least, type Figure } from '../../figures/figure';
import { memoryCapacity } from '../../figures/memory';
import { alike } from '../../figures/memory-sizes';
import { sentence } from '../../figures/sentence';
import { binding } from '../../figures/storage';
import { atMost } from '../../figures/truth';
import { check } from '../check';
import { outcome, swap } from '../kit';
import { atMemory } from './memory-kit';

export default check({
  id: 'memory-over-limit',
  area: 'memory',
  grade: 'stop',
  what: 'All modules together hold no more than board and processor take.',
  why: 'What lies beyond the limit is not addressed: the machine shows less memory, or does not start.',
  source: 'common practice: board and processor state their most memory',
  examples: [
    {
      faulty: `
parts:
  board: { memory: { most: 128 GB } }
  memory: [{ capacity: 48 GB, count: 4 }]
# ^^^^^^
`,
      instead: 'Choose smaller modules, or a board and processor that take 192 GB.',
    },
  ],
  test(build, report) {
    const { board, processor, memory } = build.parts;
    if (memory.length === 0) return;
    const limits = [
      ...(board ? [figure(board.part.memory.most, `most memory of ${board.label}`)] : []),
      ...(processor ? [figure(processor.part.memory.most, `most memory of ${processor.label}`)] : []),
    ];
    if (limits.length === 0) return;
    const [capacity, ...alikes] = alike([memoryCapacity(build), ...limits]) as [Figure, ...Figure[]];
    const limit = least('most memory taken', alikes);
    const bound = binding(limit);
    report(
      outcome(atMemory(build), atMost(capacity, limit), {
        broken: () => sentence`The modules hold ${capacity} together; ${bound.label} is ${bound}.`,
        fixes: () => [
          ...memory.map((kit) => swap(kit)),
          ...(board ? [swap(board)] : []),
          ...(processor ? [swap(processor)] : []),
        ],
      }),
    );
  },
});
