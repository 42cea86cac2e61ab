// What the readers of tools’ outputs give: a value with the place and the words that it was read from.
import type { Node } from '../yaml';
import type { Lines } from '../text';

/** `line` counts from 1; in bytes that have no lines it is absent, and `said` names the place. */
export interface Reading<T> {
  readonly value: T;
  readonly line?: number;
  /** The output’s own words, in one line; never a serial number. */
  readonly said: string;
}

export const reading = <T>(value: T, said: string, line?: number): Reading<T> =>
  line === undefined ? { value, said } : { value, said, line };

const FILLERS: ReadonlySet<string> = new Set([
  'n/a',
  'na',
  'none',
  'null',
  'undefined',
  'unknown',
  'unspecified',
  'not specified',
  'not provided',
  'not available',
  'not present',
  'default string',
  'system product name',
  'system manufacturer',
  'base board product name',
  'type2 - board product name1',
  'type2 - board manufacturer',
  'not applicable',
  'empty',
  '[empty]',
  'invalid',
  'oem',
  'o.e.m.',
  'filled by oem',
]);

/** `Array1_PartNumber0`, `ModulePartNumber00`, `Manufacturer3`, `PartNum2`: places that a firmware’s maker numbered. */
const NUMBERED = /^(?:array\d{1,2}_|[ab]\d_)?(?:module)?(?:manufacturer|part ?num(?:ber)?)_?\d{1,2}$/;

/** A value that a tool masked, or filled in because it had none, says nothing. */
export const isFiller = (text: string): boolean => {
  const word = text.trim().toLowerCase();
  return (
    FILLERS.has(word) ||
    word.startsWith('to be filled') ||
    /^[-–—.?*0x ]*$/.test(word) ||
    /^(?:0x)?f{4,}$/.test(word) ||
    NUMBERED.test(word)
  );
};

/** The node at a path of keys and positions below another. */
export function below(node: Node | undefined, ...path: readonly (string | number)[]): Node | undefined {
  let at = node;
  for (const key of path)
    at =
      typeof key === 'number'
        ? at?.type === 'list'
          ? at.items[key]
          : undefined
        : at?.type === 'map'
          ? at.get(key)?.value
          : undefined;
  return at;
}

const saidOf = (path: readonly string[], text: string): string => `${path.join('.')}: ${text}`;

/** Readings from JSON, each at its line. A text that stands in quotes is no number, and the other way about. */
export class JsonReader {
  constructor(
    private readonly root: Node | undefined,
    private readonly lines: Lines,
  ) {}

  private scalar(path: readonly string[]): { text: string; quoted: boolean; line: number } | undefined {
    const node = below(this.root, ...path);
    if (node?.type !== 'scalar' || node.style === 'empty') return undefined;
    const line = this.lines.positionAt(node.span.start).line + 1;
    return { text: node.text, quoted: node.style === 'double', line };
  }

  text(...path: string[]): Reading<string> | undefined {
    const found = this.scalar(path);
    const text = found?.text.trim() ?? '';
    return found?.quoted && !isFiller(text) ? reading(text, saidOf(path, text), found.line) : undefined;
  }

  /** A whole number that a number holds exactly, and none below zero: what is counted here comes in no other. */
  whole(...path: string[]): Reading<number> | undefined {
    const found = this.scalar(path);
    if (!found || found.quoted || !/^\d{1,15}$/.test(found.text)) return undefined;
    return reading(Number(found.text), saidOf(path, found.text), found.line);
  }

  flag(...path: string[]): Reading<boolean> | undefined {
    const found = this.scalar(path);
    if (!found || found.quoted || !/^(?:true|false)$/.test(found.text)) return undefined;
    return reading(found.text === 'true', saidOf(path, found.text), found.line);
  }
}
