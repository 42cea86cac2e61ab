// The memory promised against what all modules hold.
import type { Build } from '../../build/build';
import { drivenByCard } from '../../figures/display';
import { figure, type Figure } from '../../figures/figure';
import { boardSlots, memoryCapacity, moduleCapacity, slotsNamed } from '../../figures/memory';
import { alike } from '../../figures/memory-sizes';
import { sentence } from '../../figures/sentence';
import { any, atLeast, fits, lessThan, not } from '../../figures/truth';
import type { Fact } from '../../parts/fact';
import { inUnit, type Quantity } from '../../quantity';
import { check } from '../check';
import { atKey, change, outcome, putOn, swap, type FixIdea, type Reporter } from '../kit';

export default check({
  id: 'memory-capacity-short',
  area: 'memory',
  grade: 'shortfall',
  what: 'All modules together hold the memory that is promised.',
  why: 'Work that does not fit into memory goes to the drive, and slows to its pace.',
  source: 'JEDEC Standard No. 21-C: capacity of modules and ranks',
  limits: [
    'How much the processor’s graphics take no file states; that they take some is common practice.',
    'A GB of memory is 2³⁰ bytes; only where GB and GiB meet are both turned into GiB.',
  ],
  examples: [
    {
      faulty: `
parts:
  memory: [{ capacity: 16 GB, count: 2 }]
expect:
  memory: { capacity: 64 GB }
#                     ^^^^^
`,
      mended: `
parts:
  memory: [{ capacity: 16 GB, count: 2 }]
expect:
  memory: { capacity: 32 GB }
`,
    },
  ],
  test(build, report) {
    const promise = build.file.expect.memory.capacity;
    if (!promise.node || build.parts.memory.length === 0) return;
    const [held, wanted] = alike([memoryCapacity(build), figure(promise, 'memory promised')]) as [Figure, Figure];
    graphicsShare(build, held, wanted, promise, report);
    report(
      outcome(atKey(build, promise), atLeast(held, wanted), {
        broken: () => sentence`The build promises ${wanted} of memory; its modules hold ${held}.`,
        *fixes() {
          yield* moreModules(build, wanted);
          for (const kit of build.parts.memory) yield swap(kit);
          const size = `${Math.floor(inUnit(held.lo, held.unit ?? 'GB'))} ${held.unit ?? 'GB'}`;
          if (held.lo > 0) yield change(promise, size, `Lower the promise to ${size}`);
        },
      }),
    );
  },
});

/** Graphics of the processor, where they drive the displays, take their share out of the memory that is fitted. */
function graphicsShare(build: Build, held: Figure, wanted: Figure, promise: Fact<Quantity>, report: Reporter): void {
  const { processor } = build.parts;
  if (!processor || drivenByCard(build).is || held.hi < wanted.lo) return;
  const own = processor.part.graphics;
  const whole = lessThan(wanted, held);
  report(
    outcome(atKey(build, promise), any(whole, not(fits(own, `graphics of ${processor.label}`, (has) => has))), {
      grade: 'note',
      broken: () =>
        sentence`All of the ${held} fitted is promised; the processor’s graphics take part of it. Fit more, or promise
            less.`,
    }),
  );
}

/**
 * More of the same modules, where the board has slots for them and the build leaves their places to the board’s
 * order.
 */
function* moreModules({ parts: { memory, board } }: Build, wanted: Figure): Iterable<FixIdea | undefined> {
  const [kit] = memory;
  if (memory.length !== 1 || !kit || !board || slotsNamed(kit)) return;
  const [each] = alike([moduleCapacity(kit), wanted]);
  const count = Math.ceil(wanted.hi / each!.lo);
  if (!(count <= boardSlots(board).lo)) return;
  const title = `Set the count to ${count}`;
  yield kit.at.count.node ? change(kit.at.count, count, title) : putOn(kit, 'count', count, title);
}
