// The quick look at a Markdown text misses nothing that ties it to a build, and passes by what merely speaks of builds.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mayTie } from '../../../server/src/core/guide/may-tie';
import { isTied } from '../../../server/src/core/guide/ties';
import { Doc } from '../../../server/src/core/parts/doc';

const tied = (text: string): boolean => isTied(new Doc('guide.md', 'guide', text));

const ties = [
  '---\nbuild: desk.pcbuild.yaml\n---\n',
  '\uFEFF---  \r\ntitle: Desk\r\nbuild: "a/desk.pcbuild.yaml"\r\n...\r\n',
  '# Desk\n\n```pcbuild\n',
  '> ~~~~ part {.wide}\n> kind: fan\n',
  '1. Fit it.\n\n   ```` pcbuild\n',
  'It draws <!-- fettle: power.wall -->90 W<!-- /fettle -->.',
  '<!--fettle:\nstep fit board-->\n',
  '<!--  /  fettle  -->',
];

const others = [
  '',
  '# Notes\n\nThe builds end in `.pcbuild.yaml`; see desk.pcbuild.yaml and its parts.\n',
  '---\ntitle: The tide\nlayout: page\n---\n\nSee desk.pcbuild.yaml.\n',
  '---\n\nA rule, no front matter: desk.pcbuild.yaml\n',
  '```yaml\nkind: fan\n```\n\n```python\npart = 1\n```\n',
  '```parts\nfan\n```\n\n```partial\n```\n',
  'In fine fettle. <!-- fettle is a word, too --> <!-- build: desk -->\n',
];

describe('what ties a text to a build', () => {
  it.each(ties)('is seen in %j', (text) => {
    expect([tied(text), mayTie(text)]).toEqual([true, true]);
  });

  it.each(others)('is not seen in %j', (text) => {
    expect([tied(text), mayTie(text)]).toEqual([false, false]);
  });

  it('is never missed, however a text is put together', () => {
    const pieces = [...ties, ...others].flatMap((text) => [text, ...text.split(/(?<=\n)|(?=<!--)/)]);
    const ends = ['', '\n', '\r\n', '\r', ' ', '> ', '- ', '    ', '\t', '`', '---\n'];
    const texts = fc.array(fc.constantFrom(...pieces, ...ends), { maxLength: 8 }).map((all) => all.join(''));
    fc.assert(fc.property(texts, (text) => mayTie(text) || !tied(text)));
  });
});
