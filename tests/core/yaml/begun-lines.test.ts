// A line that is only begun, above any other: it is told where it stands, and takes nothing away from what stands below.
import { describe, expect, it } from 'vitest';
import { parse } from '../../../server/src/core/yaml';
import { readSamples } from '../../support/samples';
import { plain } from './projection';

const files = [...readSamples().docs.values()].filter(({ kind }) => kind !== 'guide');
const texts = files.filter((doc, i) => doc.kind === 'build' || i % 6 === 0).map(({ text }) => text);
/** A key of a block map, at the start of its line or behind the dashes of an item. */
const keyLine = /^( *(?:- +)*)[\w./+-]+:(?: |$)/;

/** The text with a word on a line of its own above line `at`, in the column of the key there; below a dash, behind it. */
function begun(lines: readonly string[], at: number, lead: string): string {
  const blank = ' '.repeat(lead.length);
  const rest = [`${lead}dri`, blank + lines[at]!.slice(lead.length)];
  return [...lines.slice(0, at), ...rest, ...lines.slice(at + 1)].join('\n');
}

describe('a line begun above a key', () => {
  it.each(texts)('of a sample leaves all of it read: %#', (text) => {
    const whole = plain(parse(text).root);
    const lines = text.split('\n');
    let isLiteral = false;
    for (const [at, line] of lines.entries()) {
      const lead = keyLine.exec(line)?.[1];
      isLiteral = lead === undefined ? isLiteral : /: [|>]/.test(line);
      if (lead === undefined || (isLiteral && !/: [|>]/.test(line))) continue;
      const { root, problems } = parse(begun(lines, at, lead));
      expect(plain(root), `line ${at + 1}: ${line}`).toEqual(whole);
      expect(
        problems.map(({ message }) => message),
        line,
      ).toEqual([expect.stringContaining('A colon is missing')]);
    }
  });
});
