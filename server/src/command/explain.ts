// `fettle explain`: what a check judges, why, and how to live with its finding.
import type { Command } from 'commander';
import { checks } from '../core/checks/all';
import { nearest, quoted } from '../core/text';
import type { Language } from '../core/words/language';
import { checkListText, explainText } from '../report/check-text';
import { refusal, type Status, type World } from './world';

export function addExplain(program: Command, world: World, end: (status: Status) => void): void {
  program
    .command('explain')
    .summary('say what a check judges, and why')
    .description(
      'Says what a check judges, why, by which source, with an example and its mended text. Without a ' +
        'check it lists all of them.',
    )
    .argument('[check]', 'the id of a check, as a finding names it')
    .action((id: string | undefined) => {
      world.out(explain(id, world.language()));
      end(0);
    });
}

function explain(id: string | undefined, language: Language): string {
  if (id === undefined) return checkListText(checks, language);
  const check = checks.find((one) => one.id === id);
  if (check) return explainText(check, language);
  const near = nearIds(id);
  throw near.length > 0
    ? refusal`there is no check ${quoted(id)}; near it: ${near.join(', ')}.`
    : refusal`there is no check ${quoted(id)}; \`fettle explain\` lists all of them.`;
}

/** How many near ids are named at most. */
const mostNear = 5;

/** Ids that a word is a slip of, then those that share words with it. */
export function nearIds(word: string): readonly string[] {
  const ids = checks.map((check) => check.id);
  const slip = nearest(word, ids);
  const parts = word
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter((part) => part.length > 2);
  const sharing = ids
    .map((id) => ({ id, shared: parts.filter((part) => id.includes(part)).length }))
    .filter(({ id, shared }) => shared > 0 && id !== slip)
    .sort((a, b) => b.shared - a.shared || (a.id < b.id ? -1 : 1))
    .map(({ id }) => id);
  return [...(slip ? [slip] : []), ...sharing].slice(0, mostNear);
}
