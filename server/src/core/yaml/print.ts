// Prints values as YAML: quoted where a reader could take the text for something else.
import type { ScalarNode } from './nodes';

/**
 * A value to write. Strings stay text; numbers and booleans are written bare; null is a value still to be filled in.
 */
export type Value = string | number | boolean | null | readonly Value[] | { readonly [key: string]: Value };

const flowWidth = 60;
const wideFlowWidth = 100;
const longestFlowList = 6;
const longestFlowMap = 3;

export function isScalarValue(value: Value): value is string | number | boolean | null {
  return typeof value !== 'object' || value === null;
}

export function isListValue(value: Value): value is readonly Value[] {
  return Array.isArray(value);
}

/** Whether every number in the value has a decimal spelling. */
export function isPrintable(value: Value): boolean {
  if (typeof value === 'number') return Number.isFinite(value);
  return isScalarValue(value) || Object.values(value).every(isPrintable);
}

/** A scalar in the wanted style where its text allows it; a plain one gets quotes where it needs them. */
export function printScalar(value: string | number | boolean | null, style: ScalarNode['style'] = 'plain'): string {
  if (value === null) return '';
  if (typeof value !== 'string' && style !== 'single' && style !== 'double') return String(value);
  const text = String(value);
  if (style === 'single' && !needsEscapes(text)) return `'${text.replaceAll("'", "''")}'`;
  return style === 'single' || style === 'double' || needsQuotes(text) ? doubleQuoted(text) : text;
}

/**
 * Whether bare text would be read as something else, by the rules of YAML 1.2 (core schema) or of
 * 1.1, which many readers still follow: booleans, nulls, numbers, base-60 numbers, indicators.
 * Dates stay bare: the format writes them so.
 */
export function needsQuotes(text: string): boolean {
  return (
    text === '' ||
    text !== text.trim() ||
    needsEscapes(text) ||
    /^[-?:,[\]{}#&*!|>'"%@`=]/.test(text) ||
    /[,[\]{}]|:$|: | #|^\.\.\.|^<<$/.test(text) ||
    wordLikes.test(text) ||
    numberLikes.some((like) => like.test(text))
  );
}

const wordLikes = /^(?:y|n|yes|no|on|off|true|false|null|~)$/i;
/** Numbers of YAML 1.2 and 1.1: of base 2, 8, 16, not finite; decimal ones; those counted in sixties. */
const numberLikes = [
  /^[-+]?(?:0b[01_]+|0o[0-7_]+|0x[\da-f_]+|\.(?:inf|nan))$/i,
  /^[-+]?(?:\d[\d_,]*(?:\.[\d_]*)?|\.\d[\d_]*)(?:e[-+]?\d+)?$/i,
  /^[-+]?\d[\d_]*(?::[0-5]?\d)+(?:\.[\d_]*)?$/,
];
// Not printable by YAML 1.2 (5.1), or a line break to some readers.
const unprintable = /[\u0000-\u001f\u007f-\u009f\u2028\u2029\ufeff\ufffe\uffff]|\p{Cs}/u;

const escapedInQuotes = /["\\\u0000-\u001f\u007f-\u009f\u2028\u2029\ufeff\ufffe\uffff]|\p{Cs}/gu;

function needsEscapes(text: string): boolean {
  return unprintable.test(text);
}

const shortEscapes: ReadonlyMap<string, string> = new Map([
  ['"', '\\"'],
  ['\\', '\\\\'],
  ['\n', '\\n'],
  ['\r', '\\r'],
  ['\t', '\\t'],
]);

function doubleQuoted(text: string): string {
  const escaped = text.replace(
    escapedInQuotes,
    (character) => shortEscapes.get(character) ?? `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
  return `"${escaped}"`;
}

/** A whole value on one line: `[A2, B2]`, `{ read: 5 GB/s }`. */
export function printFlow(value: Value): string {
  if (isScalarValue(value)) return printScalar(value);
  if (isListValue(value)) return `[${value.map(printFlow).join(', ')}]`;
  const entries = Object.entries(value).map(([key, inner]) => `${printScalar(key)}: ${printFlow(inner)}`.trimEnd());
  return entries.length === 0 ? '{}' : `{ ${entries.join(', ')} }`;
}

/** The value on one line, or undefined where it reads better as a block. `wide`: neighbours are flow too. */
export function printInline(value: Value, wide = false): string | undefined {
  const printed = printFlow(value);
  if (isScalarValue(value)) return printed;
  if (wide && printed.length <= wideFlowWidth) return printed;
  const parts = Object.values(value);
  // What is still to be filled in is easier to fill in on a line of its own.
  if (parts.includes(null)) return undefined;
  const most = isListValue(value) ? longestFlowList : longestFlowMap;
  return parts.length <= most && parts.every(isScalarValue) && printed.length <= flowWidth ? printed : undefined;
}

/** The value's lines as a block, each with its indentation. */
export function printBlock(value: Value, indent: number, step: number): string[] {
  const pad = ' '.repeat(indent);
  if (isScalarValue(value)) return [pad + printScalar(value)];
  if (isListValue(value)) return value.flatMap((item) => printItem(item, indent, step));
  return Object.entries(value).flatMap(([key, inner]) => printEntry(key, inner, indent, step));
}

/**
 * One entry's lines. `wide` as for `printInline`; `comment` goes on its first line, or on that of an only value to be
 * filled in.
 */
export function printEntry(
  key: string,
  value: Value,
  indent: number,
  step: number,
  wide = false,
  comment = '',
): string[] {
  const head = `${' '.repeat(indent)}${printScalar(key)}:`;
  const inline = printInline(value, wide);
  if (inline !== undefined) return [`${head} ${inline}`.trimEnd() + comment];
  const [only, ...others] = Object.entries(value as object) as [string, Value][];
  if (only && others.length === 0 && !isListValue(value) && endsBlank(only[1]))
    return [head, ...printEntry(only[0], only[1], indent + step, step, false, comment)];
  return [head + comment, ...printBlock(value, indent + step, step)];
}

/** Whether a value is to be filled in, or a group that holds nothing but one. */
function endsBlank(value: Value): boolean {
  if (value === null || isScalarValue(value) || isListValue(value)) return value === null;
  const inner = Object.values(value);
  return inner.length === 1 && endsBlank(inner[0] as Value);
}

/** One list item's lines, with its dash. */
export function printItem(value: Value, indent: number, step: number, wide = false): string[] {
  const dash = `${' '.repeat(indent)}- `;
  const inline = printInline(value, wide);
  if (inline !== undefined) return [dash + inline];
  const [first, ...rest] = printBlock(value, indent + 2, step);
  return [dash + first!.slice(indent + 2), ...rest];
}
