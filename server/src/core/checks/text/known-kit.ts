// Where an entry of a file of known findings is pointed at.
import type { KnownFinding } from '../../build/known-findings';
import type { Fact } from '../../parts/fact';
import { target, type Target } from '../kit';

/** One of its facts where it is stated, else the name of the check, else the whole entry. */
export function entryAt({ stated, doc, file, id, subject }: KnownFinding, fact: Fact<unknown>): Target {
  const span = fact.node?.span ?? stated.finding.node?.span ?? stated.$.span;
  return target(`files.${file}.${id}.${subject}.${fact.key}`, doc, span);
}
