// Which fenced blocks of a guide are the same before and after: by what their builds are called, else in their order.
import type { Build } from '../core/build/build';
import type { Doc } from '../core/parts/doc';

/** A fenced block; part files among them bear no title. */
export interface Block {
  readonly doc: Doc;
  readonly build?: Build;
}

const titleOf = ({ doc, build }: Block): string => `${doc.kind}\n${build?.file.build.value ?? ''}`;

/** Every block of both sides, each once; those that stand after the change first, in their order. */
export function pairBlocks<A extends Block, B extends Block>(
  before: readonly A[],
  after: readonly B[],
): readonly { readonly before?: A; readonly after?: B }[] {
  const left = new Set(before);
  const take = (is: (one: A) => boolean): A | undefined => {
    const one = [...left].find(is);
    if (one) left.delete(one);
    return one;
  };
  const named = after.map((now) => take((was) => titleOf(was) === titleOf(now)));
  const pairs = after.map((now, i) => {
    const was = named[i] ?? take(({ doc }) => doc.kind === now.doc.kind);
    return was ? { before: was, after: now } : { after: now };
  });
  return [...pairs, ...[...left].map((was) => ({ before: was }))];
}
