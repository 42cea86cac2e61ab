// Facts of a draft put into a part file that stands: those alone that it does not state.
import { applyEdits, visible } from '../text';
import { insertEntry, parse, type MapNode, type Parsed, type Value } from '../yaml';
import type { Draft, Drafted } from './draft';
import { factLines, saidOf } from './part-text';

export interface Added {
  readonly text: string;
  readonly facts: readonly Drafted[];
}

/** The file’s text with what it lacks; what cannot be put in safely is left out. */
export function addFacts(text: string, draft: Draft): Added {
  const facts: Drafted[] = [];
  let now = text;
  const whole: Drafted[] = [];
  for (const fact of draft.facts) {
    const parsed = parse(now);
    const { root } = parsed;
    if (root?.type !== 'map' || parsed.problems.length > 0) break;
    if (!root.get(fact.path[0]!)) {
      whole.push(fact);
      continue;
    }
    const next = within(parsed, root, fact);
    if (next === undefined) continue;
    now = next;
    facts.push(fact);
  }
  if (whole.length === 0) return { text: now, facts };
  const eol = now.includes('\r\n') ? '\r\n' : '\n';
  const start = now === '' || /\n$/.test(now) ? now : now + eol;
  return { text: `${start}${factLines(whole, draft).join(eol)}${eol}`, facts: [...facts, ...whole] };
}

/** The text with a fact in the deepest group that stands; undefined where its place is taken. */
function within(parsed: Parsed, root: MapNode, fact: Drafted): string | undefined {
  let map = root;
  for (const [depth, key] of fact.path.entries()) {
    const there = map.get(key);
    if (there?.value.type === 'map') map = there.value;
    else if (there) return undefined;
    else {
      const value = fact.path
        .slice(depth + 1)
        .reduceRight<Value>((inner, one) => ({ [one]: inner }), writtenValue(fact));
      const comment = map.style === 'flow' ? {} : { comment: visible(saidOf(fact)) };
      const edits = /^\d+$/.test(fact.path[depth + 1] ?? '')
        ? undefined
        : insertEntry(parsed, map, key, value, comment);
      return edits && edits.length > 0 ? applyEdits(parsed.text, edits) : undefined;
    }
  }
  return undefined;
}

function writtenValue({ value }: Drafted): Value {
  if (value === '{}') return {};
  if (typeof value !== 'string') return value;
  if (/^\d{1,9}$/.test(value)) return Number(value);
  return value === 'true' ? true : value === 'false' ? false : value;
}
