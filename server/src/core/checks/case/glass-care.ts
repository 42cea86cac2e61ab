// A glass side panel, and what is done with it before the work.
import { sentence } from '../../figures/sentence';
import { any, fits } from '../../figures/truth';
import { check } from '../check';
import { atKey, outcome, put } from '../kit';

export default check({
  id: 'glass-care',
  area: 'case',
  grade: 'harm',
  what: 'A glass panel is taken off first and laid on cloth.',
  why: 'Tempered glass bursts when its edge meets a hard floor or a tool, and takes fingers with it.',
  source: 'common practice; makers’ handbooks',
  limits: ['It is judged only where the build speaks of the bench.'],
  caution: 'glass-panel',
  examples: [
    {
      faulty: `
parts:
  case: { glass-panel: true }
bench: { glass-panel: left on }
#                     ^^^^^^^
`,
      mended: `
parts:
  case: { glass-panel: true }
bench: { glass-panel: taken off first }
`,
    },
  ],
  test(build, report) {
    const { case: box } = build.parts;
    const { bench } = build.file;
    if (!box || !bench.$.stated) return;
    const glass = fits(box.part['glass-panel'], `whether ${box.label} has a glass panel`, (is) => !is);
    const care = fits(bench['glass-panel'], 'what is done with the glass panel', (done) => done !== 'left on');
    report(
      outcome(atKey(build, bench['glass-panel']), any(glass, care), {
        broken: () => sentence`The case has a glass panel and it is ${bench['glass-panel']} during the work.`,
        fixes: () => [put(build.doc, ['bench', 'glass-panel'], 'taken off first', 'Take the glass panel off first')],
      }),
    );
  },
});
