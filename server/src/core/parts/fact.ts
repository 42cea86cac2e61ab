// Facts: values read from a file with the place where they stand, or the place where they would stand.
import type { Span } from '../text';
import type { Entry, MapNode, Node } from '../yaml';
import type { Quantity } from '../quantity';
import type {
  ChoiceField,
  CountField,
  DateField,
  Field,
  FlagField,
  FormField,
  GroupField,
  ListField,
  NamedField,
  QuantityField,
  Table,
  TextField,
  VersionField,
} from './field';
import type { Doc } from './doc';

/** A group that a file does not state, on the way down from the map that it would stand in; `map` is that map. */
export interface Gap {
  readonly map?: MapNode;
  readonly key?: string;
  readonly parent?: Gap;
}

/** One value that a file states, or could state. `value` is undefined when it is absent or cannot be read. */
export interface Fact<T> {
  readonly type: 'fact';
  readonly value: T | undefined;
  /** The text as written; empty when absent. */
  readonly text: string;
  /** The key, the last word of the path. */
  readonly key: string;
  /** From the file's root: `parts.cooler.height` in a build, `height` in a part file. */
  readonly path: string;
  /** What the field means; with the field's unit and example. */
  readonly field: Field;
  /** The file that states it, or that would have to. */
  readonly doc: Doc;
  /** The entry that states it; undefined when absent. */
  readonly entry?: Entry;
  readonly node?: Node;
  /** The map that states it or would have to; undefined when that map itself is absent. */
  readonly holder?: MapNode;
  /** Where `holder` is absent: the groups that would have to be made for it. */
  readonly gap?: Gap;
  /** The value in the part file that a value spelled out in the build replaces. */
  readonly replaced?: Fact<T>;
}

/** A fact as one line: a value as it is written, a list or a map of several lines by how much it holds. */
export function shownText({ text, node }: Fact<unknown>): string {
  if (!node || node.type === 'scalar' || (text !== '' && !text.includes('\n'))) return text;
  const { length } = node.type === 'list' ? node.items : node.entries;
  return length === 1 ? '1 entry' : `${length} entries`;
}

/** A set of facts that belong together, with the map they were read from. */
export interface GroupMeta {
  readonly doc: Doc;
  readonly path: string;
  /** The name in a map of names, or the key. */
  readonly name: string;
  readonly map?: MapNode;
  readonly entry?: Entry;
  readonly span: Span;
  readonly stated: boolean;
}

export type Group<T extends Table> = { readonly [K in keyof T]: ReadOf<T[K]> } & { readonly $: GroupMeta };

export type ReadOf<F> = F extends QuantityField
  ? Fact<Quantity>
  : F extends CountField
    ? Fact<number>
    : F extends ChoiceField<infer C>
      ? Fact<C>
      : F extends FlagField
        ? Fact<boolean>
        : F extends FormField<infer V>
          ? Fact<V>
          : F extends TextField | VersionField | DateField
            ? Fact<string>
            : F extends ListField<infer E>
              ? Fact<readonly ReadOf<E>[]>
              : F extends NamedField<infer N>
                ? Fact<ReadonlyMap<string, ReadOf<N>>>
                : F extends GroupField<infer T>
                  ? Group<T>
                  : never;
