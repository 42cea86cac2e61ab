// Figures of what the box of one part holds: a line that nobody understands may be any of the things asked for.
import type { Placed } from '../build/build';
import { mayBeThing, type BoxWord } from '../trade/box-things';
import { copyWith, between, missing, number, writtenAt, type Figure, type Missing } from './figure';
import { lacking, sure, type Truth } from './truth';

/** How many of a thing the box of one part holds; open upwards where a line of it is not understood. */
export function boxed(placed: Placed, thing: BoxWord, serves: (line: string) => boolean = () => true): Figure {
  const box = placed.part['in-the-box'];
  const label = `${thing}s in the box of ${placed.label}`;
  const unread = unreadIn(placed, thing);
  const found = (box.value ?? []).reduce(
    (sum, { value }) => sum + (value?.word === thing && serves(value.thing) ? value.count : 0),
    0,
  );
  if (unread.length === 0) return copyWith(number(found, label, 'counted in the box'), { from: writtenAt(box) });
  const source = box.value ? 'a line of its contents is not clear' : 'not stated';
  return copyWith(between(found, Infinity, 'count', label, { source }), { missing: unread });
}

/** Whether the box of a part holds a thing at all. */
export function boxHas(placed: Placed, thing: BoxWord): Truth {
  const held = boxed(placed, thing);
  if (held.lo > 0) return sure(true, placed.part['in-the-box']);
  return held.hi > 0 ? lacking(held.missing, placed.part['in-the-box']) : sure(false, placed.part['in-the-box']);
}

/**
 * The contents while they are not stated, else each line of them that is not understood. The mounting kit of a cooler
 * is its own; that of another part may hold screws of any kind.
 */
function unreadIn({ part, label, role }: Placed, thing: BoxWord): readonly Missing[] {
  const box = part['in-the-box'];
  if (!box.value) return [missing(box, `what the box of ${label} holds`)];
  return box.value
    .filter(({ value, text }) =>
      value?.word === undefined ? mayBeThing(text ?? '', thing) : value.word === 'mounting kit' && role !== 'cooler',
    )
    .map((line) => missing(line, `what “${line.text}” in the box of ${label} is`));
}
