// A build judged with one of its files as another text, from what that text changes alone; `edited.test.ts` holds it to
// what a judgement from anew says.
import type { Build } from '../../../server/src/core/build/build';
import { changedIn } from '../../../server/src/core/build/changed';
import { answersApart, type Judgement } from '../../../server/src/core/judge/finding';
import { checksBeside, judgeBuild } from '../../../server/src/core/judge/judge';
import type { Doc } from '../../../server/src/core/parts/doc';

/** Undefined where so much changed that everything must be read again: the build’s own text, its house. */
export function judgedWith(build: Build, before: Judgement, file: Doc, changed: Doc): Judgement | undefined {
  const isOwn = file === build.doc;
  const names = isOwn
    ? changedIn(build.doc, changed)
    : [...new Set(build.all().flatMap(({ used, role }) => (used?.file === file ? [role] : [])))];
  if (!names || names.length === 0) return undefined;
  const known = answersApart(before, names).filter(({ check }) => !isOwn || check.on === 'build');
  const other = isOwn ? build.withText(changed, names) : build.withPartFile(file, changed);
  return judgeBuild(other, { known, checks: checksBeside(known), throwOn: true });
}
