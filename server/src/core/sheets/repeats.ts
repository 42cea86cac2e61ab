// Blocks of a sheet that say the same again with other values: two parts in one text, or two versions of one.
import { isSame } from './agree';
import type { Drafted, Found } from './draft';
import type { Line } from './columns';

export interface ReadLine<One> {
  readonly line: Line;
  readonly found: readonly Found[];
  readonly unread: readonly One[];
}

/** Blocks disagree on so many facts before they are taken for two parts; on a model’s name alone as well. */
const mostSlips = 1;

/** What lines found, where what only one of such blocks says is not plain: of which part it is, nobody knows. */
export function unrepeated<One>(read: readonly ReadLine<One>[]): readonly ReadLine<One>[] {
  const blocks = new Map<number, Drafted[]>();
  for (const { line, found } of read) {
    const facts = found.filter(({ isPlain, fact }) => isPlain && fact.path.length <= 2).map(({ fact }) => fact);
    if (facts.length > 0 && line.table !== undefined)
      blocks.set(line.table, [...(blocks.get(line.table) ?? []), ...facts]);
  }
  const rivals = rivalsIn([...blocks]);
  if (rivals.size === 0) return read;
  const said = [...rivals].map((table) => new Set(blocks.get(table)!.map(({ path }) => path.join('.'))));
  const isOfAll = (fact: Drafted): boolean => said.every((paths) => paths.has(fact.path.join('.')));
  return read.map((one) =>
    one.line.table === undefined || !rivals.has(one.line.table)
      ? one
      : { ...one, found: one.found.map((each) => (isOfAll(each.fact) ? each : { ...each, isPlain: false })) },
  );
}

/** Past so many blocks nothing is held against another: such a text is no data sheet of one part. */
const mostBlocks = 60;

function rivalsIn(blocks: readonly (readonly [table: number, facts: readonly Drafted[]])[]): ReadonlySet<number> {
  const rivals = new Set<number>();
  const held = blocks.slice(0, mostBlocks);
  held.forEach(([table, facts], at) => {
    for (const [other, others] of held.slice(at + 1)) if (areRivals(facts, others)) rivals.add(table).add(other);
  });
  return rivals;
}

function areRivals(facts: readonly Drafted[], others: readonly Drafted[]): boolean {
  const differing = new Set(
    facts.flatMap(({ path, value }) =>
      others.some((other) => other.path.join() === path.join() && !isSame(value, other.value)) ? [path.join()] : [],
    ),
  );
  return differing.size > mostSlips || differing.has('model');
}
