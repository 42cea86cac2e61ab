// Marked values of a guide that say something else than the build.
import type { Guide } from '../../guide/guide';
import type { MarkedValue } from '../../guide/ties';
import { agrees, printed, readPrinted } from '../../guide/value';
import type { Figure } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { quoted } from '../../text';
import { guideCheck } from '../check';
import { outcome, type TextFix } from '../kit';
import { inGuide, numbered, rewrite } from './guide-kit';

export default guideCheck({
  id: 'guide-value-stale',
  area: 'guide',
  grade: 'shortfall',
  what: 'A marked value of a guide says what the build comes to, within what is printed of it.',
  why: 'Whoever follows the guide buys, wires and tests by its numbers; one that the build has left behind misleads.',
  source: 'the format’s own rule',
  limits: ['Values without marks are prose, and are not read.'],
  examples: [
    {
      file: 'guide.md',
      faulty: `
~~~pcbuild
parts:
  memory: [{ capacity: 32 GiB, modules: 2 }]
~~~

It has <!-- fettle: memory.capacity -->16 GiB<!-- /fettle --> of memory.
#                                      ^^^^^^
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
    const subject = numbered();
    for (const value of guide.ties.values) {
      const figure = guide.figures.get(value.name);
      if (!figure) continue;
      const read = readPrinted(value.text, figure);
      // A number without its unit is told of by itself.
      if (read.problem?.code === 'unit-missing') continue;
      report(
        outcome(inGuide(guide, subject(`values.${value.name}`), shown(value)), agrees(read, figure), {
          broken: () => sentence`The guide says ${quoted(value.text)}; ${value.name} of the build is ${figure}.`,
          fixes: () => [mended(guide, value, figure, read.quantity?.unit)],
        }),
      );
    }
  },
});

const shown = ({ span, marker }: MarkedValue): MarkedValue['span'] => (span.end > span.start ? span : marker.words);

function mended(
  { doc }: Guide,
  { span }: MarkedValue,
  figure: Figure,
  unit: Parameters<typeof printed>[1],
): TextFix | undefined {
  if (figure.lo === -Infinity || figure.hi === Infinity) return undefined;
  const text = printed(figure, unit);
  return rewrite(doc, span, text, `Write ${text}`);
}
