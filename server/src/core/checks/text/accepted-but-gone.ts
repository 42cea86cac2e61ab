// Accepted findings that the build no longer has.
import { sentence } from '../../figures/sentence';
import { sure } from '../../figures/truth';
import { CHECK_IDS } from '../../manifest/check-ids';
import { nearest } from '../../text';
import { removeItem } from '../../yaml';
import { acceptCheck } from '../check';
import { change, outcome, type FixIdea } from '../kit';
import { acceptedAt, isThere } from './accepted-kit';

export default acceptCheck({
  id: 'accepted-but-gone',
  area: 'text',
  grade: 'note',
  what: 'Every accepted finding is one that the build still has.',
  why: 'A line that accepts nothing hides the same finding if it comes back for another reason.',
  source: 'common practice',
  examples: [
    {
      faulty: `
accept:
  - { finding: cooler-too-tall, at: parts.cooler, because: The panel stays off. }
#              ^^^^^^^^^^^^^^^
  - { finding: unknown-key, at: colour, because: A note for the painter. }
colour: grey
`,
      mended: `
accept:
  - { finding: unknown-key, at: colour, because: A note for the painter. }
colour: grey
`,
    },
  ],
  test(build, found, report) {
    const { accept } = build.file;
    for (const [i, line] of (accept.value ?? []).entries()) {
      const id = line.finding.value;
      if (id === undefined || !CHECK_IDS.includes(id)) continue;
      report(
        outcome(acceptedAt(build, line, i, 'finding'), sure(isThere(line, found), line.finding), {
          broken: () =>
            sentence`The build has no finding ${line.finding}${line.at.value === undefined ? '' : ' there'}; the line
              accepts nothing.`,
          *fixes(): Iterable<FixIdea | undefined> {
            const near = nearest(
              id,
              found.filter((one) => line.at.value === undefined || one.subject === line.at.value).map((one) => one.id),
            );
            if (near !== undefined && near !== id) yield change(line.finding, near, `Accept ${near}`);
            const edits = accept.node?.type === 'list' ? removeItem(build.doc.parsed, accept.node, i) : undefined;
            if (edits) yield { type: 'text', title: 'Take the line out', doc: build.doc, edits };
          },
        }),
      );
    }
  },
});
