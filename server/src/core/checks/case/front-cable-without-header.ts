// Cables of the case’s front panel against the board’s headers for them.
import type { Build, Placed } from '../../build/build';
import { between, copyWith, decidedBy, missing, number, total, unknown, type Figure } from '../../figures/figure';
import { howMany } from '../../figures/power';
import { many } from '../../figures/lists';
import { HEADER_WORDS } from '../../trade/header-words';
import { wordOf } from '../../trade/vocabulary';
import { memo } from '../../figures/memo';
import { join, sentence } from '../../figures/sentence';
import { all, atMost, lacking, type Truth } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, swap } from '../kit';

interface Need {
  readonly kind: string;
  readonly cables: Figure;
  readonly headers: Figure;
  readonly truth: Truth;
}

export default check({
  id: 'front-cable-without-header',
  area: 'case',
  grade: 'shortfall',
  what: 'Every front cable of the case finds a header of its kind on the board.',
  why: 'A front port whose cable has no header is a dead hole in the front of the machine.',
  source: 'common practice',
  examples: [
    {
      faulty: `
parts:
  board: { headers: { F_PANEL: { kind: front panel }, F_USB: { kind: front USB 3 } } }
  case: { front-cables: [front panel, front USB 3, front USB-C] }
# ^^^^
`,
      instead: 'Choose a board with a front USB-C header, or do without that port.',
    },
  ],
  test(build, report) {
    const { board, case: box } = build.parts;
    if (!board || !box) return;
    const { 'front-cables': cables } = box.part;
    const needs = needsOf(build);
    report(
      outcome(
        at(box),
        cables.value
          ? all(...needs.map(({ truth }) => truth))
          : lacking([missing(cables, `front cables of ${box.label}`)]),
        {
          broken: () =>
            join(
              ...needs
                .filter(({ truth }) => truth.is === false)
                .map(
                  ({ kind, cables: wanted, headers }) =>
                    sentence`The case has ${many(wanted, `${kind} cable`)}; the board has ${headers} such
                      ${headers.hi === 1 ? 'header' : 'headers'}. Add an adapter, or do without that port.`,
                ),
            ),
          fixes: () => [swap(board), swap(box)],
        },
      ),
    );
  },
});

const needsOf = memo((build: Build): readonly Need[] => {
  const { board, case: box } = build.parts;
  const counts = new Map<string, number>();
  for (const cable of box!.part['front-cables'].value ?? [])
    if (cable.value !== undefined) counts.set(cable.value, (counts.get(cable.value) ?? 0) + 1);
  return [...counts].map(([kind, n]) => {
    const label = `${kind} cables of ${box!.label}`;
    const own = number(n, label, 'counted in the case’s facts');
    const cables = total(label, 'count', [own, ...adapters(build, 'from', kind)]);
    const headers = total(`${kind} headers`, 'count', [headersOf(board!, kind), ...adapters(build, 'to', kind)]);
    return { kind, cables, headers, truth: atMost(cables, headers) };
  });
});

/** Adapters that start from a header of one kind, or that end in one. */
function adapters(build: Build, end: 'from' | 'to', kind: string): Figure[] {
  return build.parts.cables
    .filter(({ part, at: { kind: named } }) => {
      const to = part.connector.value ?? named.value;
      const from = part.from.value;
      return to !== undefined && from !== undefined && wordOf(HEADER_WORDS, end === 'from' ? from : to) === kind;
    })
    .map((cable) => decidedBy(howMany(cable), cable.part.from, cable.part.connector, cable.at.kind));
}

function headersOf(board: Placed<'board'>, kind: string): Figure {
  const { headers } = board.part;
  const label = `${kind} headers of ${board.label}`;
  if (!headers.value) return unknown('count', label, [missing(headers, `headers of ${board.label}`)]);
  const ones = [...headers.value].map(([name, header]) =>
    header.kind.value === undefined
      ? copyWith(between(0, 1, 'count', name, { source: 'its kind is not stated' }), {
          missing: [missing(header.kind, `kind of header ${name}`)],
        })
      : decidedBy(number(header.kind.value === kind ? 1 : 0, name), header.kind),
  );
  const listed = total(label, 'count', ones);
  // Where a list leaves it out, nobody thought of it: without one no case’s power button starts the board.
  return kind === 'front panel' && listed.hi === 0
    ? decidedBy(number(1, label, 'common practice: every board has one'), headers)
    : listed;
}
