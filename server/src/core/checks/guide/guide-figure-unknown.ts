// Marks of a guide that name no figure.
import { figureNames, meaningOfName } from '../../guide/names';
import { sentence } from '../../figures/sentence';
import { sure } from '../../figures/truth';
import { listed, nearest, quoted } from '../../text';
import { guideCheck } from '../check';
import { outcome } from '../kit';
import { inGuide, numbered, rewrite } from './guide-kit';

export default guideCheck({
  id: 'guide-figure-unknown',
  area: 'guide',
  grade: 'shortfall',
  what: 'Each mark of a guide names a figure that its build has.',
  why: 'A value under a misspelled name is held against nothing, and nobody notices when it is no longer true.',
  source: 'the format’s own rule',
  examples: [
    {
      file: 'guide.md',
      faulty: `
~~~pcbuild
parts:
  memory: [{ capacity: 32 GiB, modules: 2 }]
~~~

It has <!-- fettle: memory.capasity -->32 GiB<!-- /fettle --> of memory.
#                   ^^^^^^^^^^^^^^^
`,
      mended: `
~~~pcbuild
parts:
  memory: [{ capacity: 32 GiB, modules: 2 }]
~~~

It has <!-- fettle: memory.capacity -->32 GiB<!-- /fettle --> of memory.
`,
    },
  ],
  test(guide, report) {
    const { build, doc, figures, ties } = guide;
    if (!build) return;
    const subject = numbered();
    for (const { name, marker } of ties.values) {
      report(
        outcome(inGuide(guide, subject(`values.${name}`), marker.words), sure(figures.has(name)), {
          broken: () => {
            if (meaningOfName(name))
              return sentence`This build has no ${quoted(name)}; it has ${having(figures.keys())}.`;
            const near = nearest(name, [...figures.keys(), ...names]);
            return near === undefined
              ? sentence`No figure is called ${quoted(name)}; there are ${having(names)}.`
              : sentence`No figure is called ${quoted(name)}; ${quoted(near)} is the nearest.`;
          },
          fixes: () => {
            const near = nearest(name, figures.keys());
            return near === undefined ? [] : [rewrite(doc, marker.words, near, `Write ${near}`)];
          },
        }),
      );
    }
  },
});

const mostNamed = 8;

const names = figureNames.map(({ name }) => name);

function having(figures: Iterable<string>): string {
  const all = [...figures];
  if (all.length === 0) return 'no figures yet';
  return listed(all.length > mostNamed ? [...all.slice(0, mostNamed), 'others'] : all);
}
