// What ties a guide to a build, server/docs/guide.md: the marks, and the names they may hold, from the tables that the
// reader itself uses.
import { figureNames } from '../../src/core/guide/names';
import { CAUTIONS } from '../../src/core/trade/cautions';
import { STEP_KINDS } from '../../src/core/trade/steps';
import type { Generator } from './index';

const intro = `# Guides

Any Markdown file can be tied to a build; one that nothing ties is left alone. \`fettle guide BUILD\` drafts
one. The prose around the marks may be written anew at will.

- Front matter names the build by its path from the guide’s own folder: \`build: ../desk.pcbuild.yaml\`.
  Without it, marks speak of the first build that stands in the guide.
- Fenced blocks whose fence says \`pcbuild\` or \`part\` are checked in place, also in quotes and lists.
- A marked value is compared with the build’s figure, within what is printed of it: \`<!-- fettle: power.wall
  -->412 W<!-- /fettle -->\`. Words such as “about” leave its last noughts open.
- A marked step is held against the order that the build’s parts ask for: \`<!-- fettle: step fit board -->\`.
  It may name its part: \`<!-- fettle: step fit drive archive -->\`. Its prose ends where the next marked
  step, or a heading, begins.
- A marked caution stands before its step: \`<!-- fettle: caution coin-cell -->\`, then the signal word, which
  is never weaker than the one below.

Marks in code are no marks.`;

export const guidePage: Generator = {
  make() {
    const lines = [
      intro,
      '',
      '## Figures',
      '',
      '| name | meaning | example |',
      '| --- | --- | --- |',
      ...figureNames.map(({ name, what, example }) => `| \`${name}\` | ${what} | ${example} |`),
      '',
      'NAME is the drive’s own name, or its number. PART is the role, with a number where there are several; SIDE is ' +
        '`height`, `length` or `depth`.',
      '',
      '## Steps',
      '',
      `${STEP_KINDS.map((kind) => `\`${kind}\``).join(', ')}.`,
      '',
      '## Cautions',
      '',
      '| name | signal word | hazard |',
      '| --- | --- | --- |',
      ...Object.entries(CAUTIONS).map(([id, { word, hazard }]) => `| \`${id}\` | ${word} | ${hazard} |`),
      '',
    ];
    return new Map([['server/docs/guide.md', lines.join('\n')]]);
  },
};
