// Paste that is on the cooler's base already, and paste on top of it.
import { pasteOnBase } from '../../figures/paste';
import { sentence } from '../../figures/sentence';
import { any, not, sure } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, putOn } from '../kit';
import { takePartOut } from './cooling-kit';

export default check({
  id: 'paste-doubled',
  area: 'cooling',
  grade: 'shortfall',
  what: 'Paste is not brought on over paste that the cooler’s base carries already.',
  why: 'Two layers of different paste keep the faces apart and let through less heat than either alone.',
  source: 'common practice',
  examples: [
    {
      faulty: `
parts:
  cooler: { paste: pad applied }
  paste: { class: ceramic }
# ^^^^^
`,
      mended: `
parts:
  cooler: { paste: pad applied, applied-compound: wiped off }
  paste: { class: ceramic }
`,
    },
  ],
  test(build, report) {
    const { cooler, paste } = build.parts;
    if (!cooler || !paste) return;
    const brings = cooler.part.paste;
    const wiped = cooler.at['applied-compound'];
    report(
      outcome(at(paste), any(sure(wiped.value === 'wiped off', wiped), not(pasteOnBase(cooler))), {
        broken: () =>
          sentence`${cooler.label} comes with its paste on the base (${brings}), and ${paste.label} is put on as well.`,
        fixes: () => [
          putOn(cooler, 'applied-compound', 'wiped off', 'Wipe the cooler’s own paste off first'),
          takePartOut(build, 'paste', 'Take the paste out; the cooler brings its own'),
        ],
      }),
    );
  },
});
