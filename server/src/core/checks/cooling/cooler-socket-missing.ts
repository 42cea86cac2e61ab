// The cooler's mounting kits against the socket.
import { spoken } from '../../figures/lists';
import { sentence } from '../../figures/sentence';
import { agree } from '../../figures/truth';
import { listsSocket } from '../../trade/processor-names';
import { check } from '../check';
import { at, outcome, swap } from '../kit';

export default check({
  id: 'cooler-socket-missing',
  area: 'cooling',
  grade: 'stop',
  what: 'The cooler has a mounting kit for the board’s socket.',
  why:
    'Sockets differ in their holes, their height and their pressure; without its kit a cooler cannot be ' +
    'fixed at all.',
  source: 'common practice; socket names as DMTF DSP0134 lists them',
  examples: [
    {
      faulty: `
parts:
  board: { socket: LGA1851 }
  cooler: { sockets: [AM5, AM4] }
#                    ^^^^^^^^^^
`,
      instead: 'Order the maker’s mounting kit for the socket, or choose another cooler.',
    },
  ],
  test({ parts: { board, processor, cooler } }, report) {
    const holder = board ?? processor;
    if (!holder || !cooler) return;
    const { socket } = holder.part;
    const { sockets } = cooler.part;
    const kitFor = (name: string): boolean =>
      sockets.value!.some((one) => one.value !== undefined && listsSocket(one.value, name));
    report(
      outcome(
        at(cooler, sockets),
        agree(sockets, `sockets of ${cooler.label}`, socket, `socket of ${holder.label}`, (_, name) => kitFor(name)),
        {
          broken: () =>
            sockets.value!.length === 0
              ? sentence`${cooler.label} has no mounting kit for ${socket}, nor for any other socket.`
              : sentence`${cooler.label} has no mounting kit for ${socket}, only for ${spoken(sockets.value!)};
                order the kit.`,
          fixes: () => [swap(cooler)],
        },
      ),
    );
  },
});
