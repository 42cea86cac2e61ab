// Generated texts as judged files, over the samples' parts and house.
import { Build } from '../../../server/src/core/build/build';
import { kindOfPart } from '../../../server/src/core/build/placed';
import { judgeBuild, judgeFile } from '../../../server/src/core/judge/judge';
import { relatedTo, type Finding, type Judgement } from '../../../server/src/core/judge/finding';
import type { Candidates } from '../../../server/src/core/judge/swaps';
import { Doc, kindOfFile } from '../../../server/src/core/parts/doc';
import type { View } from '../../../server/src/features/shapes';
import { today } from '../../support/bench';
import { findIn, readSamples } from '../../support/samples';

const { docs, house } = readSamples();

export const buildName = 'made.pcbuild.yaml';
export const partName = 'parts/made/made.part.yaml';

export type Judged = View & { readonly judgement: Judgement };

/** Judges a text as the file of that name; checks that fail throw. */
export function judge(text: string, name = buildName): Judged {
  const doc = new Doc(name, kindOfFile(name)!, text);
  const shape = { doc, uriOf: (of: Doc) => `file:///ws/${of.name}`, versionOf: (of: Doc) => (of === doc ? 1 : null) };
  if (doc.kind !== 'build') return { ...shape, judgement: judgeFile(doc, { throwOn: true }) };
  const build = new Build(doc, findIn(docs), house, today);
  return { ...shape, build, judgement: judgeBuild(build, { throwOn: true }) };
}

/** The build judged again with one of its files as another text. */
export function judgeWith(before: Judged, changed: Doc, text: string): Judged {
  const after = new Doc(changed.name, changed.kind, text);
  if (!before.build || changed === before.doc) return judge(text, changed.name);
  const build = new Build(before.doc, findIn(docs, after), house, today);
  return { ...before, build, judgement: judgeBuild(build, { throwOn: true }) };
}

const parts = [...docs.values()]
  .filter((doc) => doc.kind === 'part')
  .map((doc) => ({ name: doc.name.replace(/^parts\/|\.part\.yaml$/g, ''), doc, kind: kindOfPart(doc) }));

/** At most a few parts of a kind, so that trying them all stays quick. */
export const candidates: Candidates = (kind) => parts.filter((part) => part.kind === kind).slice(0, 4);

/** A finding as a line that says all that an editor or a report would show of it. */
export function lineOf(finding: Finding): string {
  const { start, end } = finding.underline.doc.lines.rangeOf(finding.underline.span);
  const related = relatedTo(finding)
    .map(({ doc, span, what }) => `${doc.name}:${doc.lines.positionAt(span.start).line} ${what}`)
    .sort();
  return [
    finding.grade,
    finding.id,
    finding.underline.doc.name,
    `${start.line}:${start.character}-${end.line}:${end.character}`,
    finding.subject,
    finding.said.text,
    ...related,
  ].join(' | ');
}

export const linesOf = ({ findings }: Judgement): string[] => findings.map(lineOf);
