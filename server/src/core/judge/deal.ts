// What someone has settled: what is promised, what was weighed, what is bought. No fix changes that by itself.
import { roleNames, roles, type Role } from '../manifest/places';
import type { Doc } from '../parts/doc';
import type { MapNode, Node } from '../yaml';

/** Whether two texts of a build settle the same. `spelling`: what was written wrongly may be put right in promises. */
export function settlesTheSame(before: Doc, after: Doc, spelling: boolean): boolean {
  return dealOf(before, spelling) === dealOf(after, spelling);
}

function dealOf(doc: Doc, spelling: boolean): string {
  const root = doc.parsed.root;
  if (root?.type !== 'map') return '';
  const parts = root.get('parts')?.value;
  return JSON.stringify([
    plain(root.get('accept')?.value),
    spelling ? null : plain(root.get('expect')?.value),
    parts?.type === 'map' ? roleNames.map((role) => boughtAs(roles[role], parts.get(role)?.value, spelling)) : null,
    asksForService(root),
  ]);
}

/** Whether somebody is paid to update the firmware. */
function asksForService(root: MapNode): boolean {
  const bench = root.get('bench')?.value;
  const update = bench?.type === 'map' ? bench.get('firmware-update')?.value : undefined;
  const by = update?.type === 'map' ? update.get('by')?.value : undefined;
  return by?.type === 'scalar' && by.text === 'service';
}

function boughtAs(role: Role, node: Node | undefined, spelling: boolean): unknown {
  const items = node?.type === 'list' ? node.items : node ? [node] : [];
  return items.map((item) => (item.type === 'map' ? bought(role, item, spelling) : plain(item)));
}

/** The part and how many; its own facts as well, but not where it goes or how it is set. */
function bought({ fields }: Role, map: MapNode, spelling: boolean): unknown {
  return map.entries
    .filter(({ key }) => key === 'use' || key === 'count' || (!spelling && !Object.hasOwn(fields, key)))
    .map(({ key, value }) => [key, plain(value)]);
}

function plain(node: Node | undefined): unknown {
  if (!node) return null;
  if (node.type === 'scalar') return node.text;
  if (node.type === 'list') return node.items.map(plain);
  return node.entries.map(({ key, value }) => [key, plain(value)]);
}
