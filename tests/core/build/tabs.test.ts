// A text indented by tabs brings one finding, whatever stands below the tab.
import { describe, expect, it } from 'vitest';
import { inspect } from '../../../server/src/core/build/inspect';
import { Doc } from '../../../server/src/core/parts/doc';
import { applyEdits } from '../../../server/src/core/text';

const texts = [
  'build: A\nparts:\n\tboard:\n\t\tsize: ATX\n\tcooler:\n\t\theight: 3 mm\n',
  'build: A\nparts:\n  board:\n\tsize: ATX\n  cooler:\n    height: 3 mm\n',
  'build: A\r\nparts:\r\n  board:\r\n  \tsize: ATX\r\n',
];

describe('tabs as indentation', () => {
  it.each(texts)('%j: one finding', (text) => {
    const { problems } = inspect(new Doc('a.pcbuild.yaml', 'build', text));
    expect(problems.map(({ code, message }) => [code, message])).toEqual([
      ['yaml-syntax', 'A tab is used for indentation here; use spaces.'],
    ]);
  });

  it('is mended by spaces in place of every tab', () => {
    const { problems } = inspect(new Doc('a.pcbuild.yaml', 'build', texts[0]!));
    const mended = problems[0]!.mends.map(({ edits }) => applyEdits(texts[0]!, edits));
    expect(mended[0]).toBe('build: A\nparts:\n  board:\n    size: ATX\n  cooler:\n    height: 3 mm\n');
    expect(inspect(new Doc('a.pcbuild.yaml', 'build', mended[0]!)).problems).toEqual([]);
  });
});
