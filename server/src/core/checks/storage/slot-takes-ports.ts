// A filled slot that switches off a port or slot which the build uses.
import type { Build } from '../../build/build';
import { missing } from '../../figures/figure';
import { memo } from '../../figures/memo';
import { sentence, type Sentence } from '../../figures/sentence';
import { sharesNothing, sparesPorts } from '../../figures/sharing';
import { filled, freeSlots, seatOf, seated, type Seated, type Slot } from '../../figures/slots';
import type { Drive } from '../../figures/storage';
import { lacking, sure, type Truth } from '../../figures/truth';
import type { Fact } from '../../parts/fact';
import { check } from '../check';
import { at, outcome, putOn, type FixIdea } from '../kit';

export default check({
  id: 'slot-takes-ports',
  area: 'storage',
  grade: 'stop',
  what: 'No filled slot switches off a port or another slot that the build uses.',
  why: 'Boards share lanes: filling one M.2 socket silences ports that look free, and the drive on them is never seen.',
  source: 'common practice; the board’s handbook, page on shared lanes',
  limits: [
    'A slot without `takes-from` or `halves` leaves open what it does to others; `[]` says that it ' + 'does nothing.',
  ],
  examples: [
    {
      faulty: `
parts:
  board:
    slots: { M2_2: { kind: M.2, carries: [PCIe 4 x4], takes-from: [SATA_5, SATA_6] } }
    ports: { SATA_4: {}, SATA_5: {} }
  drives:
    - { name: scratch, bus: NVMe, slot: M2_2 }
#                                       ^^^^
    - { name: archive, bus: SATA, port: SATA_5 }
`,
      mended: `
parts:
  board:
    slots: { M2_2: { kind: M.2, carries: [PCIe 4 x4], takes-from: [SATA_5, SATA_6] } }
    ports: { SATA_4: {}, SATA_5: {} }
  drives:
    - { name: scratch, bus: NVMe, slot: M2_2 }
    - { name: archive, bus: SATA, port: SATA_4 }
`,
    },
  ],
  test(build, report) {
    if (!build.parts.board) return;
    for (const placed of seated(build)) {
      if (placed.at.slot.value === undefined) continue;
      const { slot, name, missingFacts } = seatOf(build, placed);
      const others = usersBeside(build, placed);
      const takes = slot?.['takes-from'];
      const hit = others.filter((user) => takes?.value?.some((item) => item.value === user.place.value));
      const truth =
        hit.length > 0
          ? sure(false, takes!)
          : others.length === 0
            ? sure(true)
            : takes
              ? stated(takes, name!)
              : lacking(missingFacts);
      report(
        outcome(at(placed, placed.at.slot), truth, {
          broken: () => sentence`${placed.label} in ${placed.at.slot} switches off ${listUsers(hit)}.`,
          fixes: () => fixes(build, placed, hit),
          ...(others.every((user) => isApart(build, slot, user))
            ? { usual: () => `filling ${name} switches off none of the ports and slots in use` }
            : {}),
        }),
      );
    }
  },
});

interface User {
  readonly placed: Seated;
  readonly place: Fact<string>;
}

/** Every part with the port or slot it uses. */
const users = memo((build: Build): readonly User[] =>
  seated(build).flatMap((placed) =>
    [placed.at.slot, ...('port' in placed.at ? [placed.at.port] : [])].flatMap((place) =>
      place.value === undefined ? [] : [{ placed, place }],
    ),
  ),
);

/** Every other part with the port or slot it uses. */
const usersBeside = (build: Build, self: Seated): readonly User[] =>
  users(build).filter(
    ({ placed }) =>
      placed !== self && (placed.at.slot.value === undefined || placed.at.slot.value !== self.at.slot.value),
  );

const isApart = (build: Build, slot: Slot | undefined, { placed, place }: User): boolean =>
  place === placed.at.slot ? sharesNothing(build, slot, seatOf(build, placed).slot) : sparesPorts(slot);

function stated(takes: Fact<readonly Fact<string>[]>, name: string): Truth {
  return takes.value?.every((item) => item.value !== undefined)
    ? sure(true, takes)
    : lacking([missing(takes, `what ${name} switches off`)]);
}

const listUsers = (users: readonly User[]): Sentence =>
  users.reduce<Sentence | undefined>(
    (said, { placed, place }) =>
      said ? sentence`${said}, and ${place} with ${placed.label}` : sentence`${place} with ${placed.label}`,
    undefined,
  )!;

/** A port that no filled slot takes, for the drive that loses its own; or another socket for the part that takes it. */
function* fixes(build: Build, placed: Seated, hit: readonly User[]): Iterable<FixIdea | undefined> {
  const first = hit[0]!;
  if (hit.length === 1 && first.place.key === 'port') {
    const port = freePort(build);
    if (port !== undefined) yield putOn(first.placed, 'port', port, `Move ${first.placed.label} to ${port}`);
  }
  for (const [name] of freeSlots(build)) yield putOn(placed, 'slot', name, `Move ${placed.label} to ${name}`);
}

function freePort(build: Build): string | undefined {
  const slots = build.parts.board!.part.slots.value;
  const off = [...filled(build).keys()].flatMap(
    (name) => slots?.get(name)?.['takes-from'].value?.map((item) => item.value) ?? [],
  );
  const used = build.parts.drives.map((drive: Drive) => drive.at.port.value);
  return [...(build.parts.board!.part.ports.value?.keys() ?? [])].find(
    (port) => !off.includes(port) && !used.includes(port),
  );
}
