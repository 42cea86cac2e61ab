// Files that end as our part files do and are another tool's: nothing is said of them but that they are left alone.
import { ROLE_WORDS } from '../manifest/role-words';
import type { Doc } from '../parts/doc';
import type { Table } from '../parts/field';
import { kindNames, kinds } from '../parts/kinds';
import { wordOf } from '../trade/vocabulary';
import { nearest } from '../text';
import type { MapNode } from '../yaml';

/**
 * Whether a part file says nothing in our words: its `kind` is none of ours nor near one, and of its other keys less
 * than half are keys of any one kind of part. A file that is only begun is ours.
 */
export function isOfAnotherTool(doc: Doc): boolean {
  const { root } = doc.parsed;
  if (doc.kind !== 'part' || !root) return false;
  if (root.type === 'list') return root.items.length > 0;
  if (root.type !== 'map' || isNearKind(root)) return false;
  const keys = root.entries.map(({ key }) => key).filter((key) => key !== 'kind');
  return keys.length > 0 && kindNames.every((kind) => shareOf(keys, kinds[kind]) < 0.5);
}

function isNearKind(root: MapNode): boolean {
  const value = root.get('kind')?.value;
  const word = value?.type === 'scalar' ? value.text : '';
  return word !== '' && (wordOf(ROLE_WORDS, word) !== undefined || nearest(word, kindNames) !== undefined);
}

const shareOf = (keys: readonly string[], table: Table): number =>
  keys.filter((key) => Object.hasOwn(table, key)).length / keys.length;
