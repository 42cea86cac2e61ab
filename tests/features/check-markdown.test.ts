// The page on a check in an editor: one for every check, saying what the terminal says.
import { expect, test } from 'vitest';
import { checks } from '../../server/src/core/checks/all';
import { isFirm } from '../../server/src/core/checks/check';
import { pageOf } from '../../server/src/core/checks/page';
import { english } from '../../server/src/core/words/languages';
import { explain } from '../../server/src/features/check-markdown';

test('every check has a page with its judgement, its examples without marks and how to live with it', () => {
  for (const check of checks) {
    const text = explain(check.id, english()) ?? '';
    expect(text.split('\n')[0]!.replaceAll('\\', '')).toMatch(new RegExp(`^#+ ${check.id.replaceAll('.', '\\.')}$`));
    const page = pageOf(check);
    for (const { plain, mended, beside } of page.examples)
      for (const part of [plain, mended ?? '', ...beside.map((one) => one.text)])
        expect(text, check.id).toContain(part.trimEnd());
    expect(text, check.id).toContain((page.accept ?? page.unread ?? '').trimEnd());
    // A guide has no place in which it could accept anything, nor has a record of known findings.
    expect(page.accept === undefined, check.id).toBe(
      check.unread === true || check.on === 'guide' || check.on === 'known',
    );
    expect(text, check.id).not.toMatch(/^\s*#\s*\^/m);
    expect(text.includes('set another grade'), check.id).toBe(!isFirm(check));
    if (page.caution) expect(text, check.id).toContain(page.caution.word);
  }
});

test('there is none for a name that is no check', () => {
  expect(explain('constructor', english())).toBeUndefined();
});
