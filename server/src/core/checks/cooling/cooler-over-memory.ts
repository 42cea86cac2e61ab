// A cooler that reaches over the memory slots, against the height of the modules.
import { isLiquid } from '../../figures/coolers';
import { figure } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { any, atMost } from '../../figures/truth';
import { BARE_MODULE_MM } from '../../trade/memory';
import { check } from '../check';
import { at, outcome, swap } from '../kit';

export default check({
  id: 'cooler-over-memory',
  area: 'cooling',
  grade: 'stop',
  what: 'Where the cooler reaches over the memory slots, the modules stand under it.',
  why:
    'A module that is too tall keeps the cooler off the processor, or the fan has to sit so high that the ' +
    'case does not close.',
  source: 'common practice',
  examples: [
    {
      faulty: `
parts:
  board: { socket-to-memory: 44 mm }
  cooler: { overhang-memory: 52 mm, memory-room: 40 mm }
  memory: [{ height: 44 mm }]
#          ^^^^^^^^^^^^^^^^^
`,
      instead: 'Choose modules of 40 mm or lower, or a cooler that stays clear of the memory.',
    },
  ],
  test({ parts: { board, cooler, memory } }, report) {
    if (!board || !cooler || isLiquid(cooler)) return;
    const reach = figure(cooler.part['overhang-memory'], `reach of ${cooler.label} towards the memory`);
    const distance = figure(board.part['socket-to-memory'], `distance from socket to memory on ${board.label}`);
    const room = figure(cooler.part['memory-room'], `room for memory under ${cooler.label}`);
    for (const kit of memory) {
      const height = figure(kit.part.height, `height of ${kit.label}`);
      report(
        outcome(at(kit), any(atMost(reach, distance), atMost(height, room)), {
          broken: () =>
            sentence`The cooler reaches ${reach} over memory that begins at ${distance}, and leaves ${room} under it;
              ${kit.label} is ${height} tall.`,
          fixes: () => [swap(kit), swap(cooler)],
          ...(!cooler.part['memory-room'].node && height.hi <= BARE_MODULE_MM
            ? { usual: () => `${kit.label}, no taller than a bare module, stands under ${cooler.label}` }
            : {}),
        }),
      );
    }
  },
});
