// Accepted findings that the build no longer has.
import { say } from '../../figures/say';
import { sure } from '../../figures/truth';
import { removeItem } from '../../yaml';
import { acceptCheck } from '../check';
import { outcome, type FixIdea } from '../kit';
import { acceptedAt } from './accepted';

export default acceptCheck({
  id: 'accepted-but-gone',
  area: 'text',
  grade: 'note',
  what: 'Every accepted finding is one that the build still has.',
  why: 'A line that accepts nothing hides the same finding if it comes back for another reason.',
  source: 'common practice',
  examples: [{
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
  }],
  *test(build, found) {
    const { accept } = build.file;
    for (const [i, line] of (accept.value ?? []).entries()) {
      const id = line.finding.value;
      if (id === undefined) continue;
      const there = found.some((one) => one.id === id && (line.at.value === undefined || one.path === line.at.value));
      yield outcome(acceptedAt(build, line, i, 'finding'), sure(there, line.finding), {
        broken: () => say`The build has no finding ${line.finding} there; the line accepts nothing.`,
        fixes: (): FixIdea[] => {
          const edits = accept.node?.type === 'list' ? removeItem(build.doc.parsed, accept.node, i) : undefined;
          return edits ? [{ type: 'text', title: 'Take the line out', doc: build.doc, edits }] : [];
        },
      });
    }
  },
});
