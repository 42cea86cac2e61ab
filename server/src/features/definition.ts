// Definition: from a used part to its file, from the name of a slot, port or header to the line that describes it.
import type { Build } from '../core/build/build';
import type { Fact } from '../core/parts/fact';
import type { Doc } from '../core/parts/doc';
import type { Span } from '../core/text';
import { nodeAt, type Entry } from '../core/yaml';
import { meaningOf, placedAt } from '../core/build/field-at';
import type { Location, Position, View } from './shapes';

/** Where the thing named at a place is described; undefined where nothing is named. */
export function definition(view: View, position: Position): Location | undefined {
  const { doc, build } = view;
  const at = nodeAt(doc.parsed, doc.lines.offsetAt(position));
  if (!build || !at || at.where === 'gap') return undefined;
  const [top, second, third] = at.path;
  if (at.where === 'key')
    return top === 'expect' && second === 'drives' && at.path.length === 3
      ? placeOfDrive(view, build, String(third))
      : undefined;
  const meaning = meaningOf(doc, at.path);
  const word = at.node?.type === 'scalar' ? at.node.text : '';
  if (!meaning?.role || meaning.index === undefined) return undefined;
  const placed = placedAt(build, meaning.role, meaning.index);
  const key = meaning.below?.[0];
  if (key === 'use' && placed?.used?.file) return location(view, placed.used.file, { start: 0, end: 0 });
  return typeof key === 'string' ? named(view, build, key, word) : undefined;
}

/** The keys that name a thing, and where things of that kind are described. */
function named(view: View, build: Build, key: string, word: string): Location | undefined {
  const board = build.parts.board?.part;
  const chassis = build.parts.case?.part;
  switch (key) {
    case 'slot':
      return entryOf(view, board?.slots, word);
    case 'slots':
      return slotOf(view, board?.memory.slots, word);
    case 'port':
      return (
        entryOf(view, board?.ports, word) ??
        entryOf(view, board?.['display-outputs'], word) ??
        outputOf(view, build, word)
      );
    case 'header':
    case 'pump-header':
      return entryOf(view, board?.headers, word);
    case 'mount':
      return entryOf(view, chassis?.['fan-places'], word) ?? entryOf(view, chassis?.['radiator-places'], word);
    default:
      return undefined;
  }
}

function outputOf(view: View, build: Build, word: string): Location | undefined {
  for (const { part } of build.parts.graphics) {
    const found = entryOf(view, part.outputs, word);
    if (found) return found;
  }
  return undefined;
}

function entryOf(view: View, fact: Fact<unknown> | undefined, word: string): Location | undefined {
  const entry: Entry | undefined = fact?.node?.type === 'map' ? fact.node.get(word) : undefined;
  return fact && entry && !entry.merged ? location(view, fact.doc, entry.keySpan) : undefined;
}

function slotOf(view: View, fact: Fact<readonly Fact<string>[]> | undefined, word: string): Location | undefined {
  const item = fact?.value?.find((one) => one.value === word);
  return item?.node ? location(view, item.doc, item.node.span) : undefined;
}

function placeOfDrive(view: View, build: Build, name: string): Location | undefined {
  const fact = build.parts.drives.find((drive) => drive.at.name.value === name)?.at.name;
  return fact?.node ? location(view, fact.doc, fact.node.span) : undefined;
}

function location(view: View, doc: Doc, span: Span): Location {
  return { uri: view.uriOf(doc), range: doc.lines.rangeOf(span) };
}
