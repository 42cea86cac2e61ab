// The cooler's mass against what board and cooler bear, standing and on the way.
import { isLiquid } from '../../figures/coolers';
import { figure } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { any, atMost, sure } from '../../figures/truth';
import type { Placed } from '../../build/build';
import { listsSocket } from '../../trade/processor-names';
import { check } from '../check';
import { aspectOf, at, outcome, put, swap } from '../kit';

export default check({
  id: 'cooler-too-heavy',
  area: 'cooling',
  grade: 'harm',
  what: 'The cooler weighs no more than the board bears standing up, and no more on the way than its maker lets hang.',
  why: 'A heavy cooler on a standing board bends it over the years, and on the way a jolt tears its mount out.',
  source: 'common practice; the masses, by the handbooks of board and cooler',
  caution: 'hanging-cooler',
  examples: [
    {
      faulty: `
parts:
  board: { cooler-mass-limit: 1000 g }
  cooler: { mass: 1150 g }
#                 ^^^^^^
`,
      instead: 'Choose a lighter cooler, or a case in which the board lies flat.',
    },
  ],
  test(build, report) {
    const { board, cooler } = build.parts;
    if (!cooler || isLiquid(cooler)) return;
    const mass = figure(cooler.part.mass, `mass of ${cooler.label}`);
    if (board) {
      const borne = figure(board.part['cooler-mass-limit'], `cooler mass that ${board.label} bears`);
      report(
        outcome(at(cooler, cooler.part.mass), atMost(mass, borne), {
          broken: () => sentence`The cooler weighs ${mass}; a standing ${board.label} bears ${borne}.`,
          fixes: () => [swap(cooler), swap(board)],
          ...(!board.part['cooler-mass-limit'].node && isMadeFor(cooler, board)
            ? { usual: () => `${board.label} bears a cooler that is made for its socket, such as ${cooler.label}` }
            : {}),
        }),
      );
    }
    const { transport, cooler: left } = build.file['hand-over'];
    if (transport.value !== 'by car' && transport.value !== 'by carrier') return;
    const hanging = figure(cooler.part['mass-limit-standing'], `mass that ${cooler.label} may have on the way`);
    report(
      outcome(
        aspectOf(at(cooler, cooler.part.mass), 'on the way'),
        any(sure(left.value === 'taken off', left), atMost(mass, hanging)),
        {
          broken: () =>
            sentence`The cooler weighs ${mass} and travels ${transport} on its board; above ${hanging}
              its maker wants it
              taken off.`,
          fixes: () => [put(build.doc, ['hand-over', 'cooler'], 'taken off', 'Take the cooler off for the way')],
        },
      ),
    );
  },
});

/** Whether a cooler lists the board’s socket: its maker then vouches for it there. */
function isMadeFor({ part: { sockets } }: Placed<'cooler'>, { part: { socket } }: Placed<'board'>): boolean {
  const name = socket.value;
  return (
    name !== undefined && (sockets.value ?? []).some(({ value }) => value !== undefined && listsSocket(value, name))
  );
}
