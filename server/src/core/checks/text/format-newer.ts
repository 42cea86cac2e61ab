// Files written for a newer format than this version reads.
import { formatVersion } from '../../manifest/build-file';
import { counted, known } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { sure } from '../../figures/truth';
import { check } from '../check';
import { atKey, outcome } from '../kit';

export default check({
  id: 'format-newer',
  area: 'text',
  grade: 'stop',
  unread: true,
  what: 'The file is of a format that this version of Fettle reads.',
  why: 'A newer format may say things that an older reader would take for something else.',
  source: 'the format’s own rule',
  examples: [
    {
      faulty: `
format: 2
#       ^
build: Counter PC
`,
      instead: 'Use a newer Fettle, or write the file in format 1.',
    },
  ],
  test(build, report) {
    const { format } = build.file;
    if (format.value === undefined) return;
    const stated = counted(format, 'format of the file');
    const read = known(formatVersion, 'count', 'newest format read', { source: 'this version of Fettle' });
    report(
      outcome(atKey(build, format), sure(stated.hi <= read.lo, stated), {
        broken: () => sentence`The file is written in format ${stated}; this version reads up to format ${read}.`,
      }),
    );
  },
});
