// A drive's bus against the buses that its slot or port really carries.
import type { Build } from '../../build/build';
import { missing } from '../../figures/figure';
import { spoken } from '../../figures/lists';
import { sentence } from '../../figures/sentence';
import { carriesBus, linkBuses, seatOf, type Seat, type Slot } from '../../figures/slots';
import { hostOf, portTakes } from '../../figures/drive-places';
import { portMissing, type Drive } from '../../figures/storage';
import { fits, given, lacking, sure, type Truth } from '../../figures/truth';
import { driveBuses } from '../../parts/devices';
import type { Link } from '../../trade/links';
import { check } from '../check';
import { at, change, outcome, swap, takeOut, type FixIdea, type Outcome } from '../kit';
import { moves } from './storage-kit';

export default check({
  id: 'drive-bus-not-carried',
  area: 'storage',
  grade: 'stop',
  what: 'Each drive speaks a bus that its slot or port carries.',
  why:
    'An M.2 module goes into any socket with its notch: on a bus that the socket does not carry it is never ' +
    'seen, and nothing looks wrong.',
  source: 'drive makers’ M.2 module manuals: the key says nothing of the bus',
  limits: ['Only the bus is judged here; the rate of such a drive is not.'],
  examples: [
    {
      faulty: `
parts:
  board:
    slots: { M2_1: { kind: M.2, carries: [PCIe 4 x4] }, M2_2: { kind: M.2, carries: [PCIe 4 x2, SATA] } }
  drives:
    - { name: archive, bus: SATA, shape: M.2, slot: M2_1 }
#                                                   ^^^^
`,
      mended: `
parts:
  board:
    slots: { M2_1: { kind: M.2, carries: [PCIe 4 x4] }, M2_2: { kind: M.2, carries: [PCIe 4 x2, SATA] } }
  drives:
    - { name: archive, bus: SATA, shape: M.2, slot: M2_2 }
`,
    },
  ],
  test(build, report) {
    if (!build.parts.board) return;
    for (const drive of build.parts.drives) {
      const seat = seatOf(build, drive);
      if (seat.name !== undefined) report(inSlot(build, drive, seat));
      else if (drive.at.port.value !== undefined && !(drive.part.bus.value === 'USB' && !onList(build, drive)))
        report(onPort(build, drive));
    }
  },
});

/** USB ports need not stand in the board’s list. */
const onList = (build: Build, { at: { port } }: Drive): boolean =>
  build.parts.board!.part.ports.value?.has(port.value!) ?? false;

function carries(slot: Slot, name: string, bus: Link['bus'] | undefined): Truth {
  const is = carriesBus(slot, bus);
  if (is !== undefined) return sure(is, slot.kind.value === 'PCIe' ? slot.kind : slot.carries);
  const unread = slot.carries.value?.find((one) => one.value === undefined);
  return lacking([missing(unread ?? slot.carries, `the buses ${name} carries`)]);
}

function inSlot(build: Build, drive: Drive, { name, slot, missingFacts }: Seat): Outcome {
  const { bus } = drive.part;
  const speaks = bus.value && linkBuses[bus.value];
  const truth = !slot
    ? lacking(missingFacts)
    : bus.value === undefined
      ? lacking([missing(bus, `bus of ${drive.label}`)])
      : carries(slot, name, speaks);
  const of = slot?.kind.value === 'PCIe' ? sentence`${slot.kind}` : spoken(slot?.carries.value ?? []);
  return outcome(at(drive, drive.at.slot), truth, {
    broken: () => sentence`${drive.label} speaks ${bus}; ${drive.at.slot} carries ${of}, so it is never seen.`,
    *fixes() {
      yield plainBus(drive);
      yield* moves(build, drive, (other) => carries(other, '', speaks).is === true);
      yield* otherBus(
        drive,
        driveBuses.filter((other) => slot && carriesBus(slot, linkBuses[other])),
      );
      yield swap(drive);
    },
  });
}

function onPort(build: Build, drive: Drive): Outcome {
  const { port } = drive.at;
  const board = build.parts.board!;
  const there = board.part.ports.value?.get(port.value!);
  const host = hostOf(build, port.value);
  const kind = (host ? host.part['port-kind'].value : there?.kind.value) ?? 'SATA';
  const stated = host ? host.part['port-kind'] : there?.kind;
  const truth =
    host && kind === 'SATA' && stated?.value === undefined && drive.part.bus.value !== 'SATA'
      ? lacking([missing(host.part['port-kind'], `kind of the ports of ${host.label}`)])
      : stated
        ? given(
            fits(drive.part.bus, `bus of ${drive.label}`, (bus) => portTakes(kind, bus)),
            stated,
          )
        : lacking([portMissing(board, port.value!)]);
  return outcome(at(drive, port), truth, {
    broken: () => sentence`${drive.label} speaks ${drive.part.bus}; ${port} is a ${kind} port and does not carry it.`,
    fixes: () => [
      plainBus(drive),
      ...otherBus(
        drive,
        driveBuses.filter((bus) => portTakes(kind, bus)),
      ),
      swap(drive),
    ],
  });
}

/** A bus spelled out over another in the part file may be the slip. */
function plainBus({ part: { bus } }: Drive): FixIdea | undefined {
  return bus.replaced && takeOut(bus, `Take \`bus: ${bus.text}\` out; the part file says ${bus.replaced.text}`);
}

/**
 * A bus that the build alone states may be the slip for one that the place carries, where nothing else that is stated
 * of the drive contradicts; a part file’s is its maker’s word.
 */
function* otherBus(
  { doc, part: { bus, link, shape } }: Drive,
  carried: readonly string[],
): Iterable<FixIdea | undefined> {
  if (bus.doc !== doc || bus.replaced || shape.value === '2.5 in' || shape.value === '3.5 in') return;
  for (const other of carried)
    if (link.value === undefined || link.value.bus === linkBuses[other as keyof typeof linkBuses])
      yield change(bus, other, `Set the bus to ${other}`);
}
