// Connectors of fans and pumps against the board's headers and the splitters at hand, and several connectors on one
// header.
import { uniqueMissing } from '../../figures/missing-facts';
import type { Build, Placed } from '../../build/build';
import {
  copyWith,
  counted,
  decidedBy,
  derive,
  missing,
  number,
  times,
  total,
  unknown,
  type Figure,
} from '../../figures/figure';
import { fanHeaders, fanConnectors, headerLoads, splitters, type Load, type Splitter } from '../../figures/headers';
import { notNegative } from '../../figures/guard';
import { howMany } from '../../figures/power';
import { many } from '../../figures/lists';
import { memo } from '../../figures/memo';
import { sentence } from '../../figures/sentence';
import { atMost } from '../../figures/truth';
import { check } from '../check';
import { aspectOf, at, outcome, type Reporter } from '../kit';

export default check({
  id: 'headers-short',
  area: 'cooling',
  grade: 'shortfall',
  what:
    'There are as many fan headers, with splitters of the build and of the cooler’s box counted, as there ' +
    'are connectors of fans and pumps.',
  why: 'A fan with nowhere to plug in stands still, and the splitter that would serve it is not in any box.',
  source: 'common practice',
  limits: [
    'Fans that a case brings are not counted: no file states what they plug into.',
    'A cooler’s fans need one header where its box holds a splitter.',
  ],
  examples: [
    {
      faulty: `
parts:
  board: { headers: { CPU_FAN: { kind: fan }, SYS_FAN_1: { kind: fan } } }
# ^^^^^
  cooler: { fans: { count: 1 } }
  fans: [{ count: 2 }]
`,
      instead: 'List a fan splitter under `cables:`, or choose a board with more fan headers.',
    },
  ],
  test(build, report) {
    const { board } = build.parts;
    if (!board || fanConnectors(build).length === 0) return;
    const { wanted, headers, more, places } = inAll(build);
    report(
      outcome(at(board), atMost(wanted, places), {
        broken: () =>
          sentence`Fans and pumps bring ${many(wanted, 'connector')}; ${board.label} has ${many(headers, 'header')} for
            them, and splitters add ${more}.`,
      }),
    );
    let taken: readonly Figure[] = [];
    for (const load of headerLoads(build)) taken = [...taken, onOne(build, load, taken, report)];
  },
});

/** Connectors and places for them over the whole board. */
const inAll = memo((build: Build) => {
  const wanted = total(
    'connectors of fans and pumps',
    'count',
    fanConnectors(build).map((connectors) => connectors.headers),
  );
  const headers = headersOf(build.parts.board!);
  const more = total('connectors that splitters add', 'count', splitters(build).map(added));
  return { wanted, headers, more, places: total('fan headers with splitters', 'count', [headers, more]) };
});

/** The fan and pump headers of a board; one of no stated kind may be another. */
function headersOf(board: Placed<'board'>): Figure {
  const { headers } = board.part;
  const label = `fan headers of ${board.label}`;
  if (!headers.value) return notNegative(unknown('count', label, [missing(headers, `headers of ${board.label}`)]));
  const sure = fanHeaders(board).length;
  const unsure = [...headers.value].filter(([, header]) => header.kind.value === undefined);
  const counting = number(sure, label, `counted among the headers of ${board.label}`);
  const kinds = [...headers.value.values()].map(({ kind }) => kind);
  if (unsure.length === 0) return decidedBy(counting, ...kinds);
  const missingFacts = uniqueMissing([
    { missing: unsure.map(([name, header]) => missing(header.kind, `kind of ${name}`)) },
  ]);
  return decidedBy(copyWith(number(sure, label), { hi: sure + unsure.length, missing: missingFacts }), ...kinds);
}

/** A splitter takes one connector's place and gives several: so many more. */
function added({ cable, missingFacts }: Splitter): Figure {
  if (missingFacts.length > 0)
    return notNegative(unknown('count', `connectors that ${cable.label} adds`, missingFacts));
  const ways = counted(cable.part.ways, `how many fans ${cable.label} feeds`);
  return times(
    copyWith(ways, {
      lo: Math.max(0, ways.lo - 1),
      hi: ways.hi - 1,
      label: `connectors that ${cable.label} adds`,
      formula: `${ways.label} − 1`,
      inputs: [ways],
      work: (n) => n! - 1,
    }),
    howMany(cable),
  );
}

/**
 * Several connectors that name one header need a splitter there, and one that names no header serves it once. Gives
 * what this header takes of those, after what those before it took.
 */
function onOne(build: Build, { name, connectors }: Load, taken: readonly Figure[], report: Reporter): Figure {
  const wanted = total(
    `connectors on ${name}`,
    'count',
    connectors.map((one) => one.headers),
  );
  const own = splitters(build).filter(({ cable }) => cable.at.header.value === name);
  const loose = splitters(build).filter(({ cable }) => !cable.at.header.entry);
  const served = [number(1, name), ...own.map(added)];
  const places = total(`connectors that ${name} takes`, 'count', [...served, ...looseLeft(loose, taken)]);
  const last = connectors.at(-1)!;
  report(
    outcome(aspectOf(at(last.placed, last.header), name), atMost(wanted, places), {
      broken: () => sentence`${wanted} connectors go into ${name}, which takes ${places} with the splitters listed.`,
    }),
  );
  return beyond(
    `connectors on ${name} for splitters on no named header`,
    wanted,
    total(`${name} with its own splitters`, 'count', served),
  );
}

/** What splitters that name no header add, less what other headers took of it; nothing where there are none. */
function looseLeft(loose: readonly Splitter[], taken: readonly Figure[]): Figure[] {
  const each = loose.map(added);
  if (each.length === 0 || taken.length === 0) return each;
  const all = total('connectors that splitters on no named header add', 'count', each);
  return [beyond('what other headers leave of them', all, total('what other headers take of them', 'count', taken))];
}

const beyond = (label: string, all: Figure, less: Figure): Figure =>
  derive(label, 'count', [all, less], `${all.label} − ${less.label}`, (a, b) => (b >= a ? 0 : a - b));
