// Two parts in one slot, port, header or output.
import type { Build, Placed } from '../../build/build';
import { partsToPlace } from '../../figures/assigning';
import { hostOf } from '../../figures/drive-places';
import { counted, number, total, type Figure } from '../../figures/figure';
import { sharesOutput } from '../../figures/display-paths';
import { takenPlaces, type NamedPlace } from '../../figures/places';
import { howMany } from '../../figures/power';
import { sentence } from '../../figures/sentence';
import { carrierIn } from '../../figures/slots';
import { all, atMost, given, sure } from '../../figures/truth';
import { check } from '../check';
import { atFact, change, outcome, type FixIdea, type Outcome } from '../kit';
import { moveMemory } from '../memory/memory-kit';

const one = number(1, 'parts that a place takes', 'common practice');

const shared = new Set(['fan place', 'radiator place', 'bay', 'header']);

export default check({
  id: 'place-twice',
  area: 'text',
  grade: 'stop',
  what: 'No two parts take the same slot, port or output.',
  why: 'Only one of them can be plugged in there; the other has no place.',
  source: 'the format’s own rule',
  examples: [
    {
      faulty: `
parts:
  drives:
    - { name: system, slot: M2_1 }
    - { name: scratch, slot: M2_1 }
#                            ^^^^
`,
      instead: 'Move one of the two to another slot.',
    },
  ],
  test(build, report) {
    const first = new Map<string, NamedPlace>();
    for (const taken of takenPlaces(build)) {
      // A header feeds several fans through a splitter; what that comes to is judged by current.
      if (shared.has(taken.kind) || !taken.fact.node) continue;
      if (isShared(build, taken)) continue;
      const key = `${taken.kind} ${taken.name}`;
      const limit = joinedTo(build, taken);
      if (limit) {
        report(joined(build, taken, limit));
        continue;
      }
      const other = first.get(key);
      report(
        outcome(
          atFact(taken.fact, `${taken.placed.path}.${taken.fact.key}:${taken.name}`),
          all(given(sure(!other, taken.fact), other?.fact), atMost(many(taken), one)),
          {
            broken: () =>
              other
                ? sentence`${taken.fact} is taken already by ${other.placed.label}.`
                : sentence`${taken.fact} takes ${one}; the build lists ${many(taken)} of ${taken.placed.label} there.`,
            fixes: () => (other ? moved(build, taken) : []),
          },
        ),
      );
      if (!other) first.set(key, taken);
    }
  },
});

/** Displays in a chain or on a hub share an output; what that comes to is judged by its link. */
const isShared = (build: Build, { placed }: NamedPlace): boolean =>
  placed.role === 'displays' && sharesOutput(build, placed as Placed<'displays'>);

/** How many of a part go into one place; a kit of memory names a slot for each module. */
const many = ({ kind, placed }: NamedPlace): Figure => (kind === 'memory slot' ? one : howMany(placed));

/**
 * How many drives a port joins by a breakout cable, or a host adapter that is named for it, where it says so; or a
 * carrier, whose slot its drives name.
 */
function joinedTo(build: Build, { kind, name, placed }: NamedPlace): Figure | undefined {
  if (kind === 'slot' && placed.role === 'drives') {
    const carrier = carrierIn(build, name);
    return carrier && counted(carrier.part.carries, `drives on ${carrier.label}`);
  }
  if (kind !== 'port') return undefined;
  const host = hostOf(build, name);
  if (host) return counted(host.part['drive-ports'], `drives on ${name}`);
  const joins = build.parts.board?.part.ports.value?.get(name)?.drives;
  return joins?.value === undefined ? undefined : counted(joins, `drives on ${name}`);
}

/** All drives on such a port, or such a carrier, together. */
function joined(build: Build, { kind, name, fact, placed }: NamedPlace, limit: Figure): Outcome {
  const there = takenPlaces(build).filter(
    (one) => one.kind === kind && one.name === name && one.placed.role === 'drives',
  );
  const drives = total(
    `drives named for ${name}`,
    'count',
    there.map((one) => howMany(one.placed)),
  );
  return outcome(atFact(fact, `${placed.path}.${fact.key}:${name}`), given(atMost(drives, limit), fact), {
    broken: () => sentence`${fact} joins ${limit} drives; the build lists ${drives} there.`,
  });
}

/** For how many free places a move is tried. */
const movesTried = 3;

/** Another place for what cannot stay: memory by the board’s order, else the free places of its kind. */
function* moved(build: Build, { kind, placed, fact }: NamedPlace): Iterable<FixIdea | undefined> {
  if (kind === 'memory slot') return yield moveMemory(build);
  const taken = new Set(
    takenPlaces(build)
      .filter((one) => one.kind === kind)
      .map((one) => one.name),
  );
  const choices =
    partsToPlace(build, [placed.role]).find((seeker) => seeker.placed === placed && seeker.key === fact.key)?.choices ??
    [];
  for (const name of choices.filter((choice) => !taken.has(choice)).slice(0, movesTried))
    yield change(fact, name, `Move ${placed.label} to ${name}`);
}
