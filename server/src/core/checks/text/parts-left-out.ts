// Builds that leave out a part without which no machine runs.
import { sentence } from '../../figures/sentence';
import { sure } from '../../figures/truth';
import type { RoleName } from '../../manifest/places';
import type { Doc } from '../../parts/doc';
import { listed } from '../../text';
import { check } from '../check';
import { atBuild, outcome } from '../kit';

/** What every machine has, in the order of the roles. */
const needed = [
  'board',
  'processor',
  'cooler',
  'memory',
  'drives',
  'supply',
  'case',
] as const satisfies readonly RoleName[];

const isUnread = ({ parsed: { root, problems } }: Doc): boolean => !root && problems.length > 0;

export default check({
  id: 'parts-left-out',
  area: 'text',
  grade: 'note',
  what: 'The build lists board, processor, cooler, memory, a drive, supply and case.',
  why:
    'What is not listed is not checked against the rest: a build may look clear only because half of it is ' +
    'not written yet.',
  source: 'common practice',
  examples: [
    {
      faulty: `
build: Counter PC
#      ^^^^^^^^^^
parts:
  board: { use: norrvik/b5-quay }
`,
      instead: 'List the other parts, or accept the finding with the reason why they are not part of it.',
    },
  ],
  test(build, report) {
    // A case that is rated to give the heat off by its own walls is the cooler.
    const box = build.parts.case;
    const isCooler = box?.part['rated-power'].entry !== undefined;
    const without = needed.filter((role) => build.of(role).length === 0 && !(isCooler && role === 'cooler'));
    // Of a text that is not read at all, nothing can be said to be left out.
    if (without.length > 0 && isUnread(build.whole)) return;
    report(
      outcome(atBuild(build, 'parts'), sure(without.length === 0), {
        broken: () => {
          if (without.length === needed.length) return sentence`The build lists no parts yet.`;
          return without.length === 1
            ? sentence`The build lists no ${listed(without, 'or')}; nothing is checked against it.`
            : sentence`The build lists no ${listed(without, 'or')}; nothing is checked against them.`;
        },
      }),
    );
  },
});
