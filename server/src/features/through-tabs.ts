// A text that is indented with tabs, read as if each were a space: what fits is listed before the tabs are mended.
import { Build } from '../core/build/build';
import { FencedDoc } from '../core/guide/fenced';
import { judgeBuild, judgeFile } from '../core/judge/judge';
import { Doc } from '../core/parts/doc';
import type { View } from './shapes';

/** The view itself where no tab keeps the text from being read; every place is the same in both. */
export function throughTabs(view: View): View {
  const { doc, build } = view;
  if (doc instanceof FencedDoc || !doc.parsed.problems.some(({ tabs }) => tabs)) return view;
  const text = doc.text.replace(/^[ \t]+/gm, (blanks) => blanks.replaceAll('\t', ' '));
  const spaced = new Doc(doc.name, doc.kind, text, doc.scalars);
  const uriOf = (of: Doc): string => view.uriOf(of === spaced ? doc : of);
  if (!build) return { ...view, doc: spaced, judgement: judgeFile(spaced), uriOf };
  const whole = new Build(spaced, build.find, build.house, build.today, build.machine);
  return { ...view, doc: spaced, build: whole, judgement: judgeBuild(whole), uriOf };
}
