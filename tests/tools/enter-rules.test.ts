// What the editor does on Enter, by the rules that the extension declares: the first that matches decides.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

interface EnterRule {
  readonly beforeText: string;
  readonly afterText?: string;
  readonly action: { readonly indent: 'none' | 'indent'; readonly appendText?: string };
}

const read = (file: string): string => readFileSync(join(__dirname, '../../client', file), 'utf8');
const { onEnterRules } = JSON.parse(read('language-configuration.json')) as { onEnterRules: readonly EnterRule[] };
const { contributes } = JSON.parse(read('package.json')) as {
  contributes: { languages: { id: string }[]; configurationDefaults: Record<string, Record<string, unknown>> };
};

/** The new line up to the cursor. */
function entered(before: string, after = ''): string {
  const own = /^ */.exec(before)![0];
  const rule = onEnterRules.find(
    ({ beforeText, afterText }) =>
      new RegExp(beforeText).test(before) && (afterText === undefined || new RegExp(afterText).test(after)),
  );
  if (!rule) return own;
  return own + (rule.action.indent === 'indent' ? '  ' : '') + (rule.action.appendText ?? '');
}

test.each([
  ['place:', '  '],
  ['place:   # where it stands', '  '],
  ['  "B-KEY":', '    '],
  ['  note: |', '    '],
  ['    - name: scratch', '      '],
  ['    - do: fit cooler', '      '],
  ['  - caution:', '      '],
  ['  ambient: 31 °C', '  '],
  ['  board: { use: norrvik/b7-forge }', '  '],
  ['    - { use: boreas/f140, count: 2 }', '    '],
  ['  - fit cooler', '  '],
  ['# a note:', ''],
  ['  - [A1, B1]', '  '],
])('after `%s` the next line begins with "%s"', (before, next) => {
  expect(entered(before)).toBe(next);
});

test('every language of ours indents by two blanks whatever a file begins with', () => {
  expect(contributes.languages.length).toBeGreaterThanOrEqual(3);
  for (const { id } of contributes.languages)
    expect(contributes.configurationDefaults[`[${id}]`], id).toMatchObject({
      'editor.insertSpaces': true,
      'editor.tabSize': 2,
      'editor.detectIndentation': false,
      'editor.autoIndent': 'advanced',
    });
});
