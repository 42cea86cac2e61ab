// Judges a build that was judged in an earlier state: what held and read nothing of what changed holds still.
import type { Build } from '../build/build';
import { changedOf } from '../build/changed';
import { haveCommon, type RoleSet } from '../build/reads';
import type { Check } from '../checks/check';
import type { Answer, Counts, Finding, Judgement, Result } from './finding';
import { checksBeside, judgeBuild } from './judge';

/** A build as it was judged. */
export interface Judged {
  readonly build: Build;
  readonly judgement: Judgement;
}

/**
 * The same as judging it from anew. A check that found something is asked again in any case, for what it found has
 * moved with the text.
 */
export function judgeAgain(build: Build, before: Judged): Judgement {
  const changed = changedOf(before.build, build);
  if (changed === undefined) return judgeBuild(build);
  const known = before.judgement.answers
    .filter((answer) => stands(answer, changed) && !isOff(answer.check, build))
    .map((answer) => new Carried(answer, build));
  return judgeBuild(build, { known, checks: checksBeside(known) });
}

const stands = ({ check, findings, roles }: Answer, changed: RoleSet): boolean =>
  check.on === 'build' && findings.length === 0 && !haveCommon(roles, changed);

/** What a check that is switched off would have found is counted. */
const isOff = ({ id }: Check, { house }: Build): boolean => house.grade(id, 'note', false) === 'off';

/** Its outcomes name places of the text as it is now: they are worked out for whoever asks for them. */
class Carried implements Answer {
  readonly check: Check;
  readonly findings: readonly Finding[];
  readonly counts: Counts;
  readonly roles: RoleSet;
  private known: readonly Result[] | undefined = undefined;

  constructor(
    { check, findings, counts, roles }: Answer,
    private readonly build: Build,
  ) {
    this.check = check;
    this.findings = findings;
    this.counts = counts;
    this.roles = roles;
  }

  get taken(): readonly Result[] {
    this.known ??= judgeBuild(this.build, { checks: [this.check] }).answers.flatMap(({ taken }) => taken);
    return this.known;
  }
}
