// Marks of a guide that mark nothing.
import type { LooseMarker } from '../../guide/ties';
import { sentence } from '../../figures/sentence';
import { sure } from '../../figures/truth';
import { guideCheck } from '../check';
import { outcome } from '../kit';
import { inGuide, numbered, wordsOf } from './guide-kit';

export default guideCheck({
  id: 'guide-marker-loose',
  area: 'guide',
  grade: 'shortfall',
  what: 'A mark before a value has one behind it in the same paragraph, and says what the value is.',
  why: 'What is not marked at both ends is held against nothing.',
  source: 'the format’s own rule',
  examples: [
    {
      file: 'guide.md',
      faulty: `
~~~pcbuild
build: Desk
~~~

It has <!-- fettle: memory.capacity -->32 GiB of memory.
#                   ^^^^^^^^^^^^^^^
`,
      instead: 'Write `<!-- /fettle -->` behind the value.',
    },
  ],
  test(guide, report) {
    const subject = numbered();
    for (const { marker, fault } of guide.ties.loose)
      report(
        outcome(inGuide(guide, subject(`marks.${marker.says}`), wordsOf(marker)), sure(false), {
          broken: () => sentence`${words[fault]}`,
        }),
      );
  },
});

const words: Record<LooseMarker['fault'], string> = {
  'not closed': 'This mark is not closed; write `<!-- /fettle -->` behind the value, in the same paragraph.',
  'nothing to close': 'There is no mark that this one closes; take it out, or mark the value before it.',
  'says nothing':
    'This mark says nothing; it is to name a figure, `step` with what is done, or `caution` with its name.',
};
