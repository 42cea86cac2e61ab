// Names of one’s own that two parts share.
import type { Placed } from '../../build/build';
import { sentence } from '../../figures/sentence';
import { given, sure } from '../../figures/truth';
import { check } from '../check';
import { atFact, change, outcome } from '../kit';

export default check({
  id: 'name-twice',
  area: 'text',
  grade: 'stop',
  what: 'No two parts of a build have the same name.',
  why: 'A promise made to a name that two drives share is checked against one of them only.',
  source: 'the format’s own rule',
  examples: [
    {
      faulty: `
parts:
  drives:
    - { name: archive, bus: SATA }
    - { name: archive, bus: SATA }
#             ^^^^^^^
`,
      mended: `
parts:
  drives:
    - { name: archive, bus: SATA }
    - { name: archive-2, bus: SATA }
`,
    },
  ],
  test(build, report) {
    const seen = new Map<string, Placed>();
    for (const placed of build.all()) {
      const fact = (placed as Placed<'drives'>).at.name;
      if (fact?.value === undefined) continue;
      const name = fact.value;
      const first = seen.get(name);
      report(
        outcome(
          atFact(fact, `parts.${placed.role}[${placed.index}].name`),
          given(sure(!first, fact), first && (first as Placed<'drives'>).at.name),
          {
            broken: () => sentence`Another part is called ${fact} already.`,
            fixes: () => [change(fact, freeName(name, seen), `Call this one ${freeName(name, seen)}`)],
          },
        ),
      );
      if (!first) seen.set(name, placed);
    }
  },
});

function freeName(name: string, taken: ReadonlyMap<string, unknown>): string {
  for (let n = 2; ; n++) if (!taken.has(`${name}-${n}`)) return `${name}-${n}`;
}
