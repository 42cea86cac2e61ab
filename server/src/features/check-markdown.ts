// A page on one check: what it judges, why, by which source, with a faulty and a mended text.
import { checks } from '../core/checks/all';
import { pageOf, type CheckPage, type ExamplePage } from '../core/checks/page';
import { code, heading, markdown, paragraph, strong, verbatim, type Block } from './prose';

/** The page in Markdown; undefined where there is no check of that id. */
export function explain(id: string): string | undefined {
  const check = checks.find((one) => one.id === id);
  return check && markdown(blocksOf(pageOf(check)));
}

function blocksOf({
  id,
  what,
  why,
  grade,
  meaning,
  area,
  source,
  limits,
  caution,
  examples,
  unread,
  accept,
  regrade,
}: CheckPage): Block[] {
  return [
    heading(id),
    paragraph(what),
    paragraph(why),
    paragraph('Grade ', strong(grade), `: ${meaning}. Area: ${area}. Source: ${source}.`),
    ...limits.map((limit) => paragraph(limit)),
    ...(caution ? [paragraph(strong(caution.word), ` ${caution.sentences.join(' ')}`)] : []),
    ...examples.flatMap(exampleBlocks),
    ...(accept === undefined
      ? unread === undefined
        ? []
        : [paragraph(unread)]
      : [paragraph('To live with such a finding, accept it in the build with a reason:'), verbatim(accept, 'yaml')]),
    ...(regrade === undefined
      ? []
      : [paragraph('For a whole house, set another grade in ', code('fettle.yaml'), ':'), verbatim(regrade, 'yaml')]),
  ];
}

/** Comments that point at what is found say nothing to a reader here. */
function exampleBlocks({ plain, file, beside, mended, instead }: ExamplePage): Block[] {
  return [
    paragraph('Brings the finding', ...(file === undefined ? [] : [', in ', code(file)]), ':'),
    verbatim(plain, 'yaml'),
    ...beside.flatMap(({ name, text }) => [paragraph('With ', code(name), ':'), verbatim(text, 'yaml')]),
    ...(mended === undefined
      ? [paragraph(`No fix can be offered. ${instead ?? ''}`)]
      : [paragraph('Mended:'), verbatim(mended, 'yaml')]),
  ];
}
