// A workspace whose every text tries to be something else where it is shown.
export const tricks = [
  '::error file=x::boom',
  ' ::warning::boom',
  '%0A::error::boom',
  '##[error]boom',
  '##vso[task.complete]boom',
  ']]></failure><testcase name="x"/>',
  '<img src=x onerror=boom>&lt;b&gt;&#x41;',
  '--><!-- fettle-comment -->',
  '@saltmarsh/all #12 GH-12 !7 0123456789abcdef',
  '![x](http://example.invalid/x.png) [y](javascript:boom) http://example.invalid www.example.invalid a@example.invalid',
  '/close [vulnerability:1] [[_TOC_]]',
  '</details> | cell | `code` **bold** ~~gone~~ $x$',
  '{0} [x](0) %SRCROOT%',
] as const;

const quoted = (text: string): string => JSON.stringify(text).replaceAll('/', '\\/');

/** One build a trick, and one with controls and halves of pairs; each with findings of several grades. */
export function hostileFiles(): Record<string, string> {
  const texts = [...tricks, tricks.join('\n'), 'a\u0000b\u001b[31mc\u202ed\ufffee\u2028f\ud800'];
  return Object.fromEntries(
    texts.map((text, i) => [
      `${i}-${text.replace(/[/\\\u0000]/g, '_').slice(0, 60)}.pcbuild.yaml`,
      [
        'format: 1',
        `build: ${quoted(text)}`,
        `purpose: ${quoted(text)}`,
        'parts:',
        `  cooler: { model: ${quoted(text)}, height: 172 mm, ${quoted(text)}: 1 }`,
        `  case: { cooler-height: 155 mm, model: ${quoted(text)} }`,
        '  drives:',
        `    - { name: ${quoted(text)}, use: ${quoted(text)} }`,
        'accept:',
        `  - { finding: parts-left-out, because: ${quoted(text)}, by: ${quoted(text)} }`,
        '',
      ].join('\n'),
    ]),
  );
}
