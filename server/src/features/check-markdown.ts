// A page on one check: what it judges, why, by which source, with a faulty and a mended text.
import { checks } from '../core/checks/all';
import { pageOf, type CheckPage, type ExamplePage } from '../core/checks/page';
import type { Language } from '../core/words/language';
import { cautionParagraph } from './hover';
import { code, heading, markdown, paragraph, strong, verbatim, type Block } from './prose';

/** The page in Markdown; undefined where there is no check of that id. */
export function explain(id: string, language: Language): string | undefined {
  const check = checks.find((one) => one.id === id);
  return check && markdown(blocksOf(pageOf(check), language));
}

function blocksOf(page: CheckPage, language: Language): Block[] {
  const { id, what, why, limits, remarks, caution, examples, unread, accept, regrade } = page;
  const [meaning, area] = [language.word(page.meaning), language.word(page.area)];
  const living = language.word('To live with such a finding, accept it in the build with a reason:');
  return [
    heading(id),
    paragraph(language.word(what)),
    paragraph(language.word(why)),
    paragraph(...language.pieces`Grade ${strong(page.grade)}: ${meaning}. Area: ${area}. Source: ${page.source}.`),
    ...[...limits, ...remarks].map((text) => paragraph(language.word(text))),
    ...(caution ? [cautionParagraph(caution, language)] : []),
    ...examples.flatMap((example) => exampleBlocks(example, language)),
    ...(accept === undefined
      ? unread === undefined
        ? []
        : [paragraph(language.word(unread))]
      : [paragraph(living), verbatim(accept, 'yaml')]),
    ...(regrade === undefined
      ? []
      : [
          paragraph(...language.pieces`For a whole house, set another grade in ${code('fettle.yaml')}:`),
          verbatim(regrade, 'yaml'),
        ]),
  ];
}

/** Comments that point at what is found say nothing to a reader here. */
function exampleBlocks({ plain, file, beside, mended, instead }: ExamplePage, language: Language): Block[] {
  return [
    paragraph(
      ...(file === undefined
        ? [language.word('Brings the finding:')]
        : language.pieces`Brings the finding, in ${code(file)}:`),
    ),
    verbatim(plain, 'yaml'),
    ...beside.flatMap(({ name, text }) => [paragraph(...language.pieces`With ${code(name)}:`), verbatim(text, 'yaml')]),
    ...(mended === undefined
      ? [paragraph(`${language.word('No fix can be offered.')} ${instead === undefined ? '' : language.word(instead)}`)]
      : [paragraph(language.word('Mended:')), verbatim(mended, 'yaml')]),
  ];
}
