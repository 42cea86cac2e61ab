// A filled slot that halves the lanes of another, whose card or drive then has fewer than it can use.
import { derive, figure, missing, unknown, type Figure, type Missing } from '../../figures/figure';
import { endOf, linkRate, wiringOf } from '../../figures/lanes';
import { halvesNone, sharesNothing } from '../../figures/sharing';
import { sentence, type Sentence } from '../../figures/sentence';
import { freeSlots, seatOf, seated, type Seated, type Slot } from '../../figures/slots';
import { all, any, atLeast, atMost, given, lacking, sure, type Truth } from '../../figures/truth';
import type { Build } from '../../build/build';
import type { Fact } from '../../parts/fact';
import type { Quantity } from '../../quantity';
import { check } from '../check';
import { at, outcome, putOn, type FixIdea } from '../kit';

export default check({
  id: 'slot-takes-lanes',
  area: 'storage',
  grade: 'note',
  what: 'No filled slot halves the lanes of another whose card or drive can use more than half.',
  why:
    'A drive in the wrong socket costs the graphics card half its link, and nothing says so but the board’s ' +
    'handbook.',
  source: 'PCI Express Base Specification: line rate × coding ÷ 8; the board’s handbook, page on shared lanes',
  remarks: [
    'It is a shortfall where half the link is less than the card says it needs, or than the drive is promised to ' +
      'read or write at; else a note, since most cards lose little by it.',
    'Only what filling a slot does to others is judged; how a slot is wired is judged by ' + '`card-lanes-fewer`.',
  ],
  examples: [
    {
      faulty: `
parts:
  board:
    slots:
      PCIE_1: { kind: PCIe, length: x16, lanes: 16, generation: 4, halves: [], takes-from: [] }
      M2_3: { kind: M.2, carries: [PCIe 4 x4], halves: [PCIE_1], takes-from: [] }
  graphics: { link: PCIe 4 x16, slot: PCIE_1 }
  drives:
    - { bus: NVMe, link: PCIe 4 x4, slot: M2_3 }
#                                         ^^^^
`,
      instead: 'Put the drive into a socket that takes no lanes from the card.',
    },
  ],
  test(build, report) {
    if (!build.parts.board) return;
    const seats = onLanes(build);
    for (const placed of seated(build)) {
      const seat = seatOf(build, placed);
      if (seat.name === undefined) continue;
      const losers = others(build, seats, seat).map((other) => ({ ...other, truth: unharmed(seat, other) }));
      const broken = losers.filter(({ truth }) => truth.is === false);
      const needy = broken.find((loser) => needsMore(build, loser));
      const hit = needy ?? broken[0];
      report(
        outcome(
          at(placed, placed.at.slot),
          losers.length === 0 ? sure(true) : all(...losers.map(({ truth }) => truth)),
          {
            ...(needy ? { grade: 'shortfall' as const } : {}),
            broken: () =>
              sentence`${placed.label} in ${placed.at.slot} halves ${hit!.name}: ${hit!.placed.label} there keeps
                ${hit!.half} of its ${hit!.own} lanes, ${rates(build, hit!)}.`,
            fixes: () => moves(build, placed),
            ...(losers.every(
              (loser) =>
                loser.truth.is === true ||
                sharesNothing(build, seat.slot, loser.slot) ||
                halvesNone(seat.slot, loser.slot),
            )
              ? { usual: () => `filling ${seat.name} costs the other slots in use no lanes` }
              : {}),
          },
        ),
      );
    }
  },
});

interface Lanes {
  readonly placed: Seated;
  readonly name: string;
  readonly slot?: Slot;
  readonly missingFacts: readonly Missing[];
}
interface Other extends Lanes {
  readonly own: Figure;
  readonly half: Figure;
}

/** The parts on PCIe links, with the slots they name. */
function onLanes(build: Build): readonly Lanes[] {
  return seated(build).flatMap((placed) => {
    const { name, slot, missingFacts } = seatOf(build, placed);
    if (
      name === undefined ||
      ('bus' in placed.part && placed.part.bus.value !== undefined && placed.part.bus.value !== 'NVMe')
    )
      return [];
    return [{ placed, name, ...(slot ? { slot } : {}), missingFacts }];
  });
}

/** Those whose slot a seat halves, or may halve, with the lanes they can use and what half of the slot’s would be. */
function others(build: Build, seats: readonly Lanes[], seat: ReturnType<typeof seatOf>): Other[] {
  return seats
    .filter(({ name }) => name !== seat.name && mayHalve(seat, name) !== false)
    .map((other) => {
      const { placed, name, slot, missingFacts } = other;
      const half = derive(
        `half the lanes of ${name}`,
        'count',
        [slot ? wiringOf(build, slot).lanes : unknown('count', `lanes of ${name}`, missingFacts)],
        'lanes ÷ 2',
        (lanes) => Math.ceil(lanes / 2),
      );
      return { ...other, own: endOf(placed.part.link, placed.label).lanes, half };
    });
}

/** Whether a filled slot halves another; undefined where its list is not stated, or cannot be read whole. */
function mayHalve({ slot }: ReturnType<typeof seatOf>, name: string): boolean | undefined {
  const list = slot?.halves.value;
  if (list?.some((item) => item.value === name)) return true;
  return list?.every((item) => item.value !== undefined) ? false : undefined;
}

/** Whether a part keeps all the lanes it can use while a seat is filled. */
function unharmed(seat: ReturnType<typeof seatOf>, other: Other): Truth {
  const enough = given(atMost(other.own, other.half), seat.slot?.halves, other.placed.at.slot);
  if (mayHalve(seat, other.name)) return enough;
  return any(enough, lacking(seat.slot ? [missing(seat.slot.halves, `what ${seat.name} halves`)] : seat.missingFacts));
}

/** Whether half the link is less than what a card says it needs, or a drive is promised to move. */
function needsMore(build: Build, { placed, slot, half }: Other): boolean {
  const now = linkRate(`halved link of ${placed.label}`, [
    endOf(placed.part.link, placed.label),
    { ...wiringOf(build, slot!), lanes: half },
  ]);
  return needsOf(build, placed).some((need) => need.value && atLeast(now, figure(need, 'rate needed')).is === false);
}

function needsOf(build: Build, placed: Seated): readonly Fact<Quantity>[] {
  if ('rate-needed' in placed.part) return [placed.part['rate-needed']];
  const name = 'name' in placed.at ? placed.at.name.value : undefined;
  const promise = build.file.expect.drives.value?.get(name ?? '');
  return promise ? [promise.read, promise.write] : [];
}

function rates(build: Build, { placed, name, slot, half }: Other): Sentence {
  const own = endOf(placed.part.link, placed.label);
  const wired = wiringOf(build, slot!);
  const now = linkRate(`halved link of ${placed.label}`, [own, { ...wired, lanes: half }]);
  return sentence`${now} instead of ${linkRate(`link of ${placed.label} in ${name}`, [own, wired])}`;
}

function* moves(build: Build, placed: Seated): Iterable<FixIdea | undefined> {
  for (const [name] of freeSlots(build)) yield putOn(placed, 'slot', name, `Move ${placed.label} to ${name}`);
}
