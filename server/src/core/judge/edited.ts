// Judges a build whose text was edited: only the checks that look at what changed are asked again.
import { Build } from '../build/build';
import { changedIn } from '../build/changed';
import type { Doc } from '../parts/doc';
import { answersApart, type Judgement } from './finding';
import { checksBeside, judgeBuild } from './judge';

/** The same as judging the changed text from anew, as far as findings go by id, subject and grade. */
export function judgeEdited(build: Build, before: Judgement, changed: Doc): Judgement {
  const names = changedIn(build.doc, changed);
  if (!names) return judgeBuild(new Build(changed, build.find, build.house, build.today, build.machine));
  const known = answersApart(before, names).filter(({ check }) => check.on === 'build');
  return judgeBuild(build.withText(changed, names), { known, checks: checksBeside(known) });
}
