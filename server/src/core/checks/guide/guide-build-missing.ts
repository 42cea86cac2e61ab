// Guides whose build is not there.
import { sentence } from '../../figures/sentence';
import { sure } from '../../figures/truth';
import { quoted } from '../../text';
import { guideCheck } from '../check';
import { outcome } from '../kit';
import { inGuide, wordsOf } from './guide-kit';

export default guideCheck({
  id: 'guide-build-missing',
  area: 'guide',
  grade: 'stop',
  unread: true,
  what: 'The build that a guide’s marks speak of is there: named in its front matter, or standing in the guide.',
  why: 'Without its build no value and no step of the guide is held against anything.',
  source: 'the format’s own rule',
  examples: [
    {
      file: 'guide.md',
      faulty: `
---
build: gone.pcbuild.yaml
#      ^^^^^^^^^^^^^^^^^
---

It takes <!-- fettle: power.wall -->412 W<!-- /fettle --> from the wall.
`,
      instead: 'Name the build by its path from the guide’s own folder.',
    },
    {
      file: 'guide.md',
      faulty: `
It takes <!-- fettle: power.wall -->412 W<!-- /fettle --> from the wall.
#                     ^^^^^^^^^^
`,
      instead: 'Name the build in the front matter, as `build: desk.pcbuild.yaml`, or write it into a fenced block.',
    },
  ],
  test(guide, report) {
    const { build, markers } = guide.ties;
    const first = markers[0];
    if (build)
      report(
        outcome(inGuide(guide, 'build', build.span), sure(guide.named !== undefined), {
          broken: () =>
            sentence`No build can be read at ${quoted(build.path)}; name one by its path from the guide’s own folder.`,
        }),
      );
    else if (first)
      report(
        outcome(inGuide(guide, 'build', wordsOf(first)), sure(guide.build !== undefined), {
          broken: () =>
            sentence`The guide names no build that its marks speak of; write \`build:\` and its path into the front
              matter.`,
        }),
      );
  },
});
