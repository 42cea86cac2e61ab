// Slots, ports, headers and mounts that the board or the case does not have.
import type { Build, Placed } from '../../build/build';
import { referencesOf } from '../../build/references';
import { hostOf } from '../../figures/drive-places';
import { offered, takenPlaces } from '../../figures/places';
import { sentence } from '../../figures/sentence';
import { board } from '../../parts/board';
import { nearest } from '../../text';
import { check } from '../check';
import { atFact, change, outcome } from '../kit';
import { isListed, reportName } from './names-kit';

export default check({
  id: 'place-unknown',
  area: 'text',
  grade: 'stop',
  what:
    'Every slot, port, header, bay, mount and display output that a part names exists on the board, in the ' +
    'case or on a card.',
  why:
    'A name that is not printed on the board sends someone searching at the bench, and every check of that ' +
    'place stays open.',
  source: 'the format’s own rule',
  examples: [
    {
      faulty: `
parts:
  board: { slots: { M2_1: { kind: M.2 }, M2_2: { kind: M.2 } } }
  drives: [{ name: scratch, slot: M2_3 }]
#                                 ^^^^
`,
      mended: `
parts:
  board: { slots: { M2_1: { kind: M.2 }, M2_2: { kind: M.2 } } }
  drives: [{ name: scratch, slot: M2_1 }]
`,
    },
  ],
  test(build, report) {
    for (const { kind, name, fact, placed } of takenPlaces(build)) {
      const place = offered(build, kind);
      if (!place || !fact.node || isUsbOfRear(build, placed, kind)) continue;
      if (kind === 'port' && hostOf(build, name)) continue;
      report(
        outcome(atFact(fact, `${placed.path}.${fact.key}:${name}`), isListed(fact, place), {
          broken: () =>
            place.by.length === 1
              ? sentence`${place.by[0]!.label} has no ${kind} called ${fact}.`
              : sentence`No ${kind} of ${place.by.map(({ label }) => label).join(' or ')} is called ${fact}.`,
          fixes: () => {
            const taken = new Set(takenPlaces(build).map((one) => `${one.kind} ${one.name}`));
            const near = nearest(
              name,
              place.names.filter((other) => !taken.has(`${kind} ${other}`)),
            );
            return near === undefined ? [] : [change(fact, near, `Write ${near}`)];
          },
        }),
      );
    }
    // What the build spells out of a board may itself name places of that board.
    for (const reference of referencesOf(build))
      if (reference.saidOf === 'part' && reference.fact.field !== arriving) reportName(build, reference, report);
  },
});

/** A USB drive may name a port of the rear, where the board lists only ports inside the case. */
function isUsbOfRear({ parts: { board: on } }: Build, placed: Placed, kind: string): boolean {
  if (kind !== 'port' || placed.role !== 'drives' || (placed as Placed<'drives'>).part.bus.value !== 'USB')
    return false;
  return [...(on?.part.ports.value?.values() ?? [])].every((port) => port.kind.value !== 'USB');
}

/** The version a board arrives with is judged with its list of versions. */
const { arriving } = board.firmware.fields;
