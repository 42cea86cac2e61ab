// What board and cards draw while the machine is off, against the supply’s standby rail.
import { sentence } from '../../figures/sentence';
import { standbyDraw, standbyLimit } from '../../figures/standby';
import { atMost } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, swap } from '../kit';

export default check({
  id: 'standby-rail-overloaded',
  area: 'power',
  grade: 'stop',
  what: 'What board and cards draw while the machine is off stays within the supply’s standby rail.',
  why:
    'A management controller, or cards that wake the machine, run from that rail alone. Overloaded, it shuts down, ' +
    'and the machine does not even start; a rail without protection may be damaged.',
  source:
    'ATX Version 3 design guide, doc. 336521, section on +5VSB; ATX12V Power Supply Design Guide 2.0, tables 4, 6',
  limits: [
    'It is judged where a part states what it draws while the machine is off.',
    'Devices that charge at USB ports meanwhile are not among them.',
  ],
  examples: [
    {
      faulty: `
parts:
  board: { draw: { standby: 9 W } }
  cards: [{ standby-draw: 5 W }]
  supply: { rails: { +5VSB: { voltage: 5 V, current: 2.5 A } } }
# ^^^^^^
`,
      instead: 'Choose a supply with a stronger standby rail, or leave out a card that runs while the machine is off.',
    },
  ],
  test(build, report) {
    const { supply, board } = build.parts;
    const drawn = standbyDraw(build);
    // A brick outside the case has no rail of its own for standby: the board makes it.
    if (!supply || !drawn || supply.part.form.value === 'external') return;
    const limit = standbyLimit(supply);
    report(
      outcome(at(supply, undefined, 'standby'), atMost(drawn, limit), {
        broken: () =>
          sentence`Board and cards draw ${drawn} while the machine is off; the supply’s standby rail delivers
            ${limit}.`,
        fixes: () => [swap(supply)],
        ...(board && !board.part.draw.standby.entry
          ? { usual: () => `${board.label} draws little while the machine is off` }
          : {}),
      }),
    );
  },
});
