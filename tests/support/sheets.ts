// Bench sheets for tests: of the samples, of a build of any text, and of one whose every text is hostile.
import { Build } from '../../server/src/core/build/build';
import { judgeBuild } from '../../server/src/core/judge/judge';
import { Doc } from '../../server/src/core/parts/doc';
import type { Sheet, SheetStep } from '../../server/src/report/sheet/model';
import { sheetOf } from '../../server/src/report/sheet/sheet';
import { bench, today } from './bench';

export const sheetFor = (build: Build): Sheet =>
  sheetOf(build, judgeBuild(build, { throwOn: true }), { date: today, fileName: build.doc.name });

export const sheetOfText = (text: string, parts: Readonly<Record<string, string>> = {}): Sheet => {
  const files = Object.entries(parts).map(([name, part]) => ({ name: `parts/${name}.part.yaml`, text: part }));
  return sheetFor(bench([{ name: 'a.pcbuild.yaml', text }, ...files]).build!);
};

/** The same build of another text. */
export const withText = (build: Build, text: string): Build =>
  new Build(new Doc(build.doc.name, 'build', text), build.find, build.house, build.today);

/** The steps of some blocks in their order; without names, those of the work. */
export function stepsOf({ blocks }: Sheet, ...ids: readonly string[]): readonly SheetStep[] {
  const wanted = ids.length > 0 ? ids : ['work-before', 'work-bench', 'work-case', 'first-start', 'tests', 'hand-over'];
  return blocks
    .filter(({ id }) => wanted.includes(id))
    .flatMap(({ bodies }) => bodies.flatMap((body) => (body.type === 'steps' ? body.steps : [])));
}

/** Texts that a browser or a reader of Markdown would make something of. */
export const hostile: readonly string[] = [
  '<img src=x onerror=alert(1)><script>alert(2)</script>',
  "\"><svg onload=alert(3)>' onmouseover=alert(4) x='",
  '</style></title></textarea><iframe src="https://example.org"></iframe><!--',
  '[a](javascript:alert(5)) ![b](http://example.org/b.png) <https://example.org>',
  'https://example.org/x www.example.org mail@example.org @name #12',
  '| a | b |\n| --- | --- |\n# head\n- item\n> quote\n```js\ncode',
  'a\u0000b\u001b[31m\u202e\u2066c\u200bd\ufeff\u0085\u2028e',
  '&lt;b&gt; &#60;i&#62; &amp;',
  '--- *** __init__ ~~gone~~ `code` $x$ \\',
  '{{constructor.constructor("alert(6)")()}} ${alert(7)} javascript:alert(8)',
];

/** A build with one hostile text in every place that takes free text, its parts too. */
export function hostileSheet(text: string): Sheet {
  const t = JSON.stringify(text);
  const part = (kind: string, more = ''): string =>
    `kind: ${kind}\nmaker: ${t}\nmodel: ${t}\nsource: { title: ${t}, revision: ${t} }\nin-the-box: [${t}]\n${more}`;
  return sheetOfText(
    [
      `build: ${t}`,
      `purpose: ${t}`,
      `place: { ambient: ${t}, floor: ${t}, mains: { voltage: ${t} } }`,
      'parts:',
      `  board: { use: a/board, firmware: ${t} }`,
      '  processor: { use: a/processor }',
      `  cooler: { use: a/cooler, header: ${t} }`,
      `  paste: { use: a/paste, amount: ${t}, dose: ${t} }`,
      `  memory: [{ use: a/memory, name: ${t}, slots: [${t}], speed: ${t} }]`,
      `  drives: [{ use: a/drive, name: ${t}, slot: ${t}, port: ${t}, bay: ${t} }, { name: ${t}, maker: ${t} }]`,
      `  graphics: [{ use: a/graphics, slot: ${t} }]`,
      `  supply: { use: a/supply, cables: ${t} }`,
      '  case: { use: a/case }',
      `  fans: [{ use: ${t}, mount: ${t}, header: ${t} }]`,
      `  cables: [{ kind: ${t}, name: ${t} }]`,
      `  displays: [{ name: ${t}, port: ${t} }]`,
      'expect:',
      `  drives: { ${t}: { read: ${t}, capacity: 2 TB } }`,
      `  arrays: { ${t}: { kind: ${t}, drives: [${t}] } }`,
      `  displays: [{ mode: ${t}, port: ${t} }]`,
      '  power: { wall: 100 W }',
      'bench:',
      `  surface: ${t}`,
      `  firmware-update: { to: ${t}, by: stick without processor, stick: { file-name: ${t}, port: ${t} }, cables: [${t}] }`,
      'steps:',
      `  - ${t}`,
      `  - { do: fit processor, note: ${t}, caution: { word: CAUTION, hazard: ${t}, consequence: ${t}, avoidance: ${t} } }`,
      `  - { do: fit drive, part: ${t} }`,
      `  - caution: { word: WARNING, hazard: ${t} }`,
      `acceptance: { memory-test: { passes: 1 }, drive-tests: [{ drive: ${t} }], other: [${t}] }`,
      `hand-over: { includes: [serials], transport: ${t} }`,
      `accept: [{ finding: paste-missing, at: ${t}, because: ${t}, by: ${t} }]`,
      `${t}: ${t}`,
      '',
    ].join('\n'),
    {
      'a/board': part(
        'board',
        `socket: ${t}\nheaders: { ${t}: { kind: fan } }\npower-connectors: { ${t}: 1, 24-pin: 1 }\nslots: { ${t}: { kind: ${t} } }\n`,
      ),
      'a/processor': part('processor', `socket: ${t}\nfamily: ${t}\n`),
      'a/cooler': part('cooler', `height: ${t}\n`),
      'a/paste': part('paste'),
      'a/memory': part('memory', `type: ${t}\n`),
      'a/drive': part('drive', `bus: ${t}\nshape: ${t}\n`),
      'a/graphics': part('graphics', `connectors: { ${t}: 1 }\n`),
      'a/supply': part('supply', `connectors: { ${t}: 1 }\nrating: ${t}\n`),
      'a/case': part('case', `size: ${t}\n`),
    },
  );
}
